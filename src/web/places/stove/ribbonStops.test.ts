import { expect, it } from 'vitest';
import { ribbonStops } from './ribbonStops.ts';

const rows = (...times: number[]) => times.map((timeS, i) => ({ timeS, colour: `c${i}` }));

it('go from the first row to the last, at every sixth row between', () => {
  const stops = ribbonStops(rows(...Array.from({ length: 15 }, (_, i) => 10 + i)));
  expect(stops.map(({ timeS }) => timeS)).toEqual([10, 16, 22, 24]);
  expect(stops.map(({ offset }) => offset)).toEqual([0, 6 / 14, 12 / 14, 1]);
});

it('are none while all rows stand at one time, as those of a cook whose beginning lies ahead of the clock', () => {
  expect(ribbonStops(rows(0, 0, 0))).toEqual([]);
  expect(ribbonStops(rows(0))).toEqual([]);
  expect(ribbonStops([])).toEqual([]);
});

it('stand once at each time, with what was known last', () => {
  const stops = ribbonStops(rows(0, 1, 2, 3, 4, 5, 9, 9));
  expect(stops).toEqual([
    { timeS: 0, offset: 0, colour: 'c0' },
    { timeS: 9, offset: 1, colour: 'c7' },
  ]);
});
