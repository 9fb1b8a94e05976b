/** A field as a picture of bytes: each sugar a square of its colour; what can't be made is hatched. */
import type { Look } from '../../core/planning/aim.ts';
import type { Grid } from '../../core/planning/field/grid.ts';

export interface Picture {
  readonly width: number;
  readonly height: number;
  /** Red, green and blue of each pixel, row by row from the top. */
  readonly rgb: Uint8Array;
}

const sidePx = 16;
const hatch = [
  [232, 230, 226],
  [176, 172, 166],
] as const;

export function pictureOf(grid: Grid, look: Look): Picture {
  const [width, height] = [grid.columns * sidePx, grid.rows * sidePx];
  const rgb = new Uint8Array(3 * width * height);
  for (let top = 0; top < height; top++) {
    for (let left = 0; left < width; left++) {
      const spot = grid.spot(Math.floor(left / sidePx), grid.rows - 1 - Math.floor(top / sidePx));
      const seen = spot?.made?.[look];
      const paint = seen ? [seen.r, seen.g, seen.b] : hatch[(left + top) % 8 < 2 ? 1 : 0];
      rgb.set(paint, 3 * (top * width + left));
    }
  }
  return { width, height, rgb };
}
