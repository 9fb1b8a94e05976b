import { describe, expect, test } from 'vitest';
import { ratingEbc } from '../../colour/rating.ts';
import type { Absorbance, Comparison, Photo } from '../note.ts';
import {
  colourByAbsorbance,
  colourByComparison,
  colourByPhoto,
  dilutionByPhotometer,
  dilutionOfKnown,
} from './colour.ts';
import { dilutionFor, goodAbsorbance } from './dilution.ts';

const dry = { solids: { value: 1, sd: 0 } };
const told: Absorbance = {
  method: 'absorbance',
  sugarG: 1,
  totalMl: 100,
  fold: 1,
  wavelengthNm: 430,
  absorbance: 0.42,
  pathCm: 1,
};

test('1.00 g in 100 mL that absorbs 0.420 in 1 cm is 0.0420 L/(g cm), EBC 105 at 10 % w/v (definition of EBC)', () => {
  const { value } = colourByAbsorbance(told, dry);
  expect(value).toBeCloseTo(0.042, 12);
  expect(ratingEbc(value, 'tenPercentByVolume')).toBeCloseTo(105, 9);
});

test('the sheet of a plain caramel: 68 % solids, 22 400 EBC as is, from the 1 + 9 dilution of EBC method 6.9 thinned to be read', () => {
  // 10 g in 100 mL has A = 22 400/25/10 = 89.6; 200 fold thinner reads 0.448.
  const sheet = { ...told, sugarG: 10, fold: 200, absorbance: 0.448 };
  const { value } = colourByAbsorbance(sheet, { solids: { value: 0.68, sd: 0 } });
  expect(0.68 * ratingEbc(value, 'asIs')).toBeCloseTo(22_400, 6);
});

test('420 nm reads more than 430 nm: by 1.145 in an average beer, and about so in a sugar (deLange 2016)', () => {
  const at420 = colourByAbsorbance({ ...told, wavelengthNm: 420 }, dry);
  const ratio = 0.042 / at420.value;
  expect(ratio).toBeGreaterThan(1.12);
  expect(ratio).toBeLessThan(1.175);
  expect(at420.methodSd).toBeGreaterThan(colourByAbsorbance(told, dry).methodSd);
});

test('a faint or a black cell is refused, and dark readings are surer than faint ones', () => {
  expect(() => colourByAbsorbance({ ...told, absorbance: 0.01 }, dry)).toThrow(
    /absorbance is 0.01; allowed is 0.03 to 2/,
  );
  expect(() => colourByAbsorbance({ ...told, absorbance: 3 }, dry)).toThrow(/absorbance is 3/);
  const sd = (absorbance: number) => colourByAbsorbance({ ...told, absorbance }, dry).readingSd;
  expect(sd(0.1)).toBeGreaterThan(2 * sd(0.5));
});

const swatch: Comparison = {
  method: 'comparison',
  sugarG: 2,
  totalMl: 200,
  fold: 1,
  a430PerCm: 0.5,
  step: 1.3,
  depthCm: 3,
};

test('a swatch is a colour with an error of a fifth and more: no instrument', () => {
  const { value, readingSd, methodSd } = colourByComparison(swatch, { solids: { value: 0.98, sd: 0.01 } });
  expect(value).toBeCloseTo(0.5 / 9.8, 9);
  expect(Math.hypot(readingSd, methodSd)).toBeGreaterThan(0.2);
});

test('a swatch on a taught screen is the same colour, known a little better; one told without a word of it stays as it was', () => {
  const error = (taught?: boolean) => colourByComparison({ ...swatch, taught }, dry).methodSd;
  expect(colourByComparison(swatch, dry).methodSd).toBeCloseTo(0.2, 12);
  expect(error(false)).toBeCloseTo(0.2, 12);
  expect(error(true)).toBeCloseTo(0.176, 3);
  expect(colourByComparison({ ...swatch, taught: true }, dry).value).toBe(colourByComparison(swatch, dry).value);
});

describe('a picture', () => {
  const same = { r: 0.05, g: 0.1, b: 0.3 };
  const photo: Photo = {
    method: 'photo',
    sugarG: 1,
    totalMl: 100,
    fold: 10,
    light: 'daylight',
    paper: 'behind',
    pathCm: 6,
    absorbance: same,
    sd: same,
    a430Path: 0.48,
    within: 0.15,
    taught: false,
  };

  test('of 1 g/L in a glass of 6 cm that comes to 0.48 is 0.080 L/(g cm); over white the light passes twice', () => {
    expect(colourByPhoto(photo, dry).value).toBeCloseTo(0.08, 12);
    expect(colourByPhoto({ ...photo, paper: 'below' }, dry).value).toBeCloseTo(0.04, 12);
  });

  test('is known no better than the camera, however carefully it was mixed', () => {
    const { readingSd, methodSd } = colourByPhoto(photo, { solids: { value: 0.9, sd: 0.09 } });
    expect(methodSd).toBeGreaterThan(Math.hypot(0.15, 0.1));
    expect(readingSd).toBeLessThan(0.03);
  });

  test('teaches what a photometer said of its dilution, and gives that back', () => {
    const { a430Path, knownWithin } = dilutionByPhotometer(photo, 0.08);
    expect(a430Path).toBeCloseTo(0.48, 12);
    expect(knownWithin).toBeGreaterThan(0.1);
    expect(dilutionByPhotometer(photo, 0.5).knownWithin).toBeLessThan(0.04);
    expect(() => dilutionByPhotometer(photo, 3)).toThrow(/absorbance is 3; allowed is 0.03 to 2/);
    expect(dilutionOfKnown(photo, { value: 0.08, sd: 0.02 }, dry).a430Path).toBeCloseTo(0.48, 12);
  });
});

describe('the dilution helper', () => {
  const wish = {
    specific430: { low: 0.05, mid: 0.06, high: 0.07 },
    solids: 0.98,
    pathCm: 1,
    totalMl: 100,
    divisionG: 0.01,
  };

  test('finds for every colour, cell and scale a dilution whose reading is good, or says that there is none', () => {
    for (const mid of [0.0005, 0.005, 0.02, 0.06, 0.2, 0.9])
      for (const pathCm of [0.5, 1, 5])
        for (const divisionG of [0.01, 0.1, 1]) {
          const specific430 = { low: 0.8 * mid, mid, high: 1.2 * mid };
          const plan = dilutionFor({ ...wish, specific430, pathCm, divisionG });
          const isGood = plan.absorbance.mid >= goodAbsorbance[0] && plan.absorbance.mid <= goodAbsorbance[1];
          expect(isGood || plan.trouble !== undefined).toBe(true);
          expect(plan.sugarG / divisionG).toBeCloseTo(Math.round(plan.sugarG / divisionG), 6);
          expect(plan.sugarG).toBeLessThanOrEqual(0.4 * wish.totalMl + divisionG);
        }
  });

  test('thins twice what would be a pinch on the scale', () => {
    expect(dilutionFor(wish).fold).toBe(1 + 1);
    expect(dilutionFor({ ...wish, divisionG: 0.001 }).fold).toBe(1);
    const coarse = dilutionFor({ ...wish, divisionG: 0.1 });
    expect(coarse.sugarG).toBeGreaterThanOrEqual(8);
    expect(coarse.fold).toBeGreaterThanOrEqual(10);
  });

  test('says that a pale sugar wants a longer path', () => {
    expect(dilutionFor({ ...wish, specific430: { low: 0.0002, mid: 0.0003, high: 0.0004 } }).trouble).toMatch(
      /too pale/,
    );
  });
});
