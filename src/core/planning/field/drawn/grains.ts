/**
 * The field's paint: grains like a sugar's, each in the colour of one cook that its spot may turn out as. Where the colour is sure the grains
 * look alike; where it isn't they differ, and among many of them 8 in 10 lie within the band.
 */
import { dropColour } from '../../../colour/drop.ts';
import { specificFromRating } from '../../../colour/rating.ts';
import { ebcFromA430 } from '../../../colour/scales.ts';
import { syrupColour } from '../../../colour/syrup.ts';
import type { Look } from '../../aim.ts';
import type { ColourBand } from '../band.ts';
import { planeAt } from '../plane.ts';
import type { MadeHere, Planes } from './planes.ts';

/** Where the grains lie, and which of its spot's possible cooks each shows. */
export interface Grains {
  readonly width: number;
  readonly height: number;
  /** The grain of each pixel. */
  readonly grainAt: Int32Array;
  readonly places: readonly { readonly u: number; readonly v: number; readonly score: number }[];
}

/** A number from 0 to 1 that looks like chance and is always the same. */
function scattered(n: number): number {
  const x = Math.sin(n * 127.1 + 11.7) * 43758.5453;
  return x - Math.floor(x);
}

/** Shares spread evenly over any patch of neighbours (Roberts 2018: the additive recurrence of the plastic number). */
function evenShare(column: number, row: number): number {
  const x = 0.5 + column * 0.7548776662466927 + row * 0.5698402909980532;
  return x - Math.floor(x);
}

/** Standard normal mark of a share, to a few per cent: by the logistic curve (from memory: Bowling et al. 2009). */
const scoreOf = (share: number): number => Math.log((0.02 + 0.96 * share) / (0.98 - 0.96 * share)) / 1.702;

/**
 * @param width and height of the picture, pixels
 * @param pitch from grain to grain, pixels
 */
export function grainsFor(width: number, height: number, pitch: number): Grains {
  const [across, down] = [Math.ceil(width / pitch) + 2, Math.ceil(height / pitch) + 2];
  const xs = new Float32Array(across * down);
  const ys = new Float32Array(across * down);
  const places = Array.from({ length: across * down }, (_, i) => {
    const [column, row] = [i % across, Math.floor(i / across)];
    xs[i] = (column - 0.5 + 0.7 * (scattered(i) - 0.5)) * pitch;
    ys[i] = (row - 0.5 + 0.7 * (scattered(i + 0.5) - 0.5)) * pitch;
    return { u: (xs[i] ?? 0) / width, v: 1 - (ys[i] ?? 0) / height, score: scoreOf(evenShare(column, row)) };
  });
  const grainAt = new Int32Array(width * height);
  for (let y = 0; y < height; y++) {
    const row = Math.floor(y / pitch) + 1;
    for (let x = 0; x < width; x++) {
      const column = Math.floor(x / pitch) + 1;
      let nearest = 0;
      let least = Number.POSITIVE_INFINITY;
      for (let r = row - 1; r <= row + 1; r++) {
        for (let c = column - 1; c <= column + 1; c++) {
          const i = r * across + c;
          const distance =
            (x - (xs[i] ?? Number.POSITIVE_INFINITY)) ** 2 + (y - (ys[i] ?? Number.POSITIVE_INFINITY)) ** 2;
          if (distance < least) {
            least = distance;
            nearest = i;
          }
        }
      }
      grainAt[y * width + x] = nearest;
    }
  }
  return { width, height, grainAt, places };
}

/** Colours as they are first asked for, by steps of the colour's logarithm and of the hue that no eye tells apart. */
const paints: Record<Look, Map<number, number>> = { glass: new Map(), drop: new Map() };
const [lnStep, hueStep] = [0.02, 0.1];

/** Red, green and blue in the order of a canvas' bytes, opaque. */
function paintOf(look: Look, lnA430: number, hueIndex: number, waterShare: number): number {
  const [ln, hue] = [Math.round(lnA430 / lnStep), Math.round(hueIndex / hueStep)];
  const key = ln * 1000 + hue;
  const known = paints[look].get(key);
  if (known !== undefined) return known;
  const [a430, index] = [Math.exp(ln * lnStep), hue * hueStep];
  const { r, g, b } =
    look === 'glass'
      ? syrupColour(a430, 1, index)
      : dropColour(specificFromRating(ebcFromA430(a430), 'tenPercentByWeight'), index, waterShare);
  const paint = (0xff000000 | (b << 16) | (g << 8) | r) >>> 0;
  paints[look].set(key, paint);
  return paint;
}

/** The same for a style. */
export function cssOf(look: Look, { a430, hueIndex, waterShare }: Omit<MadeHere, 'minutes' | 'taste'>): string {
  const paint = paintOf(look, Math.log(a430), hueIndex, waterShare);
  return `rgb(${paint & 255} ${(paint >> 8) & 255} ${(paint >> 16) & 255})`;
}

const ninthDecile = 1.2816;

/** @returns pixels for a canvas; clear where nothing is made */
export function painted(grains: Grains, planes: Planes, band: ColourBand | undefined, look: Look): Uint32Array {
  const colours = Uint32Array.from(grains.places, ({ u, v, score }) => {
    const middle = planeAt(planes.lnA430, u, v);
    if (Number.isNaN(middle)) return 0;
    const { low, high } = band?.at(u, v) ?? { low: 1, high: 1 };
    const [from, to] = [Math.log(low), Math.log(high)];
    const off = (from + to) / 2 + (score * (to - from)) / (2 * ninthDecile);
    return paintOf(
      look,
      middle + (Number.isNaN(off) ? 0 : off),
      planeAt(planes.hueIndex, u, v),
      planeAt(planes.waterShare, u, v),
    );
  });
  return Uint32Array.from(grains.grainAt, (grain) => colours[grain] ?? 0);
}
