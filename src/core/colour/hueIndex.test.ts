import { expect, it } from 'vitest';
import { expectedHueIndex } from './hueIndex.ts';

it('a pale sugar starts at plain caramel or melanoidin, whichever made its colour', () => {
  expect(expectedHueIndex(0, 0)).toEqual({ mean: 6.5, sd: 0.7 });
  expect(expectedHueIndex(0, 1).mean).toBeCloseTo(5.8, 12);
});

it('a very dark roast moves towards 5, and never past it', () => {
  expect(expectedHueIndex(0.3, 0).mean).toBeCloseTo(5.75, 12);
  expect(expectedHueIndex(50, 0).mean).toBeGreaterThan(5);
  expect(expectedHueIndex(50, 0).mean).toBeLessThan(5.02);
});

it.each([
  [-0.1, 0.5, 'specific absorbance -0.1'],
  [0.1, 1.5, 'Maillard share 1.5'],
])('specific absorbance %d with Maillard share %d is refused', (specific, share, message) => {
  expect(() => expectedHueIndex(specific, share)).toThrow(message);
});
