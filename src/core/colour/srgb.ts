/** From XYZ (D65, 2 degrees) to a screen's 8-bit sRGB. Matrix and curve: IEC 61966-2-1:1999 (from memory, cross-checked by the tables). */
import type { Xyz } from './tristimulus.ts';

export interface Srgb {
  /** 0 to 255 each. */
  readonly r: number;
  readonly g: number;
  readonly b: number;
  /** True when the colour is darker or more saturated than a screen can show, and the nearest channel value stands in. */
  readonly clipped: boolean;
}

/** A channel of linear light, 1 = the screen's white; outside 0 to 1 where the screen can't follow. */
export interface LinearRgb {
  readonly r: number;
  readonly g: number;
  readonly b: number;
}

export function linearRgb({ x, y, z }: Xyz): LinearRgb {
  return {
    r: (3.2406 * x - 1.5372 * y - 0.4986 * z) / 100,
    g: (-0.9689 * x + 1.8758 * y + 0.0415 * z) / 100,
    b: (0.0557 * x - 0.204 * y + 1.057 * z) / 100,
  };
}

/** XYZ of a screen's colour, channels 0 to 255: the inverse matrix as the standard prints it. */
export function xyzOfSrgb({ r, g, b }: Pick<Srgb, 'r' | 'g' | 'b'>): Xyz {
  const [red, green, blue] = [100 * decoded(r), 100 * decoded(g), 100 * decoded(b)];
  return {
    x: 0.4124 * red + 0.3576 * green + 0.1805 * blue,
    y: 0.2126 * red + 0.7152 * green + 0.0722 * blue,
    z: 0.0193 * red + 0.1192 * green + 0.9505 * blue,
  };
}

/** 8-bit value of linear light, clipped to 0 to 255. */
export function encoded(linear: number): number {
  const curved = linear <= 0.0031308 ? 12.92 * linear : 1.055 * linear ** (1 / 2.4) - 0.055;
  return Math.round(255 * Math.min(1, Math.max(0, curved)));
}

/** Linear light of an 8-bit value (0 to 255): the inverse of `encoded`. */
export function decoded(byte: number): number {
  const curved = byte / 255;
  return curved <= 0.04045 ? curved / 12.92 : ((curved + 0.055) / 1.055) ** 2.4;
}

export function srgbOf(xyz: Xyz): Srgb {
  const { r, g, b } = linearRgb(xyz);
  return { r: encoded(r), g: encoded(g), b: encoded(b), clipped: !(shown(r) && shown(g) && shown(b)) };
}

/** Within half an 8-bit step of what a channel can show, so that plain white doesn't count as clipped. */
function shown(linear: number): boolean {
  return linear >= -halfStep / 12.92 && linear <= 1 + halfStep * 2.4;
}
const halfStep = 0.5 / 255;
