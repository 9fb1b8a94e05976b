/** The uncertainty range of a value, from what is known of its error. */
import { normalNumbers } from '../../core/reactions/normal.ts';

/** What the range stands for. */
export type RangeMeaning = '10-90 %' | 'stated error' | 'exact';

export interface Ranged {
  readonly value: number;
  readonly range: readonly [number, number];
  readonly rangeMeans: RangeMeaning;
}

/** Standard deviations from the middle of a normal spread to its 90 % mark. */
export const z90 = 1.2815515655446004;

/** A definition: no error but that of what was put in. */
export function exact(value: number): Ranged {
  return { value, range: [value, value], rangeMeans: 'exact' };
}

/** An error stated either way. */
export function give(value: number, error: number, lowest = Number.NEGATIVE_INFINITY): Ranged {
  return { value, range: [Math.max(lowest, value - error), value + error], rangeMeans: 'stated error' };
}

/** An error stated as a share of the value. */
export function giveShare(value: number, share: number): Ranged {
  return give(value, Math.abs(value) * share);
}

/** An error stated as a factor either way. */
export function giveFactor(value: number, factor: number): Ranged {
  return { value, range: [value / factor, value * factor], rangeMeans: 'stated error' };
}

/** A normal spread. */
export function normal(value: number, sd: number, lowest = Number.NEGATIVE_INFINITY): Ranged {
  return { ...give(value, z90 * sd, lowest), rangeMeans: '10-90 %' };
}

/** A spread that is normal in the logarithm. */
export function lognormal(value: number, lnSd: number): Ranged {
  return { ...giveFactor(value, Math.exp(z90 * lnSd)), rangeMeans: '10-90 %' };
}

/** The range between two values found by moving an input from its 10 % to its 90 % mark. */
export function between(value: number, one: number, other: number): Ranged {
  return { value, range: [Math.min(one, other), Math.max(one, other)], rangeMeans: '10-90 %' };
}

const draws = 400;

/** The range of a function of normal numbers, by drawing; the same each time. */
export function drawn(of: (normal: () => number) => number): Ranged {
  const source = normalNumbers(1);
  const values = Array.from({ length: draws }, () => of(source)).sort((a, b) => a - b);
  const at = (share: number) => values[Math.round(share * (draws - 1))] ?? Number.NaN;
  return { value: of(() => 0), range: [at(0.1), at(0.9)], rangeMeans: '10-90 %' };
}
