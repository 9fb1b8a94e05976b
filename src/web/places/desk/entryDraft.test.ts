// What was on the Desk at each entry of the history, with a history that a test moves.
import { afterEach, expect, it, vi } from 'vitest';
import { type Draft, freshDraft } from './draft.ts';
import { entryDraft, keepInEntry } from './entryDraft.ts';

afterEach(() => vi.unstubAllGlobals());

it('an entry that the browser went to, and that nobody was told of yet, keeps its own draft', () => {
  const kept = new Map<string, string>();
  vi.stubGlobal('sessionStorage', {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => kept.set(key, value),
  });
  const entries: { state: unknown }[] = [{ state: null }, { state: null }];
  let at = 0;
  vi.stubGlobal('history', {
    get state() {
      return entries[at]?.state;
    },
    replaceState: (state: unknown) => {
      entries[at] = { state };
    },
  });
  const named = (name: string): Draft => ({
    ...freshDraft,
    aim: { ...freshDraft.aim, good: { ...freshDraft.aim.good, name } },
  });
  const nameHere = () => entryDraft()?.aim.good.name;

  keepInEntry(named('first'));
  at = 1;
  keepInEntry(named('second'));
  at = 0;
  // The page still shows the second one.
  keepInEntry(named('second'));
  expect(nameHere()).toBe('first');
  keepInEntry(named('first, changed'));
  expect(nameHere()).toBe('first, changed');
  at = 1;
  expect(nameHere()).toBe('second');
});
