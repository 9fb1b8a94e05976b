/**
 * A430 and hue index from what pictures of dilutions absorb in three channels.
 *
 * Nobody knows the phone's curves: cameras, lights and hue indices are drawn from what they may be, and chains walk among those that
 * explain the pictures (preconditioned Crank-Nicolson proposals: Cotter, Roberts, Stuart & White 2013, Stat. Sci. 28:424, from memory);
 * the curvature at the best A430 stands for its own spread, after Laplace. A picture of a dilution of known colour by the same phone in
 * the same light narrows the cameras. Further strengths of one sugar only take noise away: they say nothing of the phone.
 */
import { cumsum } from 'd3-array';
import { expectedHueIndex } from '../hueIndex.ts';
import type { ChannelAbsorbance } from './photoAbsorbance.ts';
import {
  channelAbsorbance,
  channels,
  drawnViewer,
  type LightKind,
  type PerChannel,
  shapeOf,
  type Viewer,
} from './viewer.ts';

/** A dilution in the picture: its strength against the one whose colour is sought. */
export interface Shot extends ChannelAbsorbance {
  readonly strength: number;
}

/** A dilution whose colour is known from elsewhere, seen by the same phone in the same light. */
export interface Standard extends ChannelAbsorbance {
  /** Absorbance at 430 nm over the light's path, and its error as a share (1 sd). */
  readonly a430Path: number;
  readonly knownWithin: number;
}

export interface PhotoColour {
  /** Absorbance at 430 nm over the light's path: 5, 50 and 95 % marks, nine in ten. */
  readonly a430Path: { readonly low: number; readonly mid: number; readonly high: number };
  readonly hueIndex: { readonly low: number; readonly mid: number; readonly high: number };
}

/** What no camera of the family does quite: of each channel's absorbance, as a share and flat (assumed). */
const model = { share: 0.025, flat: 0.003 } as const;
/**
 * A phone that no known dilution has been shown to is stranger than the family says: its range is so many times wider, as a logarithm.
 * Chosen by how often it holds the truth over published curves (bench/results/photo.md).
 */
const untaught = 1.5;
/** Numbers that a camera, a light, hue indices and standards are made of: more than they use. */
const dimensions = 64;
const starts = 300;
const chains = 12;
const steps = 160;
/** Steps of a chain that are still on the way from its start. */
const warmUp = 60;
/** Length of a step, of 1: about one in three is taken. */
const stride = 0.22;

/**
 * @param shots one or more, of one sugar
 * @param normal a source of standard normal numbers
 * @throws RangeError when no shot is given
 */
export function photoColour(
  shots: readonly Shot[],
  standards: readonly Standard[],
  light: LightKind,
  normal: () => number,
): PhotoColour {
  if (shots.length === 0) throw new RangeError('no picture of a dilution is given; allowed is 1 and more');
  const drawnFrom = (numbers: Float64Array): Drawn => explain(shots, standards, light, numbers);
  const uniform = uniformsFrom(normal);
  const first = Array.from({ length: starts }, () => drawnFrom(Float64Array.from({ length: dimensions }, normal)));
  const kept = picked(first, chains, uniform).flatMap((start) => walk(start, drawnFrom, normal, uniform));
  const { low, mid, high } = marks(kept.map(({ a430Path, spread }) => a430Path * Math.exp(spread * normal())));
  const wider = standards.length === 0 ? untaught : 1;
  return {
    a430Path: { low: mid * (low / mid) ** wider, mid, high: mid * (high / mid) ** wider },
    hueIndex: marks(kept.map(({ hueIndex }) => hueIndex)),
  };
}

interface Drawn {
  readonly numbers: Float64Array;
  readonly hueIndex: number;
  readonly a430Path: number;
  /** Of the logarithm of A430, with this camera. */
  readonly spread: number;
  readonly logLikelihood: number;
}

function walk(
  start: Drawn,
  drawnFrom: (numbers: Float64Array) => Drawn,
  normal: () => number,
  uniform: () => number,
): Drawn[] {
  const keep = Math.sqrt(1 - stride ** 2);
  const kept: Drawn[] = [];
  let now = start;
  for (let step = 0; step < steps; step++) {
    const next = drawnFrom(now.numbers.map((each) => keep * each + stride * normal()));
    if (Math.log(uniform()) < next.logLikelihood - now.logLikelihood) now = next;
    if (step >= warmUp) kept.push(now);
  }
  return kept;
}

