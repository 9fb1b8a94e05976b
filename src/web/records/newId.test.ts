import { expect, it } from 'vitest';
import { recordId } from '../../api/field.ts';
import { newId } from './newId.ts';

it('makes ids that the server takes, each its own', () => {
  const ids = Array.from({ length: 1000 }, newId);
  expect(new Set(ids).size).toBe(1000);
  for (const id of ids) {
    expect(recordId().safeParse(id).success).toBe(true);
    expect(id).toMatch(/^.{14}4.{4}[89ab]/);
  }
});
