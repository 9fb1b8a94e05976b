import { expect, test } from 'vitest';
import { normalNumbers } from '../reactions/normal.ts';
import { assimilate, meanAndVariance } from './assimilate.ts';

const members = 4000;

/** Two coordinates: x standard normal, z independent of it; the observation sees x. */
function ensembleOf(seed: number) {
  const normal = normalNumbers(seed);
  const ensemble = new Float64Array(members * 2);
  for (let i = 0; i < members; i++) {
    ensemble[2 * i] = normal();
    ensemble[2 * i + 1] = normal();
  }
  return ensemble;
}

const column = (ensemble: Float64Array, j: number) =>
  Float64Array.from({ length: members }, (_, i) => ensemble[2 * i + j]);

test('a linear Gaussian observation gives the Kalman filter’s mean and variance', () => {
  const ensemble = ensembleOf(1);
  const expected = column(ensemble, 0);
  assimilate({
    ensemble,
    coordinates: 2,
    expected,
    observed: 2,
    variance: 1,
    reach: Float64Array.of(1, 1),
    relaxation: 0,
  });
  // Prior N(0, 1), observation 2 with variance 1: posterior N(1, 1/2).
  const x = meanAndVariance(column(ensemble, 0));
  expect(Math.abs(x.mean - 1)).toBeLessThan(0.05);
  expect(Math.abs(x.variance - 0.5)).toBeLessThan(0.03);
  // What does not go with it stays as it was: a chance correlation of the sample is not believed.
  const z = meanAndVariance(column(ensemble, 1));
  expect(Math.abs(z.mean)).toBeLessThan(0.05);
  expect(Math.abs(z.variance - 1)).toBeLessThan(0.06);
});

test('what is out of reach is not touched', () => {
  const ensemble = ensembleOf(2);
  const before = ensemble.slice();
  const expected = column(ensemble, 0);
  assimilate({
    ensemble,
    coordinates: 2,
    expected,
    observed: 2,
    variance: 1,
    reach: Float64Array.of(0, 1),
    relaxation: 0,
  });
  expect(column(ensemble, 0)).toEqual(column(before, 0));
});

test('full relaxation keeps the spread and moves the mean alone', () => {
  const ensemble = ensembleOf(3);
  const before = meanAndVariance(column(ensemble, 0));
  const expected = column(ensemble, 0);
  assimilate({
    ensemble,
    coordinates: 2,
    expected,
    observed: 2,
    variance: 1,
    reach: Float64Array.of(1, 0),
    relaxation: 1,
  });
  const after = meanAndVariance(column(ensemble, 0));
  expect(after.variance).toBeCloseTo(before.variance, 9);
  expect(after.mean).toBeGreaterThan(before.mean + 0.8);
});

test('a coordinate that has faded to next to nothing stays as it is, and is a number', () => {
  const ensemble = ensembleOf(3);
  // As the watts of a ring that was turned off two hours ago.
  for (let i = 0; i < members; i++) ensemble[2 * i + 1] = (i % 7) * 1e-162;
  const faded = column(ensemble, 1);
  assimilate({
    ensemble,
    coordinates: 2,
    expected: column(ensemble, 0),
    observed: 2,
    variance: 1,
    reach: Float64Array.of(1, 1),
    relaxation: 0.3,
  });
  expect(column(ensemble, 1)).toEqual(faded);
  expect(column(ensemble, 0).every(Number.isFinite)).toBe(true);
});
