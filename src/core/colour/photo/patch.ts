/** A region of a picture: how bright its channels are in linear light, and whether that can be trusted. */
import { decoded } from '../srgb.ts';
import { channels, type PerChannel, perChannel } from './viewer.ts';

/** Pixels in rows, four bytes each: red, green, blue, alpha. As a page's `ImageData`. */
export interface Picture {
  readonly width: number;
  readonly height: number;
  readonly data: ArrayLike<number>;
}

/** In pixels of the picture, from its top left corner. */
export interface Region {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

export interface Patch {
  readonly pixels: number;
  /** Middle byte, 0 to 255. */
  readonly bytes: PerChannel;
  /** Middle in linear light, 1 = the brightest a picture can hold. */
  readonly linear: PerChannel;
  /** By how much it changes from edge to edge, as a share of its middle: light that falls off, a shadow. The greatest of the channels. */
  readonly slope: number;
  /** Scatter of its pixels about their middle, as a share of it: bubbles, a reflection, an edge. The greatest of the channels. */
  readonly scatter: number;
  /** Share of its pixels that touch the top or the bottom of what a picture can hold. */
  readonly clipped: number;
}

/** Fewer pixels than this tell too little. Source: practice for photographs of solutions, 500 pixels and more (from memory). */
export const fewestPixels = 500;

/** @throws RangeError when the region is not within the picture, or is too small */
export function patchOf(picture: Picture, region: Region): Patch {
  const { left, top, width, height } = region;
  if (!(left >= 0 && top >= 0 && left + width <= picture.width && top + height <= picture.height))
    throw new RangeError(
      `the region ${JSON.stringify(region)} is not within ${picture.width} × ${picture.height} pixels`,
    );
  const pixels = width * height;
  if (pixels < fewestPixels)
    throw new RangeError(`the region holds ${pixels} pixels; allowed is ${fewestPixels} and more`);
  const values = perChannel(() => new Float64Array(pixels));
  let clipped = 0;
  for (let at = 0; at < pixels; at++) {
    const x = left + (at % width);
    const y = top + Math.floor(at / width);
    let touches = false;
    channels.forEach((channel, place) => {
      const byte = picture.data[4 * (y * picture.width + x) + place] ?? 0;
      touches ||= byte >= 254 || byte <= 1;
      values[channel][at] = byte;
    });
    if (touches) clipped++;
  }
  const bytes = perChannel((channel) => median(values[channel]));
  const spreads = channels.map((channel) => spreadOf(values[channel], width, bytes[channel]));
  return {
    pixels,
    bytes,
    linear: perChannel((channel) => decoded(bytes[channel])),
    slope: Math.max(...spreads.map(({ slope }) => slope)),
    scatter: Math.max(...spreads.map(({ scatter }) => scatter)),
    clipped: clipped / pixels,
  };
}

/** Of linear light: the plane through it from edge to edge, and the middle distance from that plane. */
function spreadOf(bytes: Float64Array, width: number, middleByte: number): { slope: number; scatter: number } {
  const middle = Math.max(decoded(middleByte), decoded(1));
  const height = bytes.length / width;
  const light = bytes.map((byte) => decoded(byte) / middle);
  const mean = light.reduce((sum, each) => sum + each, 0) / light.length;
  let [ax, ay, xx, yy] = [0, 0, 0, 0];
  light.forEach((each, at) => {
    const [x, y] = placeOf(at, width, height);
    ax += x * (each - mean);
    ay += y * (each - mean);
    xx += x * x;
    yy += y * y;
  });
  const [bx, by] = [xx > 0 ? ax / xx : 0, yy > 0 ? ay / yy : 0];
  const off = light.map((each, at) => {
    const [x, y] = placeOf(at, width, height);
    return Math.abs(each - mean - bx * x - by * y);
  });
  // 1.4826: the middle distance of a normal spread, as a standard deviation.
  return { slope: Math.hypot(bx, by), scatter: 1.4826 * median(off) };
}

/** From -0.5 to 0.5 across and down. */
function placeOf(at: number, width: number, height: number): readonly [number, number] {
  return [((at % width) + 0.5) / width - 0.5, (Math.floor(at / width) + 0.5) / height - 0.5];
}

function median(values: Float64Array): number {
  const sorted = values.slice().sort();
  const half = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
}
