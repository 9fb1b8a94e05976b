import { describe, expect, it } from 'vitest';
import { referenceTable } from '../../../test/referenceTable.ts';
import { ratingEbc, specificFromRating } from './rating.ts';
import * as scales from './scales.ts';

const conversions: Record<string, (given: number) => number> = {
  'A430 > SRM': scales.srmFromA430,
  'A430 > EBC': scales.ebcFromA430,
  'SRM > EBC': scales.ebcFromSrm,
  'MCU > SRM': scales.moreySrm,
  'eps430 0.060 at 37.5 g/L over 24 EBC > EBC': (eps) =>
    24 + scales.ebcFromA430(scales.a430FromSpecific(eps, 750 / 20)),
  'A530 > IoB': scales.iobFromA530,
  'A430 at 10 g/L > eps430': (a430) => a430 / 10,
  'eps430 > EBC of 10 % w/v': (eps) => ratingEbc(eps, 'tenPercentByVolume'),
  'eps430 > EBC as is': (eps) => ratingEbc(eps, 'asIs'),
};

describe('colour scales follow their definitions', () => {
  it.each(referenceTable('colour-scales'))(
    '$id: $from $given is $to $expected ($source)',
    ({ from, to, given, expected, tolerance }) => {
      const convert = conversions[`${from} > ${to}`];
      expect(convert).toBeDefined();
      expect(Math.abs((convert?.(Number(given)) ?? Number.NaN) - Number(expected))).toBeLessThanOrEqual(
        Number(tolerance),
      );
    },
  );

  // C1.6: a sugar of 1000 IU at 10 % w/v shows 2.1 to 2.2 EBC, for A420/A430 from 1.12 to 1.175 (derived).
  it.each([5, 6, 7])('1000 ICUMSA units are about 2.2 EBC at 10 % w/v (hue index %i)', (hueIndex) => {
    const ebc = ratingEbc(scales.specificFromIcumsa(1000, hueIndex), 'tenPercentByVolume');
    expect(Math.abs(ebc - 2.2)).toBeLessThanOrEqual(0.1);
  });

  it.each([
    [5, 1.122],
    [6, 1.148],
    [7, 1.175],
  ])('A420/A430 at hue index %i is %d', (hueIndex, ratio) => {
    expect(scales.icumsaFromSpecific(1e-6, hueIndex)).toBeCloseTo(ratio, 3);
  });

  it('conversions undo one another', () => {
    expect(scales.a430FromEbc(scales.ebcFromA430(0.37))).toBeCloseTo(0.37, 12);
    expect(scales.a430FromSrm(scales.srmFromA430(0.37))).toBeCloseTo(0.37, 12);
    expect(scales.srmFromEbc(scales.ebcFromSrm(17))).toBeCloseTo(17, 12);
    expect(scales.specificFromIcumsa(scales.icumsaFromSpecific(0.06, 6.5), 6.5)).toBeCloseTo(0.06, 12);
    expect(specificFromRating(ratingEbc(0.06, 'tenPercentByWeight'), 'tenPercentByWeight')).toBeCloseTo(0.06, 12);
  });
});

it('the 10 % w/w basis holds 10 g in 100 g of solution at the density of 10 % sucrose', () => {
  const { density_kg_m3_20C } = densityOf10Percent();
  expect(ratingEbc(1, 'tenPercentByWeight')).toBeCloseTo(25 * 0.1 * density_kg_m3_20C, 0);
});

function densityOf10Percent() {
  const row = referenceTable('sucrose-density-20C').find(
    ({ mass_percent_sucrose }) => Number(mass_percent_sucrose) === 10,
  );
  const { density_kg_m3_20C_vacuum } = row ?? {};
  return { density_kg_m3_20C: Number(density_kg_m3_20C_vacuum) };
}

it('Lovibond and SRM part only above about 3 degrees', () => {
  expect(scales.srmFromLovibond(2)).toBe(2);
  expect(scales.srmFromLovibond(60)).toBeCloseTo(80.5, 1);
});
