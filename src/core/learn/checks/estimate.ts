/** A measured number with how far off it may be, by the rules of the GUM (JCGM 100:2008): parts of known spread, and scatter seen in few readings. */
import { requireRange } from '../../matter/range.ts';

export interface Estimate {
  readonly value: number;
  /** Standard uncertainty. */
  readonly sd: number;
  /** 10-90 % range: holds the truth eight times in ten. */
  readonly low: number;
  readonly high: number;
  /** 5-95 % range: nine times in ten. */
  readonly wideLow: number;
  readonly wideHigh: number;
}

/** @param degrees of freedom of the standard uncertainty; endless when it is known */
export function estimateOf(value: number, sd: number, degrees = Number.POSITIVE_INFINITY): Estimate {
  const eight = sd * studentT(1.2816, degrees);
  const nine = sd * studentT(1.6449, degrees);
  return { value, sd, low: value - eight, high: value + eight, wideLow: value - nine, wideHigh: value + nine };
}

/** Mean of readings that scatter, and the spread of a single one. */
export function meanOf(values: readonly number[]): { readonly mean: number; readonly scatter: number } {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return { mean, scatter: Math.sqrt(squares / Math.max(1, values.length - 1)) };
}

/**
 * Standard uncertainty of the mean of readings, less what is subtracted from it, and its effective degrees of freedom
 * (Welch-Satterthwaite, JCGM 100:2008, eq. G.2b).
 *
 * @param others standard uncertainties that are the same in each reading
 */
export function combined(
  readings: readonly number[],
  others: readonly number[],
): { readonly mean: number; readonly sd: number; readonly degrees: number } {
  requireRange('number of readings', readings.length, 3, 10_000);
  const { mean, scatter } = meanOf(readings);
  const own = scatter ** 2 / readings.length;
  const variance = others.reduce((sum, sd) => sum + sd ** 2, own);
  const degrees = own > 0 ? ((readings.length - 1) * variance ** 2) / own ** 2 : Number.POSITIVE_INFINITY;
  return { mean, sd: Math.sqrt(variance), degrees };
}

/**
 * Student's t that belongs to a normal score, by Cornish and Fisher's expansion (Abramowitz & Stegun 1964, 26.7.5); within 1 % from
 * 2 degrees of freedom on for 5-95 %.
 */
export function studentT(z: number, degrees: number): number {
  if (!Number.isFinite(degrees)) return z;
  const z2 = z * z;
  const first = (z2 + 1) / 4;
  const second = ((5 * z2 + 16) * z2 + 3) / 96;
  const third = (((3 * z2 + 19) * z2 + 17) * z2 - 15) / 384;
  const fourth = ((((79 * z2 + 776) * z2 + 1482) * z2 - 1920) * z2 - 945) / 92_160;
  return z * (1 + (first + (second + (third + fourth / degrees) / degrees) / degrees) / degrees);
}

/** Value of chi-squared over its degrees of freedom that belongs to a normal score (Wilson & Hilferty 1931, PNAS 17:684). */
export function chiSquareShare(z: number, degrees: number): number {
  const part = 2 / (9 * degrees);
  return (1 - part + z * Math.sqrt(part)) ** 3;
}
