import fc from 'fast-check';
import { expect, test } from 'vitest';
import { referenceTable } from '../../../../test/referenceTable.ts';
import type { Refractometer } from '../note.ts';
import { refractometerCorrection, solidsByHydrometer, solidsByRefractometer } from './brix.ts';

const sucrose = { invert: { value: 0, sd: 0 } };
const read: Refractometer = {
  method: 'refractometer',
  brix: 25.6,
  temperatureC: 20,
  compensated: false,
  sugarG: 10,
  waterG: 20,
};

test('the temperature correction is that of the international table of 1936 and of the OIV within 0.06 Brix', () => {
  const rows = referenceTable('brix-temperature-correction').map((row) => {
    const [temperatureC, brix, printed] = ['temperature_C', 'brix', 'correction'].map((name) => Number(row[name])) as [
      number,
      number,
      number,
    ];
    return { table: row['table'], temperatureC, brix, off: refractometerCorrection(brix, temperatureC) - printed };
  });
  expect(rows.length).toBeGreaterThan(250);
  const worst = rows.reduce((a, b) => (Math.abs(a.off) > Math.abs(b.off) ? a : b));
  console.log('refractometer correction, worst:', worst);
  // The two tables themselves part by 0.05 at 15 C.
  expect(Math.abs(worst.off)).toBeLessThan(0.065);
});

test('10 g of syrup in 20 g of water that read 25.6 are 76.8 % (mass balance), good to half a per cent', () => {
  const { value, readingSd, methodSd } = solidsByRefractometer(read, sucrose);
  expect(value).toBeCloseTo(0.768, 6);
  expect(Math.hypot(readingSd, methodSd)).toBeGreaterThan(0.004);
  expect(Math.hypot(readingSd, methodSd)).toBeLessThan(0.008);
});

test('an instrument that corrects by itself is not corrected again', () => {
  const warm = { ...read, temperatureC: 27 };
  expect(solidsByRefractometer({ ...warm, compensated: true }, sucrose).value).toBeCloseTo(0.768, 6);
  expect(solidsByRefractometer(warm, sucrose).value).toBeGreaterThan(0.775);
});

test('honey of refractive index 1.4865 reads 78.4 Brix and has 80.0 % solids (International Honey Commission table), invert about 87 % of them', () => {
  const honey = { ...read, brix: 78.4, sugarG: 10, waterG: 0, compensated: true };
  const { value } = solidsByRefractometer(honey, { invert: { value: 0.875, sd: 0 } });
  expect(value).toBeGreaterThan(0.797);
  expect(value).toBeLessThan(0.802);
});

test('a hydrometer floated at another temperature finds the solids that the density tables have there, within 0.1 %', () => {
  const rows = referenceTable('sucrose-density-temperature').flatMap(({ mass_percent, ...densities }) =>
    Object.entries(densities).flatMap(([column, kgPerM3]) => {
      const [solids, temperatureC] = [Number(mass_percent), Number(/\d+/.exec(column)?.[0])];
      if (temperatureC > 40 || solids < 10 || solids > 70) return [];
      // What the glass shows: a density at 20 C, of an instrument that has grown with the heat.
      const reading = Number(kgPerM3) / (1 - 25e-6 * (temperatureC - 20)) / 998.2;
      const told = { method: 'hydrometer', scale: 'gravity', reading, temperatureC, sugarG: 1, waterG: 0 } as const;
      return [{ solids, temperatureC, off: 100 * solidsByHydrometer(told, sucrose).value - solids }];
    }),
  );
  expect(rows.length).toBeGreaterThan(5);
  const worst = rows.reduce((a, b) => (Math.abs(a.off) > Math.abs(b.off) ? a : b));
  console.log('hydrometer, worst:', worst);
  expect(Math.abs(worst.off)).toBeLessThan(0.1);
});

test('whatever is weighed and mixed, a reading made of it leads back to it', () => {
  const share = fc.double({ min: 0.5, max: 0.99, noNaN: true });
  const back = fc.property(share, fc.double({ min: 1, max: 4, noNaN: true }), (solids, water) => {
    const brix = (100 * solids) / (1 + water);
    const told = { ...read, brix, sugarG: 10, waterG: 10 * water };
    expect(solidsByRefractometer(told, sucrose).value).toBeCloseTo(solids, 9);
  });
  fc.assert(back, { numRuns: 50 });
});

test('refuses what can not be, and names it', () => {
  expect(() => solidsByRefractometer({ ...read, brix: 40 }, sucrose)).toThrow(
    /solids that come of it \(share\) is 1.2/,
  );
  expect(() => refractometerCorrection(20, 35)).toThrow(
    /temperature at the refractometer \(C\) is 35; allowed is 10 to 30/,
  );
});
