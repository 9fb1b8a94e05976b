/**
 * An iterated ensemble smoother in its transform form: directions of the uncertain numbers, each as long as its spread is at the time,
 * are carried through the model; the differences to the middle are the sensitivities of a Gauss-Newton step, after which the directions
 * shrink to the spread that is left. With one direction for each uncertain number no sample is drawn, and the result is the same each
 * time. Sakov, Oliver & Bertino 2012, Mon. Weather Rev. 140:1988; Bocquet & Sakov 2014, Q. J. R. Meteorol. Soc. 140:1521. Observations
 * are brought in by degrees: with larger errors as long as much is left (Emerick & Reynolds 2013, Comput. Geosci. 55:3).
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
  readonly mostSteps?: number;
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

/** The errors' variances are taken so many times larger that what is left is this many standard deviations, so that steps don't overshoot. */
const leftAtDegree = 2;
/** A step that leads nowhere is held shorter (Levenberg 1944, Q. Appl. Math. 2:164): by this factor, so many times. */
const caution = 8;
const mostTries = 8;
const usualMostSteps = 20;
/** Settled when a step is this long, squared and in all, in standard deviations of the spread that is left. */
const smallStep = 0.02;
/** Sensitivities are taken over this much of the spread. */
const reach = 0.3;
/** At the stated errors, so many steps that each lower the cost by less than this share lead nowhere any more. */
const mostIdle = 3;
const idleShare = 0.01;

/** @throws RangeError when the model has no answer at the start */
export function smooth({ count, predict, observed, sd, start, mostSteps = usualMostSteps }: Smoothing): Smoothed {
  const rows = observed.length;
  let centre = start?.slice() ?? new Float64Array(count);
  let predicted = required(predict(centre));
  let root: Float64Array = identity(count);
  let settled = false;
  let damping = 0;
  let idle = 0;
  let degree = Number.POSITIVE_INFINITY;

  const residualsOf = (values: Float64Array) => values.map((value, k) => (observed[k] - value) / sd[k]);
  const cost = (scores: Float64Array, values: Float64Array) => squares(scores) + squares(residualsOf(values)) / degree;

  for (let step = 0; step < mostSteps && idle < mostIdle && !settled; step++) {
    const left = squares(residualsOf(predicted)) / rows;
    degree = Math.min(degree, Math.max(1, left / leftAtDegree ** 2));
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
    settled = degree === 1 && squares(solveLower(root, pull)) < smallStep;
    const before = cost(centre, predicted);
    if (!move(precision, pull)) break;
    idle = degree === 1 && cost(centre, predicted) > (1 - idleShare) * before ? idle + 1 : 0;
  }
  return { centre, precisionRoot: root, predicted, residuals: residualsOf(predicted), settled };

  /** Goes where the cost at this degree is lower; shorter and shorter until it is. */
  function move(precision: Float64Array, pull: Float64Array): boolean {
    const before = cost(centre, predicted);
    for (let tries = 0; tries < mostTries; tries++) {
      const held = precision.slice();
      for (let i = 0; i < count; i++) held[i * count + i] *= 1 + damping;
      const lower = cholesky(held, count);
      const way = solveTransposed(lower, solveLower(lower, pull));
      const there = centre.map((score, i) => score + way[i]);
      const found = predict(there);
      if (found && cost(there, found) < before) {
        centre = there;
        predicted = found;
        damping = damping > 0.01 ? damping / caution : 0;
        return true;
      }
      damping = Math.max(0.1, damping * caution);
    }
    return false;
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
        const found = predict(from.map((score, j) => score + way * reach * direction[j]));
        if (!found) continue;
        for (let k = 0; k < rows; k++) along[k * count + i] = (way * (found[k] - middle[k])) / (reach * sd[k]);
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
  if (!values)
    throw new RangeError('the model has no answer for what is believed; allowed: a start that it can follow');
  return values;
}
