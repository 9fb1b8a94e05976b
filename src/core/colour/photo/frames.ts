/** The three frames that are laid over a picture: one in the dilution, two on white seen through water. */
import { fewestPixels, type Region } from './patch.ts';

export const frameNames = ['sample', 'white1', 'white2'] as const;
export type FrameName = (typeof frameNames)[number];
export type Frames = Readonly<Record<FrameName, Region>>;

export interface Size {
  readonly width: number;
  readonly height: number;
}

export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** Side of the smallest frame, pixels: it has to hold enough of them. */
export const leastSide = Math.ceil(Math.sqrt(fewestPixels));

/** A square frame about a spot, in whole pixels, shifted and shrunk so that it lies within the picture. */
export function frameAt({ x, y }: Spot, side: number, { width, height }: Size): Region {
  const kept = Math.round(Math.min(Math.max(side, leastSide), width, height));
  const within = (middle: number, most: number) => Math.round(Math.min(Math.max(middle - kept / 2, 0), most - kept));
  return { left: within(x, width), top: within(y, height), width: kept, height: kept };
}
