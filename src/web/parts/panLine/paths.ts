/** Paths from evenly spaced columns. */
import { area, line } from 'd3-shape';

type Height = (value: number) => number;

export function linePath(column: Float64Array, everyS: number, x: (timeS: number) => number, y: Height): string {
  return (
    line<number>()
      .digits(1)
      .x((_, i) => x(i * everyS))
      .y(y)(column) ?? ''
  );
}

/** Between two columns of one length. */
export function bandPath(
  low: Float64Array,
  high: Float64Array,
  everyS: number,
  x: (timeS: number) => number,
  y: Height,
): string {
  return (
    area<number>()
      .digits(1)
      .x((_, i) => x(i * everyS))
      .y0((_, i) => y(low[i] ?? 0))
      .y1((_, i) => y(high[i] ?? 0))(low) ?? ''
  );
}

/** A strand of the ribbon: from `from` to `to` px below the line, and never below `floor`. */
export function strandPath(
  column: Float64Array,
  everyS: number,
  x: (timeS: number) => number,
  y: Height,
  { from, to, floor }: { readonly from: number; readonly to: number; readonly floor: number },
): string {
  return (
    area<number>()
      .digits(1)
      .x((_, i) => x(i * everyS))
      .y0((value) => Math.min(floor, y(value) + from))
      .y1((value) => Math.min(floor, y(value) + to))(column) ?? ''
  );
}
