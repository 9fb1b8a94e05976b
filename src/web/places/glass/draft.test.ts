import { expect, it } from 'vitest';
import { freshDraft, isKept } from './draft.ts';

it('a glass is kept while it is as the server has it, in whatever order its fields come', () => {
  const { sheet } = freshDraft;
  const glass = sheet.good;
  const reversed = Object.fromEntries(Object.entries(glass).toReversed()) as typeof glass;
  const base = { id: 'a', version: 1, glass: reversed };
  expect(isKept(freshDraft)).toBe(false);
  expect(isKept({ sheet, base })).toBe(true);
  const changed = { ...glass, rest: { ...glass.rest, volumeL: 21 } };
  expect(isKept({ sheet: { ...sheet, good: changed }, base })).toBe(false);
});
