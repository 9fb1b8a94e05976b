/** Can a cook be told by a kit that was likely? Judged before anything is learned from it. */
import type { Smoothed } from './smoother.ts';

export interface Verdict {
  readonly accepted: boolean;
  /** Mean square of what the fit leaves, in the stated errors; 1 when all is as stated. */
  readonly misfit: number;
  /** What is left of readings, root mean square, C. */
  readonly readingsOffC: number;
  /** Squared distance of the fitted kit from what was known, in standard deviations, and what one cook in a thousand exceeds. */
  readonly shift: number;
  readonly shiftLimit: number;
  /** Did the fit come to rest? */
  readonly settled: boolean;
}

/** More than three times the stated errors is no error of the model that we know. */
export const mostMisfit = 9;

/** How many numbers the observations really fixed. */
export function fixedBy({ precisionRoot, centre }: Smoothed): number {
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
export function chiSquareLimit(degrees: number): number {
  const share = 2 / (9 * degrees);
  return degrees * (1 - share + 3.0902 * Math.sqrt(share)) ** 3;
}
