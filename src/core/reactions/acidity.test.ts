import fc from 'fast-check';
import { expect, test } from 'vitest';
import { referenceTable } from '../../../test/referenceTable.ts';
import { type Charges, lnHydrogenActivity, waterPk } from './acidity.ts';

test('pKw follows IAPWS R11-07 within 0.005 from 25 to 160 C; the table is a transcription, a reference library agrees to 0.0005', () => {
  for (const { T_C: t, pKw_IAPWS_R11: pk } of referenceTable('water-pk-iapws')) {
    expect(Math.abs(waterPk(Number(t)) - Number(pk)), `${t} C`).toBeLessThan(0.005);
  }
  // The Python package iapws 1.5 at saturation: 13.9948, 13.0203, 12.2518, 11.8471, 11.5552.
  expect(waterPk(25)).toBeCloseTo(13.9948, 3);
  expect(waterPk(100)).toBeCloseTo(12.2518, 3);
  expect(waterPk(160)).toBeCloseTo(11.5552, 3);
});

const nothing: Charges = {
  base: 0,
  acid: 0,
  citric: 0,
  sugar: 0,
  waterKg: 1,
  buffer: 0,
  bufferPh: 5.6,
  waterK: 1e-14,
  acidK: 10 ** -4.8,
  sugarK: 10 ** -12.2,
};
const ph = (c: Partial<Charges>, start = -12): number => -lnHydrogenActivity({ ...nothing, ...c }, start) / Math.LN10;

test('pure water at 25 C is neutral at pH 7, and strong base or acid shift it as by hand', () => {
  expect(ph({})).toBeCloseTo(7, 6);
  // 0.01 mol NaOH in 1 kg of water, ideal: pH 12.
  expect(ph({ base: 0.01 })).toBeCloseTo(12, 5);
});

test('a weak acid half neutralised sits at its pK, and citric acid follows its three steps', () => {
  // Henderson-Hasselbalch: 0.5 eq of base on 1 eq of acid, much more than free ions.
  expect(ph({ base: 0.5, acid: 1 })).toBeCloseTo(4.8, 3);
  // Half of the second proton of citric acid neutralised: near pK2 (5.26 here), pulled a little by its neighbours.
  expect(Math.abs(ph({ base: 0.15, citric: 0.1 }) - 5.26)).toBeLessThan(0.1);
});

test('ionised sugar caps the pH: the same base in strong sugar solution ends lower', () => {
  expect(ph({ base: 0.1, sugar: 3 })).toBeLessThan(ph({ base: 0.1 }) - 1);
});

test('more base never lowers the pH, and the answer does not depend on the guess', () => {
  const charges = fc.record({
    base: fc.double({ min: 0, max: 1, noNaN: true }),
    acid: fc.double({ min: 0, max: 1, noNaN: true }),
    citric: fc.double({ min: 0, max: 0.05, noNaN: true }),
    sugar: fc.double({ min: 0, max: 5, noNaN: true }),
    waterKg: fc.double({ min: 0.005, max: 1, noNaN: true }),
    buffer: fc.double({ min: 0, max: 0.01, noNaN: true }),
  });
  fc.assert(
    fc.property(charges, fc.double({ min: 1e-6, max: 0.2, noNaN: true }), (c, more) => {
      expect(ph({ ...c, base: c.base + more })).toBeGreaterThanOrEqual(ph(c) - 1e-6);
      expect(ph(c, -30)).toBeCloseTo(ph(c, -2), 5);
    }),
  );
});
