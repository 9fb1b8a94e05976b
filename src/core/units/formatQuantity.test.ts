import { expect, it } from 'vitest';
import { formatQuantity } from './formatQuantity.ts';

it.each([
  [0.5, 'g', undefined, '500 g'],
  [0.498951607, 'lb', undefined, '1.1 lb'],
  [137.24, 'C', 1, '137.2 °C'],
  [135, 'F', 0, '275 °F'],
  [-0.04, 'C', 1, '0.0 °C'],
  [0.125, '%', undefined, '12.5%'],
  [5.2, 'pH', undefined, 'pH 5.2'],
  [5, 'F difference', undefined, '9 °F'],
] as const)('%d in %s with %s digits is shown as %s', (value, unit, digits, shown) => {
  expect(formatQuantity(value, unit, digits)).toBe(shown);
});
