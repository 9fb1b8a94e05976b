import { expect, test } from 'vitest';
import { normalNumbers } from '../../reactions/normal.ts';
import { chiSquareShare, type Estimate, studentT } from './estimate.ts';
import { boilingWater, boilingWaterOffset, iceOffset, offsetAt } from './fixedPoints.ts';
import { lagCheck } from './lag.ts';
import { spoonWeighing } from './spoons.ts';

const runs = 600;
/** Two and a half standard errors of a share of 0.8 in 600. */
const within = 0.041;
const inside = (truth: number, { low, high }: { readonly low: number; readonly high: number }) =>
  truth >= low && truth <= high;
const shareOf = (holds: (seed: number) => boolean) =>
  Array.from({ length: runs }, (_, i) => holds(i + 1)).filter(Boolean).length / runs;

test('Student’s t and chi-squared follow the published tables (Abramowitz & Stegun 1964, tables 26.8 and 26.10)', () => {
  for (const [degrees, t90, t95] of [
    [2, 1.886, 2.92],
    [4, 1.533, 2.132],
    [9, 1.383, 1.833],
    [30, 1.31, 1.697],
  ]) {
    expect(Math.abs(studentT(1.2816, degrees) / t90 - 1)).toBeLessThan(0.01);
    expect(Math.abs(studentT(1.6449, degrees) / t95 - 1)).toBeLessThan(0.012);
  }
  expect(Math.abs(9 * chiSquareShare(1.2816, 9) - 14.684)).toBeLessThan(0.05);
  expect(Math.abs(9 * chiSquareShare(-1.2816, 9) - 4.168)).toBeLessThan(0.05);
});

test('water boils at 95.0 C at 1500 m and a barometer tells it more closely than the altitude (ISO 2533, IAPWS)', () => {
  const byAltitude = boilingWater({ altitudeM: 1500 });
  const byBarometer = boilingWater({ pressurePa: 84_556 });
  expect(byAltitude.boilsC).toBeCloseTo(94.98, 1);
  expect(byBarometer.boilsC).toBeCloseTo(94.98, 1);
  expect(byBarometer.sd).toBeLessThan(byAltitude.sd);
});

test('the ranges of both offsets hold the truth eight times in ten, with five readings of 0.2 C of scatter', () => {
  const held = shareOf((seed) => {
    const normal = normalNumbers(seed);
    const offset = 0.8 * normal();
    const pressurePa = 101_325 + 800 * normal();
    const { boilsC } = boilingWater({ pressurePa: pressurePa + 150 * normal() });
    const shown = (truth: number, atHomeK: number) =>
      Array.from({ length: 5 }, () => truth + atHomeK + offset + 0.2 * normal());
    const boiling = boilingWaterOffset(shown(boilsC, 0.1 * normal()), { pressurePa }, 0.01);
    return inside(offset, boiling);
  });
  const heldIce = shareOf((seed) => {
    const normal = normalNumbers(seed + 10_000);
    const offset = 0.8 * normal();
    const bath = 0.1 * normal();
    return inside(
      offset,
      iceOffset(
        Array.from({ length: 5 }, () => bath + offset + 0.2 * normal()),
        0.01,
      ),
    );
  });
  for (const share of [held, heldIce]) expect(Math.abs(share - 0.8)).toBeLessThan(within);
});

test('two fixed points give the error at 140 C, less surely than at either', () => {
  const at = (value: number) => ({ value, sd: 0.15 }) as Estimate;
  const far = offsetAt(140, at(0.2), at(1), 100);
  expect(far.value).toBeCloseTo(1.32, 6);
  expect(far.sd).toBeGreaterThan(0.15);
});

test('a plunge from 21 into 100 C tells lags of 2 to 15 s; the range holds the truth eight times in ten', () => {
  const off: number[] = [];
  const held = shareOf((seed) => {
    const normal = normalNumbers(seed);
    const lagS = 6 * Math.exp(0.5 * normal());
    const plungeS = 0.5 * normal();
    const samples = Array.from({ length: 30 }, (_, i) => {
      const timeS = 1 + 2 * i;
      const valueC = 99.8 - 78.8 * Math.exp(-Math.max(0, timeS - plungeS) / lagS) + 0.2 * normal();
      return { timeS, valueC };
    });
    const { lagS: found } = lagCheck(samples, 21 + 0.2 * normal());
    off.push(Math.abs(found.value / lagS - 1));
    return inside(lagS, found);
  });
  console.log(
    `lag: range holds ${(100 * held).toFixed(1)} %, median error ${(100 * off.toSorted((a, b) => a - b)[runs / 2]).toFixed(1)} %`,
  );
  expect(Math.abs(held - 0.8)).toBeLessThan(within);
  expect(off.toSorted((a, b) => a - b)[runs / 2]).toBeLessThan(0.1);
});

test('ten spoonfuls tell mean and scatter; both ranges hold the truth eight times in ten', () => {
  const weighed = (seed: number) => {
    const normal = normalNumbers(seed);
    return spoonWeighing(
      Array.from({ length: 10 }, () => 0.0046 * (1 + 0.2 * normal()) + 1e-4 * normal()),
      4.92892e-6,
    );
  };
  const mean = shareOf((seed) => inside(0.0046, weighed(seed).meanKg));
  const scatter = shareOf((seed) => inside(0.2, weighed(seed).scatter));
  console.log(`spoons: mean ${(100 * mean).toFixed(1)} %, scatter ${(100 * scatter).toFixed(1)} %`);
  for (const share of [mean, scatter]) expect(Math.abs(share - 0.8)).toBeLessThan(within);
});

test('too few readings are refused, and it is said how many it takes', () => {
  expect(() => iceOffset([0.1, 0.2])).toThrow(/number of readings.*3/);
  expect(() => spoonWeighing([0.005], 5e-6)).toThrow(/number of spoonfuls.*5/);
});
