import { expect, it } from 'vitest';
import { likedCooks } from '../../../../core/beer/liked.ts';
import { found, ordered } from './search.ts';
import type { Entry } from './useBook.ts';

const entry = (name: string, begun: string, mode: 'live' | 'rehearsal' = 'live'): Entry => ({
  cook: { id: name, name, mode, begun, ended: 'done', lastSeq: 1 },
  summary: null,
  due: false,
  onlyHere: false,
});
const entries = [
  entry('Plum shards', '2031-05-09T18:30:00.000Z'),
  entry('Plum trial', '2031-06-01T10:00:00.000Z', 'rehearsal'),
  entry('Hall syrup', '2031-06-03T10:00:00.000Z'),
];
const names = (words: string, kind: 'all' | 'live' | 'rehearsal' = 'all') =>
  found(entries, words, kind).map(({ cook }) => cook.name);

it('finds by every word, in name, month or day', () => {
  expect(names('PLUM')).toEqual(['Plum shards', 'Plum trial']);
  expect(names('june')).toEqual(['Plum trial', 'Hall syrup']);
  expect(names('plum 2031-06')).toEqual(['Plum trial']);
  expect(names('plum syrup')).toEqual([]);
  expect(names('  ')).toHaveLength(3);
});

it('shows rehearsals apart', () => {
  expect(names('', 'rehearsal')).toEqual(['Plum trial']);
  expect(names('plum', 'live')).toEqual(['Plum shards']);
});

it('puts cooks whose beers are liked more before others, and leaves those without tastings as they were', () => {
  const tasted = (cookId: string, liking: number) => ({ likings: [liking], cooks: [{ cookId, share: 1 }] });
  const cooks = likedCooks([tasted('Plum shards', 4), tasted('Hall syrup', 9)]);
  const of = (id: string) => cooks.find(({ cookId }) => cookId === id);
  expect(ordered(entries, 'newest', of)).toEqual(entries);
  expect(ordered(entries, 'liked', of).map(({ cook }) => cook.name)).toEqual([
    'Hall syrup',
    'Plum shards',
    'Plum trial',
  ]);
});
