import { expect, test } from 'vitest';
import { likelySlips } from './slips.ts';

const near = (mid: number) => ({ low: mid - 3, mid, high: mid + 3 });

test('a reading that can be is not asked about', () => {
  expect(likelySlips(131, 'C', near(130))).toBeUndefined();
  expect(likelySlips(138, 'C', near(130))).toBeUndefined();
});

test.each([
  ['a digit left out', 31, 'C', 130, 131],
  ['digits swapped', 311, 'C', 130, 131],
  ['a digit struck twice', 1331, 'C', 130, 131],
  ['Fahrenheit typed as Celsius', 266, 'C', 130, 130],
  ['Celsius typed as Fahrenheit', 130, 'F', 130, 266],
] as const)('%s is offered first', (_, typed, unit, expectedC, meant) => {
  expect(likelySlips(typed, unit, near(expectedC))?.[0]).toBe(meant);
});

test('where no slip explains it nothing is offered, and it is asked all the same', () => {
  expect(likelySlips(90, 'C', { low: 148, mid: 150, high: 152 })).toEqual([]);
});
