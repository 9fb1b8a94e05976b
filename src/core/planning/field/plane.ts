/** One quantity over the whole field, also between spots and where lines are still to come: read straight between what is there. */
import type { FieldLine, FieldSpec } from '../field.ts';
import type { Made } from './made.ts';

export interface Plane {
  readonly columns: number;
  readonly rows: number;
  /** By row, then column; NaN where nothing is made. */
  readonly values: Float64Array;
}

/** @param lines at least one; what lies between two of them is read straight across, beyond the last it stays */
export function planeOf({ x, y }: FieldSpec, lines: readonly FieldLine[], value: (made: Made) => number): Plane {
  const [columns, rows] = [x.count, y.count];
  const values = new Float64Array(columns * rows);
  const sorted = [...lines].sort((a, b) => a.at - b.at);
  const along = sorted[0].along;
  const [places, spots] = along === 'x' ? [rows, columns] : [columns, rows];
  const read = sorted.map((line) => Float64Array.from(line.spots, ({ made }) => (made ? value(made) : Number.NaN)));
  let above = 0;
  for (let at = 0; at < places; at++) {
    while (above < sorted.length - 1 && sorted[above].at < at) above++;
    const below = sorted[above].at > at ? Math.max(0, above - 1) : above;
    const [from, to] = [sorted[below].at, sorted[above].at];
    const share = to > from ? Math.min(1, Math.max(0, (at - from) / (to - from))) : 0;
    for (let i = 0; i < spots; i++) {
      values[along === 'x' ? at * columns + i : i * columns + at] = between(read[below][i], read[above][i], share);
    }
  }
  return { columns, rows, values };
}

/** Straight between two values; where one of them is nothing, the nearer alone. */
function between(low: number, high: number, share: number): number {
  if (share === 0) return low;
  const found = low + share * (high - low);
  return Number.isNaN(found) ? (share < 0.5 ? low : high) : found;
}

/** @param u place along x, and v along y, 0 to 1; NaN where nothing is made */
export function planeAt({ columns, rows, values }: Plane, u: number, v: number): number {
  const [c, r] = [Math.min(1, Math.max(0, u)) * (columns - 1), Math.min(1, Math.max(0, v)) * (rows - 1)];
  const [column, row] = [Math.min(columns - 2, Math.floor(c)), Math.min(rows - 2, Math.floor(r))];
  const [across, up] = [c - column, r - row];
  const at = row * columns + column;
  const lower = between(values[at], values[at + 1], across);
  const upper = between(values[at + columns], values[at + columns + 1], across);
  return between(lower, upper, up);
}