/** As many of them as asked for, each as often as its likelihood says. */
function picked(of: readonly Drawn[], count: number, uniform: () => number): Drawn[] {
  const best = Math.max(...of.map(({ logLikelihood }) => logLikelihood));
  const shares = of.map(({ logLikelihood }) => Math.exp(logLikelihood - best));
  const total = shares.reduce((sum, each) => sum + each, 0);
  const upTo = Array.from(cumsum(shares));
  return Array.from({ length: count }, () => {
    const place = uniform() * total;
    return of[upTo.findIndex((mark) => mark >= place)] ?? of[0];
  });
}

function explain(
  shots: readonly Shot[],
  standards: readonly Standard[],
  light: LightKind,
  numbers: Float64Array,
): Drawn {
  let place = 0;
  const next = (): number => numbers[place++ % dimensions];
  const hueIndex = drawnHueIndex(next);
  const known = standards.map(({ a430Path, knownWithin }) => ({
    a430Path: a430Path * Math.exp(knownWithin * next()),
    shape: shapeOf(drawnHueIndex(next)),
  }));
  const viewer = drawnViewer(light, next);
  const ofStandards = standards.reduce(
    (sum, standard, at) => sum + squaresOf(standard, channelAbsorbance(viewer, known[at].a430Path, known[at].shape)),
    0,
  );
  const { a430Path, squares, spread } = bestFit(shots, viewer, shapeOf(hueIndex));
  const all = ofStandards + squares;
  return { numbers, hueIndex, a430Path, spread, logLikelihood: Math.log(spread) - 0.5 * all };
}

/** Of kitchen sugars and beers together. */
function drawnHueIndex(normal: () => number): number {
  const { mean, sd } = expectedHueIndex(0.1, 0.5);
  return Math.min(8, Math.max(3, mean + 1.2 * sd * normal()));
}

/** Gauss-Newton on the logarithm of A430; the slope by a step of 1 %. */
function bestFit(shots: readonly Shot[], viewer: Viewer, shape: Float64Array) {
  let logA = Math.log(Math.max(0.02, 1.5 * (shots[0]?.absorbance.b ?? 0)) / (shots[0]?.strength ?? 1));
  let [squares, curvature] = [0, 1];
  for (let turn = 0; turn < 3; turn++) {
    let slope = 0;
    squares = 0;
    curvature = 0;
    for (const shot of shots) {
      const at = channelAbsorbance(viewer, shot.strength * Math.exp(logA), shape);
      const above = channelAbsorbance(viewer, shot.strength * Math.exp(logA + 0.01), shape);
      for (const channel of channels) {
        const sd = errorOf(shot, channel);
        const rate = (above[channel] - at[channel]) / 0.01 / sd;
        const off = (shot.absorbance[channel] - at[channel]) / sd;
        slope += rate * off;
        curvature += rate ** 2;
        squares += off ** 2;
      }
    }
    if (turn < 2) logA += Math.max(-1, Math.min(1, slope / curvature));
  }
  return { a430Path: Math.exp(logA), squares, spread: 1 / Math.sqrt(curvature) };
}

function squaresOf(seen: ChannelAbsorbance, expected: PerChannel): number {
  return channels.reduce(
    (sum, channel) => sum + ((seen.absorbance[channel] - expected[channel]) / errorOf(seen, channel)) ** 2,
    0,
  );
}

function errorOf({ absorbance, sd }: ChannelAbsorbance, channel: (typeof channels)[number]): number {
  return Math.hypot(sd[channel], model.flat, model.share * absorbance[channel]);
}

/** 5, 50 and 95 % marks. */
function marks(values: readonly number[]) {
  const sorted = Float64Array.from(values).sort();
  const at = (share: number): number => sorted[Math.round(share * (sorted.length - 1))];
  return { low: at(0.05), mid: at(0.5), high: at(0.95) };
}

/** Uniform numbers from normal ones: the distribution of a pair's squares is exponential (Box & Muller 1958). */
function uniformsFrom(normal: () => number): () => number {
  return () => Math.exp(-0.5 * (normal() ** 2 + normal() ** 2));
}
