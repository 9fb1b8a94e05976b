import { greatest } from 'd3-array';
import { expect, test } from 'vitest';
import { referenceTable } from '../../../test/referenceTable.ts';
import { sucroseSolubilityFraction } from './solubility.ts';

test('solubility lies within 0.6 points of Herzfeld 1892 from 0 to 100 C (the two sets differ by that much)', () => {
  const rows = referenceTable('sucrose-solubility').map((row) => {
    const temperatureC = Number(row['temperature_C']);
    return { temperatureC, off: 100 * sucroseSolubilityFraction(temperatureC) - Number(row['mass_percent_sucrose']) };
  });
  const worst = greatest(rows, (row) => Math.abs(row.off));
  console.log('solubility, worst (percent points):', worst);
  expect(Math.abs(worst?.off ?? Number.NaN)).toBeLessThan(0.6);
});

test('solubility is 66.72 % at 20 C (ICUMSA SPS-2), rises with heat, and is refused above 100 C', () => {
  expect(100 * sucroseSolubilityFraction(20)).toBeCloseTo(66.72, 1);
  for (let t = -13; t < 100; t += 1) {
    expect(sucroseSolubilityFraction(t + 1)).toBeGreaterThan(sucroseSolubilityFraction(t));
  }
  expect(() => sucroseSolubilityFraction(101)).toThrow('temperature (C) is 101; allowed is -13 to 100');
});
