/** What a person notes of a lot later: what an instrument showed, how it tasted, what was taken out. Kept as told; figures follow from it. */
import type { LightKind, PerChannel } from '../colour/photo/viewer.ts';
import type { Strengths, Texture } from './taste.ts';

/** A sugar mixed with water, by weight; no water for one measured as it is. */
interface Mixed {
  readonly sugarG: number;
  readonly waterG: number;
}

/** A sugar made up to a volume, and that thinned again so many fold (1: it was not). */
export interface MadeUp {
  readonly sugarG: number;
  readonly totalMl: number;
  readonly fold: number;
}

export interface Refractometer extends Mixed {
  readonly method: 'refractometer';
  readonly brix: number;
  readonly temperatureC: number;
  /** The instrument corrects for temperature by itself. */
  readonly compensated: boolean;
}

export const hydrometerScales = ['brix', 'gravity'] as const;
export interface Hydrometer extends Mixed {
  readonly method: 'hydrometer';
  readonly scale: (typeof hydrometerScales)[number];
  /** Degrees Brix, or gravity 20/20. */
  readonly reading: number;
  readonly temperatureC: number;
}

export const acidityMeans = ['meter', 'strip'] as const;
export interface Acidity extends Mixed {
  readonly method: 'acidity';
  readonly by: (typeof acidityMeans)[number];
  readonly ph: number;
}

export const wavelengths = [430, 420] as const;
export interface Absorbance extends MadeUp {
  readonly method: 'absorbance';
  readonly wavelengthNm: (typeof wavelengths)[number];
  /** Less that of water in the same cell. */
  readonly absorbance: number;
  readonly pathCm: number;
}

export interface Comparison extends MadeUp {
  readonly method: 'comparison';
  /** Absorbance at 430 nm per cm of the dilution that the swatch was computed for. */
  readonly a430PerCm: number;
  /** How much darker each swatch was than the one before, as a factor. */
  readonly step: number;
  readonly depthCm: number;
  /** The swatches were drawn for what the screen makes of greys (`core/colour/screen.ts`); readings without it were made before it could be. */
  readonly taught?: boolean | undefined;
}

/** White paper behind the glass is seen through it once; below it, light goes down and up again. */
export const paperPlaces = ['behind', 'below'] as const;

/** A dilution set up for a picture, beside a like glass of water. */
export interface PhotoSetUp extends MadeUp {
  readonly light: LightKind;
  readonly paper: (typeof paperPlaces)[number];
  /** Of the liquid along the line of sight: inner width of the glass, or its depth over paper below. */
  readonly pathCm: number;
}

/** What the picture showed, and what that came to with the cameras that explained it on that day. */
export interface Photo extends PhotoSetUp {
  readonly method: 'photo';
  /** Decadic, of each channel against white, with its error (1 sd). */
  readonly absorbance: PerChannel;
  readonly sd: PerChannel;
  /** Absorbance at 430 nm over all of the light's path: the middle, and 1 sd of its logarithm. */
  readonly a430Path: number;
  readonly within: number;
  /** Dilutions of known colour in the same light narrowed what camera it may be. */
  readonly taught: boolean;
}

/** One reading of an instrument. A further way of measuring is one more member here, and one more function in `measure/resultOf.ts`. */
export type Reading = Refractometer | Hydrometer | Acidity | Absorbance | Comparison | Photo;
export type Method = Reading['method'];

export interface Measured {
  readonly kind: 'measured';
  readonly at: string;
  readonly reading: Reading;
}

export interface Tasted {
  readonly kind: 'tasted';
  readonly at: string;
  readonly strengths: Strengths;
  readonly texture: Texture | null;
  readonly note: string;
  /** The taster did not know which lot it was. */
  readonly blind: boolean;
}

export const stockMoves = ['took', 'added', 'counted'] as const;
export interface Stocked {
  readonly kind: 'stocked';
  readonly at: string;
  readonly how: (typeof stockMoves)[number];
  /** Taken out or put in; of a count, all that there is. */
  readonly kg: number;
  readonly why: string;
}

/** `at` is RFC 3339 in UTC. */
export type Note = Measured | Tasted | Stocked;

/** Inclusive limits of what is told. */
export const noteRanges = {
  sugarG: [0.01, 5000],
  waterG: [0, 20_000],
  totalMl: [1, 20_000],
  fold: [1, 1000],
  brix: [0, 95],
  gravity: [0.98, 1.5],
  temperatureC: [10, 40],
  ph: [1, 14],
  absorbance: [0.001, 5],
  pathCm: [0.1, 10],
  a430PerCm: [0.001, 1000],
  step: [1.01, 3],
  depthCm: [0.1, 20],
  channelAbsorbance: [-0.05, 3],
  channelSd: [0, 1],
  a430Path: [0.001, 20],
  within: [0.001, 2],
  kg: [0, 20],
} as const satisfies Record<string, readonly [number, number]>;
export const longestWhy = 120;
export const mostNotes = 500;
