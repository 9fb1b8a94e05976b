/** Can a cook be told by a kit that was likely? Judged before anything is learned from it. */
import type { Replay } from './replay.ts';
import type { Smoothed } from './smoother.ts';

export interface Verdict {
  readonly accepted: boolean;
  /** Mean square of what the fit leaves, in the stated errors; 1 when all is as stated. */
  readonly misfit: number;
  readonly mostMisfit: number;
  /** What is left of readings, root mean square, C. */
  readonly readingsOffC: number;
  /** Squared distance of the fitted kit from what was known, in standard deviations, and what one cook in a thousand exceeds. */
  readonly shift: number;
  readonly shiftLimit: number;
}

/** More than three times the stated errors is no error of the model that we know. */
export const mostMisfit = 9;

/**
 * @param misfit of the fit with the stated errors
 * @param kitCount how many of the fitted scores are the kit's; they come first
 */
export function judged(replay: Replay, fit: Smoothed, misfit: number, kitCount: number): Verdict {
  const shift = squares(fit.centre.subarray(0, kitCount));
  const shiftLimit = chiSquareLimit(Math.max(3, fixedBy(fit)));
  const accepted = misfit <= mostMisfit && shift <= shiftLimit;
  return { accepted, misfit, mostMisfit, readingsOffC: readingsOffC(replay, fit), shift, shiftLimit };
}

/** Mean square of what a fit leaves, for each observation that it could have missed. */
export function misfitOf(fit: Smoothed): number {
  return squares(fit.residuals) / Math.max(1, fit.residuals.length - fixedBy(fit));
}

function readingsOffC({ observations }: Replay, { predicted }: Smoothed): number {
  const off = observations.flatMap(({ observation }, k) =>
    k < predicted.length && observation.kind === 'reading' ? [observation.valueC - predicted[k]] : [],
  );
  return Math.sqrt(squares(off) / Math.max(1, off.length));
}

function squares(values: Iterable<number>): number {
  let sum = 0;
  for (const value of values) sum += value * value;
  return sum;
}

/** How many numbers the observations really fixed. */
function fixedBy({ precisionRoot, centre }: Smoothed): number {
  return centre.length - traceOfInverse(precisionRoot, centre.length);
}

/** Trace of (L L')^-1. */
function traceOfInverse(lower: Float64Array, n: number): number {
  let sum = 0;
  const column = new Float64Array(n);
  for (let j = 0; j < n; j++) {
    column.fill(0);
    for (let i = j; i < n; i++) {
      let value = i === j ? 1 : 0;
      for (let k = j; k < i; k++) value -= lower[i * n + k] * column[k];
      column[i] = value / lower[i * n + i];
      sum += column[i] ** 2;
    }
  }
  return sum;
}

/** 99.9 % mark of chi-squared (Wilson & Hilferty 1931, PNAS 17:684; within 1 % from 3 degrees of freedom). */
function chiSquareLimit(degrees: number): number {
  const share = 2 / (9 * degrees);
  return degrees * (1 - share + 3.0902 * Math.sqrt(share)) ** 3;
}
