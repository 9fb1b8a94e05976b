import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Dimension, dimensions } from './dimension.ts';
import { QuantityError } from './quantityError.ts';
import { fromUcum, toUcum } from './ucum.ts';
import { allUnits } from './units.ts';

describe('quantities on the wire', () => {
  it('come back exactly as they went', () => {
    const dimension = fc.constantFrom(...(Object.keys(dimensions) as Dimension[]));
    fc.assert(
      fc.property(dimension, fc.double({ min: 0, max: 1e12, noNaN: true }), (kind, value) => {
        return fromUcum(toUcum(value, kind), kind) === value;
      }),
    );
  });

  it.each([
    [{ value: 275, unit: '[degF]' }, 'temperature', 135],
    [{ value: 2, unit: '[tsp_us]' }, 'volume', 9.8578431875e-6],
    [{ value: 29.92, unit: "[in_i'Hg]" }, 'pressure', 101_320.7],
    [{ value: 12, unit: '%' }, 'fraction', 0.12],
  ] as const)('%j is understood as %s', (quantity, dimension, expected) => {
    expect(fromUcum(quantity, dimension) / expected).toBeCloseTo(1, 6);
  });

  it.each([
    [{ value: 275, unit: 'degF' }, 'temperature', 'is not in a UCUM code for it (Cel, [degF], K)'],
    [{ value: 5, unit: 'Cel' }, 'temperatureDifference', 'is not in a UCUM code for it (K)'],
    [{ value: Number.NaN, unit: 'g' }, 'mass', 'is not a finite number'],
    [{ value: -1, unit: 'g' }, 'mass', 'is below the lowest possible mass'],
  ] as const)('%j is refused as %s', (quantity, dimension, message) => {
    expect(() => fromUcum(quantity, dimension)).toThrow(QuantityError);
    expect(() => fromUcum(quantity, dimension)).toThrow(message);
  });

  it('no code means two units of one dimension', () => {
    const codes = allUnits.flatMap(({ dimension, ucum }) => (ucum === undefined ? [] : [`${dimension} ${ucum}`]));
    expect(new Set(codes).size).toBe(codes.length);
  });
});
