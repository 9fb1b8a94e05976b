import { expect, test } from 'vitest';
import { coarseToFine } from './order.ts';

test('the ends come first, then ever halves, each place once', () => {
  expect(coarseToFine(9)).toEqual([0, 8, 4, 2, 6, 1, 3, 5, 7]);
  expect(coarseToFine(1)).toEqual([0]);
  for (const count of [2, 7, 32, 48]) {
    expect([...coarseToFine(count)].sort((a, b) => a - b)).toEqual(Array.from({ length: count }, (_, i) => i));
  }
});

test('after an eighth of the lines none is further than an eighth of the field from one that is there', () => {
  const there = coarseToFine(48).slice(0, 6);
  for (let at = 0; at < 48; at++) expect(Math.min(...there.map((each) => Math.abs(each - at)))).toBeLessThanOrEqual(8);
});
