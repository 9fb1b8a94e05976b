/**
 * What a phone's three channels make of light, as far as anyone can know who was not told which phone, lamp and processing: a family of
 * cameras and lights to draw from. Sensitivities are bells with a colour matrix behind them that makes colours stronger; published
 * curves of a colour-filter sensor and of a stacked one lie within it (`reference/phone-channel-absorbance.csv`, checked by a test).
 */
import { illuminantD65, wavelengthsNm } from '../cie.ts';
import { pigmentShape } from '../spectrum.ts';

export const channels = ['r', 'g', 'b'] as const;
export type Channel = (typeof channels)[number];
export type PerChannel<Value = number> = Readonly<Record<Channel, Value>>;

export const lightKinds = ['daylight', 'lamp'] as const;
/** Daylight from a window, or any lamp: white diodes, warm or cold, fluorescent or glowing. */
export type LightKind = (typeof lightKinds)[number];

/** One camera under one light: how much each wavelength counts for each channel, white being 1, and its tone curve's error. */
export interface Viewer {
  readonly weights: PerChannel<Float64Array>;
  readonly tone: number;
}

interface Bell {
  readonly nm: number;
  readonly nmSd: number;
  readonly width: number;
  readonly widthSd: number;
}

/** Bells of the two families, nm, with their spreads (assumed; about what published curves of phone and still cameras show). */
const filtered: PerChannel<Bell> = {
  r: { nm: 601, nmSd: 9, width: 34, widthSd: 8 },
  g: { nm: 532, nmSd: 8, width: 38, widthSd: 7 },
  b: { nm: 464, nmSd: 11, width: 35, widthSd: 9 },
};
const stacked: PerChannel<Bell> = {
  r: { nm: 595, nmSd: 15, width: 68, widthSd: 12 },
  g: { nm: 545, nmSd: 12, width: 65, widthSd: 10 },
  b: { nm: 490, nmSd: 16, width: 66, widthSd: 14 },
};
/** Share of cameras with layers that overlap far more than filters do: stacked sensors, and processing that makes colours dull. */
const stackedShare = 0.2;
/** How much of its neighbours a colour matrix takes from a channel at most: more where a lamp leaves blue weak (assumed). */
const strongest = { daylight: 0.38, lamp: 0.8 } as const;
/** The tone curve that a phone lays over its picture changes contrast by a power: its spread, 1 sd of the logarithm (assumed). */
const toneSd = 0.06;
/** Typed, over which a map is many times as quick. */
const grid = Float64Array.from(wavelengthsNm);
/** Below this share of the white nothing is told apart from the dark. */
const darkest = 1e-4;

/** @param normal a source of standard normal numbers */
export function drawnViewer(light: LightKind, normal: () => number): Viewer {
  const spectrum = drawnLight(light, normal);
  const family = uniform(normal) < stackedShare ? stacked : filtered;
  const raw = perChannel((channel) => balanced(drawnBell(family[channel], normal), spectrum));
  // Rows of a colour matrix that keeps white: each channel less a part of its neighbours.
  const strength = strongest[light] * uniform(normal);
  const part = () => strength * Math.exp(0.3 * normal());
  return {
    weights: {
      r: mixed([1, raw.r], [-part(), raw.g], raw.r),
      g: mixed([1, raw.g], [-part(), mixed([0.5, raw.r], [0.5, raw.b])], raw.g),
      b: mixed([1, raw.b], [-part(), raw.g], raw.b),
    },
    tone: Math.exp(toneSd * normal()),
  };
}

/**
 * What the three channels would absorb of a pigment, decadic.
 *
 * @param a430Path absorbance at 430 nm over the light's path
 * @param shape of `shapeOf`
 */
export function channelAbsorbance({ weights, tone }: Viewer, a430Path: number, shape: Float64Array): PerChannel {
  let [r, g, b] = [0, 0, 0];
  for (let at = 0; at < shape.length; at++) {
    const passed = Math.exp(-Math.LN10 * a430Path * shape[at]);
    r += weights.r[at] * passed;
    g += weights.g[at] * passed;
    b += weights.b[at] * passed;
  }
  return { r: absorbed(r, tone), g: absorbed(g, tone), b: absorbed(b, tone) };
}

/** A pigment's absorbance at each wavelength against that at 430 nm. */
export function shapeOf(hueIndex: number): Float64Array {
  return grid.map((nm) => pigmentShape(nm, hueIndex));
}

function absorbed(passed: number, tone: number): number {
  return -tone * Math.log10(Math.max(darkest, passed));
}

export function perChannel<Value>(of: (channel: Channel) => Value): PerChannel<Value> {
  return { r: of('r'), g: of('g'), b: of('b') };
}

function drawnBell({ nm, nmSd, width, widthSd }: Bell, normal: () => number): Float64Array {
  const middle = nm + nmSd * normal();
  const wide = Math.max(12, width + widthSd * normal());
  return grid.map((at) => bell(at, middle, wide));
}

function drawnLight(kind: LightKind, normal: () => number): Float64Array {
  if (kind === 'daylight') {
    // Bluer or warmer than D65 by a slope over the spectrum.
    const slope = 0.35 * normal();
    return grid.map((nm, at) => (illuminantD65[at] ?? 0) * (nm / 560) ** slope);
  }
  const lamp = uniform(normal);
  return lamp < 0.55 ? whiteDiode(normal) : lamp < 0.8 ? glowing(2400 + 900 * uniform(normal)) : fluorescent(normal);
}

/** A blue diode under a yellow phosphor. */
function whiteDiode(normal: () => number): Float64Array {
  const [blue, phosphor, warmth] = [452 + 5 * normal(), 585 + 15 * normal(), 0.25 + 0.6 * uniform(normal)];
  return grid.map((nm) => warmth * bell(nm, blue, 11) + bell(nm, phosphor, 58));
}

/** Planck's law, W per m3 but for a factor. */
function glowing(kelvin: number): Float64Array {
  return grid.map((nm) => nm ** -5 / (Math.exp(1.4388e7 / (nm * kelvin)) - 1));
}

/** Lines of mercury and of the usual phosphors over a low ground. */
function fluorescent(normal: () => number): Float64Array {
  const blue = 0.2 + 0.3 * uniform(normal);
  return grid.map(
    (nm) =>
      blue * (bell(nm, 436, 5) + bell(nm, 455, 25)) +
      bell(nm, 546, 6) +
      0.8 * bell(nm, 611, 6) +
      0.25 * bell(nm, 580, 45),
  );
}

const bell = (nm: number, middle: number, width: number): number => Math.exp(-0.5 * ((nm - middle) / width) ** 2);

/** A channel's weights, their sum 1: the white that it is balanced on. */
function balanced(sensitivity: Float64Array, light: Float64Array): Float64Array {
  const weights = sensitivity.map((each, at) => each * light[at]);
  const sum = weights.reduce((total, each) => total + each, 0);
  return weights.map((each) => each / sum);
}

type Part = readonly [share: number, of: Float64Array];

/** Weighted parts; what is missing to 1 is made up with `rest`, so that white stays white. */
function mixed([a, first]: Part, [b, second]: Part, rest: Float64Array = first): Float64Array {
  return first.map((each, at) => a * each + b * second[at] + (1 - a - b) * rest[at]);
}

/** A uniform number from a normal one, by the logistic approximation of its distribution (Bowling et al. 2009, within 1.4e-4). */
function uniform(normal: () => number): number {
  const z = normal();
  return 1 / (1 + Math.exp(-(0.07056 * z ** 3 + 1.5976 * z)));
}
