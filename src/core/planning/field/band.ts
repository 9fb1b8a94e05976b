/**
 * How sure the field's colours are. At the knots of a coarse grid it is cooked in a few kits that lie one standard deviation off in every
 * uncertain number, up or down, by a Hadamard design (Plackett & Burman 1946, Biometrika 33:305): to first order the spread among them is
 * that of all numbers together, without the scatter of as many random draws. In between, the spread of the colour's logarithm is read off.
 * bench/results/field.md compares it with many draws.
 */
import { drawnValues } from '../../pan/model.ts';
import type { PreparedKit } from '../../pan/preparedKit.ts';
import { createField, type FieldSpec, fieldLines } from '../field.ts';
import { type Axis, withinLimit } from './levers.ts';

/** A power of two, above the number of uncertain numbers. */
export const bandDraws = 64;
const knotColumns = 3;
const knotRows = 3;
/** Standard normal mark below which nine in ten lie. */
const ninthDecile = 1.2816;

/** Natural logarithms of A430 at the knots, row by row; NaN where nothing is made. Plain data, for a worker to hand back. */
export type Knots = readonly number[];

/** Colour as a factor of the middle's, at the 10 % and 90 % marks. */
export interface ColourBand {
  /** @param u place along x, and v along y, 0 to 1; NaN where a knot beside it makes nothing */
  at(u: number, v: number): { readonly low: number; readonly high: number };
}

/** Up or down for each uncertain number, in their order: a row of Sylvester's matrix without its first column. */
function designScores(number: number): () => number {
  let column = 0;
  return () => {
    column++;
    let odd = false;
    for (let bits = number & column; bits > 0; bits &= bits - 1) odd = !odd;
    return odd ? -1 : 1;
  };
}

/** As far as the levers may go: a picture may go on past a limit of safety, where nothing is made. */
function knotsOf({ request, x, y }: FieldSpec): FieldSpec {
  return {
    request,
    x: { ...withinLimit(x, request), count: knotColumns },
    y: { ...withinLimit(y, request), count: knotRows },
  };
}

/**
 * The knots in one possible kit.
 *
 * @param number which of the `bandDraws` kits, from 0; none: the centre of every spread
 * @param sucroseKg as the field weighs in
 */
export function knotsDrawn(spec: FieldSpec, prepared: PreparedKit, sucroseKg: number, number?: number): Knots {
  const knots = knotsOf(spec);
  const values = number === undefined ? {} : { values: drawnValues(prepared.kit, designScores(number)) };
  const field = createField(knots, prepared, { sucroseKg, ...values });
  const found = new Array<number>(knotColumns * knotRows).fill(Number.NaN);
  for (const at of fieldLines(knots)) {
    const { along, spots } = field.line(at);
    for (const [i, { made }] of spots.entries()) {
      const [column, row] = along === 'x' ? [i, at] : [at, i];
      if (made) found[row * knotColumns + column] = Math.log(made.a430);
    }
  }
  return found;
}

/** @param drawn the knots of all `bandDraws` kits */
export function colourBand(spec: FieldSpec, middle: Knots, drawn: readonly Knots[]): ColourBand {
  const { x, y } = knotsOf(spec);
  const stretched = (whole: Axis, part: Axis) => (whole.high - whole.low) / (part.high - part.low || 1);
  const [wide, high] = [stretched(spec.x, x), stretched(spec.y, y)];
  const marks = middle.map((centre, knot) => {
    const offsets = drawn.map((one) => one[knot] - centre);
    const mean = offsets.reduce((sum, each) => sum + each, 0) / offsets.length;
    const variance = offsets.reduce((sum, each) => sum + (each - mean) ** 2, 0) / offsets.length;
    const reach = ninthDecile * Math.sqrt(variance);
    return { low: mean - reach, high: mean + reach };
  });
  return {
    at(u, v) {
      const [column, across] = cell(u * wide, knotColumns);
      const [row, up] = cell(v * high, knotRows);
      const read = (name: 'low' | 'high'): number => {
        const knot = (dx: number, dy: number) => marks[(row + dy) * knotColumns + column + dx][name];
        const lower = knot(0, 0) + across * (knot(1, 0) - knot(0, 0));
        const upper = knot(0, 1) + across * (knot(1, 1) - knot(0, 1));
        return Math.exp(lower + up * (upper - lower));
      };
      return { low: read('low'), high: read('high') };
    },
  };
}

/** All at once; a page shares the kits out and calls `knotsDrawn` itself. */
export function fieldBand(spec: FieldSpec, prepared: PreparedKit, sucroseKg: number): ColourBand {
  const drawn = Array.from({ length: bandDraws }, (_, number) => knotsDrawn(spec, prepared, sucroseKg, number));
  return colourBand(spec, knotsDrawn(spec, prepared, sucroseKg), drawn);
}

/** The cell of a knot grid that a share lies in, and the share within it. */
function cell(share: number, knots: number): readonly [number, number] {
  const place = Math.min(1, Math.max(0, share)) * (knots - 1);
  const index = Math.min(knots - 2, Math.floor(place));
  return [index, place - index];
}
