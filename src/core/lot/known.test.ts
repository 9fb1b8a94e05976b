import { describe, expect, test } from 'vitest';
import { sugarOfLot } from '../beer/sugarOfLot.ts';
import { ebcFromA430 } from '../colour/scales.ts';
import { expectedOfTold, invertShare, knownOf } from './known.ts';
import type { Note, Reading, Stocked } from './note.ts';

const expected = expectedOfTold({
  massKg: 0.5,
  waterShare: { low: 0.2, mid: 0.24, high: 0.28 },
  inverted: { low: 0.5, mid: 0.6, high: 0.7 },
  ebc: 100,
});
const lot = { name: 'Amber', expected, weighedKg: null };
const at = (day: number) => `2030-03-${String(day).padStart(2, '0')}T10:00:00.000Z`;
const measured = (reading: Reading, day = 2): Note => ({ kind: 'measured', at: at(day), reading });
const stocked = (how: Stocked['how'], kg: number, day: number): Note => ({
  kind: 'stocked',
  at: at(day),
  how,
  kg,
  why: '',
});
const brix = (value: number): Reading => ({
  method: 'refractometer',
  brix: value,
  temperatureC: 20,
  compensated: false,
  sugarG: 10,
  waterG: 20,
});
const photometer: Reading = {
  method: 'absorbance',
  sugarG: 1,
  totalMl: 100,
  fold: 1,
  wavelengthNm: 430,
  absorbance: 0.4,
  pathCm: 1,
};
const eye: Reading = { method: 'comparison', sugarG: 1, totalMl: 100, fold: 1, a430PerCm: 0.2, step: 1.35, depthCm: 3 };

describe('what is known of a lot', () => {
  test('is what was believed, until something is measured', () => {
    const { figures, solids, colour, ph, madeKg } = knownOf(lot, []);
    expect(figures).toEqual(expected);
    expect([solids, colour, ph]).toEqual([undefined, undefined, undefined]);
    expect(madeKg).toEqual(expected.massKg);
  });

  test('a measurement takes the place of the belief, in all that follows from it, and nothing else', () => {
    const { figures, solids } = knownOf(lot, [measured(brix(25.6))]);
    expect(1 - figures.waterShare.mid).toBeCloseTo(solids?.range.mid ?? 0, 12);
    expect(figures.waterShare.high - figures.waterShare.low).toBeLessThan(0.03);
    expect(figures.a430).toEqual(expected.a430);
    expect(figures.inverted).toEqual(expected.inverted);
  });

  test('colour is reckoned with the solids that were measured, not with those believed', () => {
    const alone = knownOf(lot, [measured(photometer)]).figures.ebc;
    const dry = knownOf(lot, [measured(photometer), measured(brix(25.6))]).figures;
    expect(dry.ebc.mid / alone.mid).toBeCloseTo(0.76 / (1 - dry.waterShare.mid), 6);
    expect(dry.ebc.high - dry.ebc.low).toBeLessThan(alone.high - alone.low);
    expect(dry.ebc.mid).toBeCloseTo(ebcFromA430(dry.a430.mid), 9);
  });

  test('an instrument outweighs the eye, and a contradiction is told and widens the range', () => {
    const one = knownOf(lot, [measured(photometer)]);
    const both = knownOf(lot, [measured(photometer), measured(eye)]);
    expect(both.colour?.count).toBe(2);
    expect(Math.abs(Math.log(both.figures.ebc.mid / one.figures.ebc.mid))).toBeLessThan(0.1);
    expect(both.colour?.apart).toBeGreaterThan(2);
    const spread = ({ ebc }: typeof one.figures) => ebc.high / ebc.low;
    expect(spread(both.figures)).toBeGreaterThan(spread(one.figures));
  });

  test('a reading that gives nothing is left out', () => {
    const known = knownOf(lot, [measured(brix(60)), measured({ ...photometer, absorbance: 4 })]);
    expect([known.solids, known.colour]).toEqual([undefined, undefined]);
  });
});

describe('stock', () => {
  test('is what was made, less what was taken, and a count on the scale begins anew, by the days and not by the order of writing', () => {
    const notes = [
      stocked('took', 0.1, 9),
      stocked('counted', 0.38, 5),
      stocked('took', 0.11, 3),
      stocked('added', 0.05, 7),
    ];
    const { stock } = knownOf(lot, notes);
    expect(stock.kg).toBeCloseTo(0.38 + 0.05 - 0.1, 12);
    expect(stock.sd).toBeLessThan(knownOf(lot, []).stock.sd);
    expect(stock.usedUp).toBe(false);
  });

  test('a first weighing is what was made, unless some was taken before', () => {
    expect(knownOf(lot, [stocked('counted', 0.47, 2), stocked('took', 0.1, 3)]).madeKg.mid).toBe(0.47);
    expect(knownOf(lot, [stocked('took', 0.1, 2), stocked('counted', 0.37, 3)]).madeKg).toEqual(expected.massKg);
    expect(knownOf(lot, [stocked('counted', 0, 2)]).madeKg).toEqual(expected.massKg);
  });

  test('is used up when somebody says so, never below nothing, and never of itself', () => {
    expect(knownOf(lot, [stocked('counted', 0, 2)]).stock).toMatchObject({ kg: 0, usedUp: true });
    expect(knownOf(lot, [stocked('took', 0.6, 2)]).stock).toMatchObject({ kg: 0, usedUp: true });
    expect(knownOf({ ...lot, weighedKg: 0.001 }, []).stock.usedUp).toBe(false);
  });
});

test('the glass takes what was measured, what is left, and the alkali of the lot', () => {
  const notes = [measured(brix(25.6)), measured(photometer), stocked('took', 0.2, 3)];
  const { figures } = knownOf(lot, notes);
  const alkali = { substance: 'sodiumHydroxide', gramsPerKgSucrose: 5 } as const;
  const sugar = sugarOfLot({ ...lot, notes, alkali });
  expect(sugar.solids.mid).toBeCloseTo(1 - figures.waterShare.mid, 12);
  expect(sugar.specific430.mid * 103.81).toBeCloseTo(figures.a430.mid, 9);
  expect(sugar.stockKg).toBeCloseTo(0.3, 12);
  expect(sugar.minerals?.sodiumGPerKg.mid).toBeGreaterThan(1.5);
  expect(sugarOfLot({ ...lot, alkali: { ...alkali, gramsPerKgSucrose: 0 } }).minerals?.sodiumGPerKg.mid).toBe(0);
  expect(sugarOfLot(lot).minerals).toBeNull();
});

test('wholly inverted sucrose is all invert sugar; half of it, a little more than half, since it took up water (1.0526)', () => {
  expect(invertShare(0)).toBe(0);
  expect(invertShare(1)).toBeCloseTo(1, 12);
  expect(invertShare(0.5)).toBeCloseTo(0.5263 / 1.0263, 4);
});
