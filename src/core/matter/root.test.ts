import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bracketedRoot } from './root.ts';

test('finds the root of a steep monotone curve to the tolerance', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.001, max: 0.999, noNaN: true }),
      fc.integer({ min: 1, max: 40 }),
      (root, steepness) => {
        const f = (x: number) => Math.expm1(steepness * (x - root));
        expect(Math.abs(bracketedRoot(f, 0, 1, 1e-12) - root)).toBeLessThan(1e-11);
      },
    ),
  );
});

test('a root at an end is returned as it is', () => {
  expect(bracketedRoot((x) => x, 0, 1, 1e-12)).toBe(0);
  expect(bracketedRoot((x) => x - 1, 0, 1, 1e-12)).toBe(1);
});

test('refuses a bracket without a root', () => {
  expect(() => bracketedRoot((x) => x + 1, 0, 1, 1e-12)).toThrow('no root between 0 and 1');
});
