import { expect, test } from 'vitest';
import { foamHeightM } from './foam.ts';

test('foam rises from the quiet depth to four times it, and never falls with more steam', () => {
  expect(foamHeightM(0.02, 0, 0.025)).toBe(0.02);
  expect(foamHeightM(0.02, Number.POSITIVE_INFINITY, 0.025)).toBeCloseTo(0.08, 12);
  const heights = [1e-6, 1e-5, 1e-4, 1e-3].map((steam) => foamHeightM(0.02, steam, 0.025));
  expect(heights).toEqual([...heights].sort((a, b) => a - b));
});

test('a full boil of 15 g a minute in an 18 cm pan stands at two to four times the depth', () => {
  const rise = foamHeightM(1, 0.015 / 60, 0.0254);
  expect(rise).toBeGreaterThan(2);
  expect(rise).toBeLessThan(4);
});
