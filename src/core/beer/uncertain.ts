/**
 * From ranges of what goes in to ranges of what comes out: the middle is computed from the middles, the marks are those of seeded
 * draws. The draws are the same each time, so that more of something never looks like less by chance.
 */
import { normalNumbers } from '../reactions/normal.ts';
import { type Parameter, valueAt } from '../reactions/parameter.ts';
import { type Range, rangeOf } from '../twin/range.ts';

/** Takes a value out of a range. */
export type Pick = (range: Range) => number;

/** Standard deviations from the middle of a normal spread to its 90 % mark. */
const z90 = 1.2815515655446004;
const draws = 400;

export const central: Pick = ({ mid }) => mid;

export function certain(value: number): Range {
  return { low: value, mid: value, high: value };
}

/** The 10, 50 and 90 % marks of a parameter. */
export function rangeOfParameter(parameter: Parameter): Range {
  return { low: valueAt(parameter, -z90), mid: valueAt(parameter, 0), high: valueAt(parameter, z90) };
}

/** A range moved and stretched by a plain number, 0 or more. */
export function timesRange({ low, mid, high }: Range, factor: number): Range {
  return { low: low * factor, mid: mid * factor, high: high * factor };
}

/**
 * Ranges of everything that `compute` gives.
 *
 * @param compute asks `pick` for the same ranges in the same order each time
 */
export function rangesOf<Name extends string>(
  compute: (pick: Pick) => Readonly<Record<Name, number>>,
): Readonly<Record<Name, Range>> {
  const middle = compute(central);
  const normal = normalNumbers(1);
  const drawn = Array.from({ length: draws }, () => compute((range) => drawFrom(range, normal())));
  const around = (name: Name): Range => {
    const { low, high } = rangeOf(drawn.map((each) => each[name]));
    const mid = middle[name];
    return { low: Math.min(low, mid), mid, high: Math.max(high, mid) };
  };
  const names = Object.keys(middle) as Name[];
  return Object.fromEntries(names.map((name) => [name, around(name)])) as Record<Name, Range>;
}

/** A half normal to each side of the middle; not further than 1.5 times the way to a mark, so that nothing absurd is drawn. */
function drawFrom({ low, mid, high }: Range, normal: number): number {
  const z = Math.max(-1.5, Math.min(1.5, normal / z90));
  return mid + z * (z < 0 ? mid - low : high - mid);
}
