import { expect, it } from 'vitest';
import { formatSpoon } from './formatSpoon.ts';

it.each([
  [4.92892e-6, '1 tsp, 4.9 mL'],
  [5e-6, '1 metric tsp, 5.0 mL'],
  [14.78676e-6, '1 tbsp, 14.8 mL'],
  [3.5e-6, '3.5 mL'],
])('a spoon of %d m3 is written %s', (volumeM3, written) => {
  expect(formatSpoon(volumeM3)).toBe(written);
});
