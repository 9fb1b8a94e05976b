/** Measurements with their errors, and several of one thing brought together without pretending that they know more than they do. */
import type { Range } from '../../twin/range.ts';

/** A value with the error of reading it, which another reading would change, and the one that its method repeats each time (1 sd each). */
export interface Estimate {
  readonly value: number;
  readonly readingSd: number;
  readonly methodSd: number;
}

export interface Combined {
  readonly value: number;
  readonly sd: number;
  /** By how much the readings lie further apart than their errors allow; 1 when they agree (Birge ratio). */
  readonly apart: number;
}

/** Standard deviations from the middle of a normal spread to its 90 % mark. */
export const z90 = 1.2815515655446004;

export function rangeAround(value: number, sd: number): Range {
  return { low: value - z90 * sd, mid: value, high: value + z90 * sd };
}

/** Standard deviation that a range stands for, taken as normal. */
export function sdOfRange({ low, high }: Range): number {
  return (high - low) / (2 * z90);
}

/** Root of the sum of squares: errors that know nothing of each other. */
export function together(...sds: readonly number[]): number {
  return Math.hypot(...sds);
}

/**
 * Several readings of one quantity as one.
 *
 * Readings by one method share the error of that method, which no repetition makes smaller; methods are then weighed by all of their
 * error. Where readings lie further apart than their errors say, the error is made larger until they agree, never smaller.
 *
 * @param byMethod at least one method with at least one reading
 * Source: inverse-variance weights, and the ratio of Birge 1932, Phys. Rev. 40:207, as the Particle Data Group uses it (from memory).
 */
export function combined(byMethod: readonly (readonly Estimate[])[]): Combined {
  const methods = byMethod.map((readings) => {
    const { value, sd, apart } = weighed(readings.map(({ value, readingSd }) => ({ value, sd: readingSd })));
    const methodSd = Math.max(...readings.map((reading) => reading.methodSd));
    return { value, sd: together(sd, methodSd), apart };
  });
  const all = weighed(methods);
  return { ...all, apart: Math.max(all.apart, ...methods.map(({ apart }) => apart)) };
}

function weighed(parts: readonly { readonly value: number; readonly sd: number }[]): Combined {
  const total = parts.reduce((sum, { sd }) => sum + 1 / sd ** 2, 0);
  const value = parts.reduce((sum, part) => sum + part.value / part.sd ** 2, 0) / total;
  const chiSquare = parts.reduce((sum, part) => sum + ((part.value - value) / part.sd) ** 2, 0);
  const apart = parts.length > 1 ? Math.max(1, Math.sqrt(chiSquare / (parts.length - 1))) : 1;
  return { value, sd: apart / Math.sqrt(total), apart };
}
