/**
 * A430 and hue index from what pictures of dilutions absorb in three channels.
 *
 * Nobody knows the phone's curves: cameras, lights and hue indices are drawn from what they may be, and count by how well they explain the
 * pictures; the curvature at the best A430 and hue index stands for their own spread, after Laplace. A picture of a dilution of known colour by the same
 * phone in the same light narrows the cameras to few, and chains walk among those (preconditioned Crank-Nicolson proposals: Cotter,
 * Roberts, Stuart & White 2013, Stat. Sci. 28:424, from memory). Further strengths of one sugar only take noise away: they say nothing of the phone.
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
/** Numbers that a camera, a light and standards are made of: more than they use. */
const dimensions = 64;
/** Draws for an unknown phone: some seven in a hundred count. */
const drawsAlone = 2000;
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
  const isAlone = standards.length === 0;
  const first = Array.from({ length: isAlone ? drawsAlone : starts }, () =>
    drawnFrom(Float64Array.from({ length: dimensions }, normal)),
  );
  // What a standard leaves of the cameras is too little for draws to hit: chains walk there. Without one, the same draws for any picture
  // make what is found change as little as the picture does.
  const kept = isAlone
    ? first
    : picked(first, chains, uniform).flatMap((start) => walk(start, drawnFrom, normal, uniform));
  const weights = isAlone ? likelihoods(first) : kept.map(() => 1);
  const { low, mid, high } = marks(
    kept.map(({ a430Path, spread }) => a430Path * Math.exp(spread * normal())),
    weights,
  );
  const wider = isAlone ? untaught : 1;
  return {
    a430Path: { low: mid * (low / mid) ** wider, mid, high: mid * (high / mid) ** wider },
    hueIndex: marks(
      kept.map(({ hueIndex, hueSpread }) => hueIndex + hueSpread * normal()),
      weights,
    ),
  };
}

/** Of each, against the likeliest. */
function likelihoods(of: readonly Drawn[]): readonly number[] {
  const best = Math.max(...of.map(({ logLikelihood }) => logLikelihood));
  return of.map(({ logLikelihood }) => Math.exp(logLikelihood - best));
}

interface Drawn {
  readonly numbers: Float64Array;
  readonly hueIndex: number;
  readonly a430Path: number;
  /** Of the logarithm of A430 and of the hue index, with this camera (1 sd). */
  readonly spread: number;
  readonly hueSpread: number;
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
  const upTo = Array.from(cumsum(likelihoods(of)));
  return Array.from({ length: count }, () => {
    const place = uniform() * (upTo.at(-1) ?? 0);
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
  const known = standards.map(({ a430Path, knownWithin }) => ({
    a430Path: a430Path * Math.exp(knownWithin * next()),
    shape: shapeOf(hue.mean + hue.sd * next()),
  }));
  const viewer = drawnViewer(light, next);
  const ofStandards = standards.reduce(
    (sum, standard, at) => sum + squaresOf(standard, channelAbsorbance(viewer, known[at].a430Path, known[at].shape)),
    0,
  );
  const fit = bestFit(shots, viewer);
  return { ...fit, numbers, logLikelihood: fit.logLikelihood - 0.5 * ofStandards };
}

/** Of kitchen sugars and beers together. */
const { mean, sd } = expectedHueIndex(0.1, 0.5);
const hue = { mean, sd: 1.2 * sd } as const;

/** Steps of the slopes: of the logarithm of A430, and of the hue index. */
const [logStep, hueStep] = [0.01, 0.05];
const turns = 4;

/** Gauss-Newton on the logarithm of A430 and the hue index, which is held by what is expected of it. */
function bestFit(shots: readonly Shot[], viewer: Viewer): Omit<Drawn, 'numbers'> {
  let logA = Math.log(Math.max(0.02, 1.5 * (shots[0]?.absorbance.b ?? 0)) / (shots[0]?.strength ?? 1));
  let hueIndex = hue.mean;
  for (let turn = 0; ; turn++) {
    const [shape, otherShape] = [shapeOf(hueIndex), shapeOf(hueIndex + hueStep)];
    const offHue = (hue.mean - hueIndex) / hue.sd;
    let [aa, ah, hh, a, h, squares] = [0, 0, 1 / hue.sd ** 2, 0, offHue / hue.sd, offHue ** 2];
    for (const shot of shots) {
      const a430 = shot.strength * Math.exp(logA);
      const at = channelAbsorbance(viewer, a430, shape);
      const darker = channelAbsorbance(viewer, a430 * Math.exp(logStep), shape);
      const other = channelAbsorbance(viewer, a430, otherShape);
      for (const channel of channels) {
        const error = errorOf(shot, channel);
        const byA = (darker[channel] - at[channel]) / logStep / error;
        const byHue = (other[channel] - at[channel]) / hueStep / error;
        const off = (shot.absorbance[channel] - at[channel]) / error;
        aa += byA ** 2;
        ah += byA * byHue;
        hh += byHue ** 2;
        a += byA * off;
        h += byHue * off;
        squares += off ** 2;
      }
    }
    const determinant = aa * hh - ah ** 2;
    if (turn === turns - 1) {
      const [spread, hueSpread] = [Math.sqrt(hh / determinant), Math.sqrt(aa / determinant)];
      const logLikelihood = -0.5 * (squares + Math.log(determinant));
      return { a430Path: Math.exp(logA), hueIndex, spread, hueSpread, logLikelihood };
    }
    logA += within((hh * a - ah * h) / determinant, 1);
    hueIndex += within((aa * h - ah * a) / determinant, 2);
  }
}

const within = (step: number, most: number): number => Math.max(-most, Math.min(most, step));

function squaresOf(seen: ChannelAbsorbance, expected: PerChannel): number {
  return channels.reduce(
    (sum, channel) => sum + ((seen.absorbance[channel] - expected[channel]) / errorOf(seen, channel)) ** 2,
    0,
  );
}

function errorOf({ absorbance, sd }: ChannelAbsorbance, channel: (typeof channels)[number]): number {
  return Math.hypot(sd[channel], model.flat, model.share * absorbance[channel]);
}

/** 5, 50 and 95 % marks of values that count by their weights. */
function marks(values: readonly number[], weights: readonly number[]) {
  const inOrder = values.map((_, at) => at).sort((a, b) => values[a] - values[b]);
  const upTo = cumsum(inOrder, (at) => weights[at]);
  const total = upTo[upTo.length - 1];
  const mark = (share: number): number => values[inOrder[upTo.findIndex((sum) => sum >= share * total)]];
  return { low: mark(0.05), mid: mark(0.5), high: mark(0.95) };
}

/** Uniform numbers from normal ones: the distribution of a pair's squares is exponential (Box & Muller 1958). */
function uniformsFrom(normal: () => number): () => number {
  return () => Math.exp(-0.5 * (normal() ** 2 + normal() ** 2));
}
