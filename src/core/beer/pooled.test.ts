import { expect, it } from 'vitest';
import { normalNumbers } from '../reactions/normal.ts';
import { rangeOf } from '../twin/range.ts';
import { drawnMeans, evenlyDrawn, poolingAt } from './pooled.ts';

it('draws two groups half way to their mean when their error is as large as their difference is likely to be', () => {
  // Means 8 and 4, variances 1, between them 1: precisions 1/2 each, so the common mean is 6 with variance 1; shrunk by a half: 7 and 5.
  const groups = [
    { mean: 8, variance: 1 },
    { mean: 4, variance: 1 },
  ];
  const pooling = poolingAt(groups, 1);
  expect(pooling.commonMean).toBeCloseTo(6, 12);
  expect(pooling.commonVariance).toBeCloseTo(1, 12);
  // ln of 1 (common) and of 1/sqrt(2) twice, and -(2^2 + 2^2) / (2 * 2).
  expect(pooling.logLikelihood).toBeCloseTo(-Math.log(2) - 2, 12);
  expect([...drawnMeans(groups, pooling, () => 0)]).toEqual([7, 5]);
});

it('weighs the better known group more', () => {
  // Precisions 1/(1 + 3) and 1/(9 + 3): (10/4 + 2/12) / (1/4 + 1/12) = 8.
  const groups = [
    { mean: 10, variance: 1 },
    { mean: 2, variance: 9 },
  ];
  expect(poolingAt(groups, Math.sqrt(3)).commonMean).toBeCloseTo(8, 12);
});

it('finds what was published of eight schools', () => {
  // Data: Rubin 1981, J. Educ. Stat. 6:377, as printed in the book's table 5.2 (seen). Result: its table 5.3, made of 200 draws (from memory).
  const means = [28, 8, -3, 7, -1, 1, 18, 12];
  const errors = [15, 10, 16, 11, 9, 11, 10, 18];
  const published = [
    [7, 10, 16],
    [3, 8, 12],
    [2, 7, 11],
    [4, 8, 11],
    [1, 5, 10],
    [2, 6, 10],
    [7, 10, 15],
    [3, 8, 13],
  ];
  const groups = means.map((mean, i) => ({ mean, variance: errors[i] ** 2 }));
  const poolings = Array.from({ length: 120 }, (_, i) => poolingAt(groups, 0.25 + i / 2));
  const weights = poolings.map(({ logLikelihood }) => Math.exp(logLikelihood));
  const normal = normalNumbers(3);
  const drawn = Array.from(evenlyDrawn(weights, 20_000), (at) => drawnMeans(groups, poolings[at], normal));
  for (const [school, quarters] of published.entries()) {
    const sorted = drawn.map((each) => each[school]).toSorted((a, b) => a - b);
    for (const [i, value] of quarters.entries()) {
      const found = sorted[Math.floor(((i + 1) / 4) * sorted.length)];
      // A quarter mark of 200 draws is known within about 0.7 (one standard error), and was printed whole.
      expect(Math.abs(found - value), `school ${school}, quarter ${i + 1}: ${found.toFixed(1)}`).toBeLessThan(2);
    }
  }
});

it('takes each thing as often as its weight says, within one', () => {
  const taken = evenlyDrawn([1, 0, 2.5, 0.5], 40);
  expect([0, 1, 2, 3].map((at) => taken.filter((each) => each === at).length)).toEqual([10, 0, 25, 5]);
});

it('scatters its draws as widely as the two unknowns together', () => {
  // One group leans on nothing: its draws are its own mean and error.
  const groups = [{ mean: 5, variance: 4 }];
  const normal = normalNumbers(1);
  const pooling = poolingAt(groups, 3);
  const { low, mid, high } = rangeOf(Array.from({ length: 20_000 }, () => drawnMeans(groups, pooling, normal)[0]));
  expect(mid).toBeCloseTo(5, 1);
  expect(high - low).toBeCloseTo(2 * 1.2816 * 2, 0);
});
