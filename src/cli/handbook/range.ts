/** The uncertainty range of a value, from what is known of its error. */
import { normalNumbers } from '../../core/reactions/normal.ts';

/** What the range stands for. */
export type RangeMeaning = '10-90 %' | 'exact' | ErrorMeaning;

/** Where an error either way comes from: the source states it, tests hold the value to it against a table, or nobody measured it. */
export type ErrorMeaning =
  | 'stated error'
  | 'checked against a table'
  | 'error from memory'
  | 'error assumed'
  | 'error from memory or assumed'
  | 'what the weather does';

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

/** An error either way. */
export function give(value: number, error: number, rangeMeans: ErrorMeaning): Ranged {
  return { value, range: [value - error, value + error], rangeMeans };
}

/** An error as a share of the value. */
export function giveShare(value: number, share: number, rangeMeans: ErrorMeaning): Ranged {
  return give(value, Math.abs(value) * share, rangeMeans);
}

/** An error as a factor either way. */
export function giveFactor(value: number, factor: number, rangeMeans: ErrorMeaning): Ranged {
  return { value, range: [value / factor, value * factor], rangeMeans };
}

/** A normal spread. */
export function normal(value: number, sd: number, lowest = Number.NEGATIVE_INFINITY): Ranged {
  const reach = z90 * sd;
  return { value, range: [Math.max(lowest, value - reach), value + reach], rangeMeans: '10-90 %' };
}

/** A spread that is normal in the logarithm. */
export function lognormal(value: number, lnSd: number): Ranged {
  const factor = Math.exp(z90 * lnSd);
  return { value, range: [value / factor, value * factor], rangeMeans: '10-90 %' };
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
