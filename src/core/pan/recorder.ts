/** Keeps what the integrator passes through, and reads it back at equal times. */
import type { Pan } from './physics.ts';
import { movingCount, stateSize } from './state.ts';

/** Beside the state, at each point kept: temperature, its slope, pH, boiling temperature, steam. */
const extras = 5;
const width = 1 + stateSize + movingCount + extras;
const slopesAt = 1 + stateSize;
const extrasAt = slopesAt + movingCount;

/** Points of a two-hour cook. */
const usualPoints = 1100;

export interface Sampled {
  readonly timeS: Float64Array;
  readonly states: Float64Array[];
  readonly temperatureC: Float64Array;
  readonly ph: Float64Array;
  readonly boilsC: Float64Array;
  readonly steamKgPerS: Float64Array;
}

export interface Recorder {
  /** Keeps a point; the pan's view must be that of y. Two points at one time stand for a deed between them. */
  keep(timeS: number, y: Float64Array, dy: Float64Array, pan: Pan): void;
  sample(everyS: number): Sampled;
}

export function createRecorder(): Recorder {
  let kept = new Float64Array(width * usualPoints);
  let count = 0;

  return {
    keep(timeS, y, dy, pan) {
      if ((count + 1) * width > kept.length) {
        const larger = new Float64Array(kept.length * 2);
        larger.set(kept);
        kept = larger;
      }
      const at = count++ * width;
      kept[at] = timeS;
      for (let i = 0; i < stateSize; i++) kept[at + 1 + i] = y[i];
      for (let i = 0; i < movingCount; i++) kept[at + slopesAt + i] = dy[i];
      const { view } = pan;
      kept[at + extrasAt] = view.temperatureC;
      kept[at + extrasAt + 1] = view.warmingKPerS;
      kept[at + extrasAt + 2] = view.ph;
      kept[at + extrasAt + 3] = view.boilsC;
      kept[at + extrasAt + 4] = view.steamKgPerS;
    },

    sample(everyS) {
      const rows = rowsOf(kept, count, everyS);
      const cubic = (valueAt: number, slopeAt: number) => cubicColumn(kept, rows, valueAt, slopeAt);
      const linear = (valueAt: number) => linearColumn(kept, rows, valueAt);
      return {
        timeS: rows.timeS,
        states: Array.from({ length: stateSize }, (_, i) =>
          i < movingCount ? cubic(1 + i, slopesAt + i) : heldColumn(kept, rows, 1 + i),
        ),
        temperatureC: cubic(extrasAt, extrasAt + 1),
        ph: linear(extrasAt + 2),
        boilsC: linear(extrasAt + 3),
        steamKgPerS: linear(extrasAt + 4),
      };
    },
  };
}

/** Where the rows of the output fall among the points kept. */
interface Rows {
  readonly timeS: Float64Array;
  /** Share of its segment that has passed at each row, 0 to 1. */
  readonly share: Float64Array;
  /** First row of each segment between two points, and the number of rows at the end; empty segments begin where the next does. */
  readonly firstOf: Int32Array;
}

/** A row belongs to the last segment that starts at or before it, so that a deed shows at once. */
function rowsOf(kept: Float64Array, points: number, everyS: number): Rows {
  const count = Math.floor(kept[(points - 1) * width] / everyS) + 1;
  const timeS = new Float64Array(count);
  const share = new Float64Array(count);
  const firstOf = new Int32Array(points);
  for (let segment = 0, row = 0; segment < points - 1; segment++) {
    firstOf[segment] = row;
    const startS = kept[segment * width];
    const endS = kept[(segment + 1) * width];
    const isLast = segment === points - 2;
    for (; row < count && (isLast || row * everyS < endS); row++) {
      timeS[row] = row * everyS;
      share[row] = endS > startS ? (timeS[row] - startS) / (endS - startS) : 1;
    }
  }
  firstOf[points - 1] = count;
  return { timeS, share, firstOf };
}

// One column after the other, each through all segments: the polynomial of a segment is worked out once for all of its rows.

/** A column by cubic Hermite interpolation, from the places of value and slope within a point. */
function cubicColumn(kept: Float64Array, { share, firstOf }: Rows, valueAt: number, slopeAt: number): Float64Array {
  const out = new Float64Array(share.length);
  for (let segment = 0, at = 0; segment < firstOf.length - 1; segment++, at += width) {
    const end = firstOf[segment + 1];
    let row = firstOf[segment];
    if (row === end) continue;
    const h = kept[at + width] - kept[at];
    const value = kept[at + valueAt];
    const slope = h * kept[at + slopeAt];
    const rise = kept[at + width + valueAt] - value;
    const bend = h * kept[at + width + slopeAt] + slope - 2 * rise;
    const square = rise - slope - bend;
    for (; row < end; row++) {
      const u = share[row];
      out[row] = value + u * (slope + u * (square + u * bend));
    }
  }
  return out;
}

/** A column by straight lines. */
function linearColumn(kept: Float64Array, { share, firstOf }: Rows, valueAt: number): Float64Array {
  const out = new Float64Array(share.length);
  for (let segment = 0, at = valueAt; segment < firstOf.length - 1; segment++, at += width) {
    const value = kept[at];
    const rise = kept[at + width] - value;
    for (let row = firstOf[segment]; row < firstOf[segment + 1]; row++) out[row] = value + share[row] * rise;
  }
  return out;
}

/** A column of a value that changes by deeds alone. */
function heldColumn(kept: Float64Array, { share, firstOf }: Rows, valueAt: number): Float64Array {
  const out = new Float64Array(share.length);
  for (let segment = 0; segment < firstOf.length - 1; segment++) {
    const value = kept[segment * width + valueAt];
    for (let row = firstOf[segment]; row < firstOf[segment + 1]; row++) out[row] = value;
  }
  return out;
}
