import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { referenceTable } from '../../../test/referenceTable.ts';
import type { Dimension } from './dimension.ts';
import { formatQuantity } from './formatQuantity.ts';
import { parseQuantity } from './parseQuantity.ts';
import { QuantityError } from './quantityError.ts';
import { allUnits } from './units.ts';

/** 32 F is 0 C only to the rounding of 5/9: compared against this instead of nothing. */
const floatingPointZero = 1e-2;

describe('units follow their definitions', () => {
  it.each(referenceTable('units-definitions'))('$quantity is $core_value ($source)', (row) => {
    const { quantity = '', dimension, core_value, relative_tolerance } = row;
    const error = Math.abs(parseQuantity(quantity, dimension as Dimension) - Number(core_value));
    expect(error).toBeLessThanOrEqual(Number(relative_tolerance) * Math.max(Number(core_value), floatingPointZero));
  });
});

describe('a quantity may be written as people write it', () => {
  it.each([
    ['500g', 'mass', 0.5],
    ['1.1 lb', 'mass', 1.1 * 0.45359237],
    ['1,1 kg', 'mass', 1.1],
    ['0,125 kg', 'mass', 0.125],
    ['1 250 g', 'mass', 1.25],
    ['1,250.5 g', 'mass', 1.2505],
    ['1.250,5 g', 'mass', 1.2505],
    ['2 lb 3 oz', 'mass', 35 * 0.028349523125],
    ['½ kg', 'mass', 0.5],
    ['500 G', 'mass', 0.5],
    ['3/4 cup', 'volume', 0.75 * 236.5882365e-6],
    ['1 1/2 L', 'volume', 1.5e-3],
    ['1½ L', 'volume', 1.5e-3],
    ['2 fl. oz.', 'volume', 2 * 29.5735295625e-6],
    ['1 metric tsp', 'volume', 5e-6],
    ['1 au tbsp', 'volume', 20e-6],
    ['135C', 'temperature', 135],
    ['275 °F', 'temperature', 135],
    ['135 º c', 'temperature', 135],
    ['135 ℃', 'temperature', 135],
    ['135 deg C', 'temperature', 135],
    ['−5 °C', 'temperature', -5],
    ['9F', 'temperatureDifference', 5],
    ['1h20min', 'duration', 4800],
    ['1 h 20 min 30 s', 'duration', 4830],
    ['25min', 'duration', 1500],
    [`5' 2"`, 'length', 62 * 0.0254],
    ['1013 mbar', 'pressure', 101_300],
    ['6000 BTU/h', 'power', 6000 * 0.2930710701722],
    ['0.4kWh', 'energy', 1.44e6],
    ['3 %', 'fraction', 0.03],
    ['3%', 'fraction', 0.03],
    ['pH 5.2', 'ph', 5.2],
    ['5,2 pH', 'ph', 5.2],
  ] as const)('%s (%s)', (text, dimension, expected) => {
    expect(parseQuantity(text, dimension) / expected).toBeCloseTo(1, 9);
  });

  it('takes the default unit for a bare number, and only then', () => {
    expect(parseQuantity('135', 'temperature', 'C')).toBe(135);
    expect(parseQuantity('1h 20', 'duration', 'min')).toBe(4800);
    expect(() => parseQuantity('135', 'temperature')).toThrow(
      "temperature: '135' has no unit; write a temperature such as",
    );
  });
});

describe('what can be misread is refused, saying why', () => {
  it.each([
    ['12 parsecs', 'mass', "mass: '12 parsecs' is not understood; write a mass such as 500g, 1.1lb or 3 oz"],
    ['2 tsp', 'mass', "mass: '2 tsp' is a volume; write a mass"],
    ['3 oz', 'volume', "volume: '3 oz' is a mass"],
    ['1,250 g', 'mass', 'may mean 1.250 or 1250'],
    ['2 lb .5 oz', 'mass', 'is not understood'],
    ['3 oz 2 lb', 'mass', 'mixes units'],
    ['130-135C', 'temperature', 'is not understood'],
    ['100C 5F', 'temperature', 'mixes units'],
    ['-300C', 'temperature', 'is below the lowest possible temperature'],
    ['-5 g', 'mass', 'is below the lowest possible mass'],
    ['1/0 g', 'mass', 'divides by nothing'],
    ['1e999 g', 'mass', 'is too large'],
    ['', 'mass', 'is empty'],
    ['g', 'mass', 'is not understood'],
    [`${'9'.repeat(80)} g`, 'mass', 'is too long'],
  ] as const)('%s (%s)', (text, dimension, message) => {
    expect(() => parseQuantity(text, dimension)).toThrow(QuantityError);
    expect(() => parseQuantity(text, dimension)).toThrow(message);
  });
});

it('what is shown in any unit reads back as the same quantity', () => {
  const value = fc.double({ min: 1e-9, max: 1e9, noNaN: true });
  fc.assert(
    fc.property(fc.constantFrom(...allUnits), value, (unit, number) => {
      const core = number * unit.factor + unit.offset;
      const back = parseQuantity(formatQuantity(core, unit.name), unit.dimension);
      // 12 figures are shown, so half a unit of the 12th may be lost; the offset of a temperature scale costs its own.
      return Math.abs(back - core) <= 1e-11 * (Math.abs(core) + Math.abs(unit.offset));
    }),
    { numRuns: 5000 },
  );
});

it('no spelling means two units of one dimension', () => {
  for (const unit of allUnits) {
    for (const spelling of unit.spellings) {
      const value = parseQuantity(`1 ${spelling}`, unit.dimension);
      expect(value, `${unit.dimension}: ${spelling}`).toBeCloseTo(unit.factor + unit.offset, 12);
    }
  }
});
