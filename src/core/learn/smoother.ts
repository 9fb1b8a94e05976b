/**
 * An iterated ensemble smoother in its transform form: directions of the uncertain numbers, each as long as its spread is at the time,
 * are carried through the model; the differences to the middle are the sensitivities of a Gauss-Newton step, after which the directions
 * shrink to the spread that is left. With one direction for each uncertain number no sample is drawn, and the result is the same each
 * time. Sakov, Oliver & Bertino 2012, Mon. Weather Rev. 140:1988; Bocquet & Sakov 2014, Q. J. R. Meteorol. Soc. 140:1521. Observations
 * are brought in by degrees, as Emerick & Reynolds 2013, Comput. Geosci. 55:3 do.
 */
import { cholesky, solveLower, solveTransposed } from '../pan/cholesky.ts';

export interface Smoothing {
  /** How many uncertain numbers there are: scores, independent and standard normal before anything is observed. */
  readonly count: number;
  /** What would be observed; undefined where the model has no answer. */
  readonly predict: (scores: Float64Array) => Float64Array | undefined;
  readonly observed: ArrayLike<number>;
  /** Standard deviation of each observation's error. */
  readonly sd: ArrayLike<number>;
  /** Where to begin; the middle of the scores otherwise. */
  readonly start?: Float64Array;
}

export interface Smoothed {
  readonly centre: Float64Array;
  /** Lower triangle L of the posterior's precision L L', row by row. */
  readonly precisionRoot: Float64Array;
  readonly predicted: Float64Array;
  /** Observed less predicted, in standard deviations. */
  readonly residuals: Float64Array;
  readonly settled: boolean;
}

/** The errors' variances are taken this many times larger at first, so that the first steps don't overshoot. */
const degrees = [64, 16, 4, 1];
const mostSteps = 14;
/** Settled when a step is this small against the spread that is left, as the mean over all scores. */
const smallStep = 0.05;
const mostHalvings = 4;

/** @throws RangeError when the model has no answer at the start */
export function smooth({ count, predict, observed, sd, start }: Smoothing): Smoothed {
  const rows = observed.length;
  let centre = start ? start.slice() : new Float64Array(count);
  let predicted = required(predict(centre));
  let root: Float64Array = identity(count);
  let settled = false;

  const residualsOf = (values: Float64Array) => values.map((value, k) => (observed[k] - value) / sd[k]);
  const cost = (scores: Float64Array, values: Float64Array, degree: number) =>
    squares(scores) + squares(residualsOf(values)) / degree;

  for (let step = start ? degrees.length - 1 : 0; step < mostSteps && !settled; step++) {
    const degree = degrees[step] ?? 1;
    const slopes = slopesAt(centre, predicted, root);
    const residuals = residualsOf(predicted);
    const precision = identity(count);
    const pull = centre.map((score) => -score);
    for (let k = 0; k < rows; k++) {
      for (let i = 0; i < count; i++) {
        const slope = slopes[k * count + i] / degree;
        if (slope === 0) continue;
        pull[i] += slope * residuals[k];
        for (let j = 0; j <= i; j++) precision[i * count + j] += slope * slopes[k * count + j];
      }
    }
    root = cholesky(precision, count);
    const scaled = solveLower(root, pull);
    settled = degree === 1 && squares(scaled) < count * smallStep ** 2;
    moveBy(solveTransposed(root, scaled), degree);
  }
  return { centre, precisionRoot: root, predicted, residuals: residualsOf(predicted), settled };

  /** Goes that way, or a part of it, as long as the cost falls. */
  function moveBy(way: Float64Array, degree: number): void {
    const before = cost(centre, predicted, degree);
    for (let halving = 0; halving <= mostHalvings; halving++) {
      const there = centre.map((score, i) => score + way[i] / 2 ** halving);
      const found = predict(there);
      if (!found || !(cost(there, found, degree) < before)) continue;
      centre = there;
      predicted = found;
      return;
    }
    settled ||= degree === 1;
  }

  /** Change of each prediction, in the errors' standard deviations, with each score; by the directions of the spread that is left. */
  function slopesAt(from: Float64Array, middle: Float64Array, lower: Float64Array): Float64Array {
    const along = new Float64Array(rows * count);
    const unit = new Float64Array(count);
    for (let i = 0; i < count; i++) {
      unit.fill(0);
      unit[i] = 1;
      const direction = solveTransposed(lower, unit);
      for (const way of [1, -1]) {
        const found = predict(from.map((score, j) => score + way * direction[j]));
        if (!found) continue;
        for (let k = 0; k < rows; k++) along[k * count + i] = (way * (found[k] - middle[k])) / sd[k];
        break;
      }
    }
    const slopes = new Float64Array(rows * count);
    for (let k = 0; k < rows; k++) {
      for (let j = 0; j < count; j++) {
        let sum = 0;
        for (let i = 0; i <= j; i++) sum += along[k * count + i] * lower[j * count + i];
        slopes[k * count + j] = sum;
      }
    }
    return slopes;
  }
}

function identity(n: number): Float64Array {
  const matrix = new Float64Array(n * n);
  for (let i = 0; i < n; i++) matrix[i * n + i] = 1;
  return matrix;
}

function squares(values: Float64Array): number {
  let sum = 0;
  for (const value of values) sum += value * value;
  return sum;
}

function required(values: Float64Array | undefined): Float64Array {
  if (!values) throw new RangeError('the model has no answer for what is believed; allowed: a start that it can follow');
  return values;
}
