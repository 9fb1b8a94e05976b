import { greatest } from 'd3-array';
import { expect, test } from 'vitest';
import { referenceTable } from '../../../test/referenceTable.ts';
import { pressureAtAltitudePa } from './air.ts';
import { boilingPointOfWaterC } from './water.ts';

test('pressure and boiling water by altitude follow ISO 2533 and IAPWS-IF97 (10 Pa, 0.005 C)', () => {
  const rows = referenceTable('boiling-water-altitude').map((row) => {
    const pressurePa = pressureAtAltitudePa(Number(row['altitude_m']));
    return {
      altitude: row['altitude_m'],
      pascal: pressurePa - Number(row['pressure_Pa']),
      celsius: boilingPointOfWaterC(pressurePa) - Number(row['boiling_C']),
    };
  });
  const worst = greatest(rows, (row) => Math.abs(row.celsius));
  console.log('altitude, worst:', worst);
  expect(Math.abs(worst?.celsius ?? Number.NaN)).toBeLessThan(0.005);
  for (const row of rows) expect(Math.abs(row.pascal)).toBeLessThan(10);
});

test('refuses altitudes above the troposphere', () => {
  expect(() => pressureAtAltitudePa(12_000)).toThrow('altitude (m) is 12000; allowed is -500 to 11000');
});
