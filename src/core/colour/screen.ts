/**
 * What a screen makes of a grey, found by eye and without an instrument. Rows of full black and full white that are too fine to tell
 * apart send out a known share of the white's light, whatever the screen's curve is; an even grey that looks the same sends out as much,
 * and its level tells the curve.
 *
 * Method: H. Irtel, "How to visually determine your monitor's gamma parameter", University of Mannheim (seen), there for each channel;
 * here for grey alone. Gamma as in C. Poynton, "Frequently Asked Questions about Gamma" (from memory).
 */
import { requireRange } from '../matter/range.ts';
import { encoded, type Srgb } from './srgb.ts';

/** Shares of the white's light that are matched: every second row white, and every fourth. */
export const matchedShares = { half: 1 / 2, quarter: 1 / 4 } as const;
export type Matched = keyof typeof matchedShares;
export const matched = Object.keys(matchedShares) as readonly Matched[];

/** The even grey that looked like the rows, 8-bit level. */
export type ScreenMatches = Readonly<Record<Matched, number>>;

/** Of a screen that keeps to IEC 61966-2-1. */
export const standardMatches: ScreenMatches = {
  half: encoded(matchedShares.half),
  quarter: encoded(matchedShares.quarter),
};

/** Gammas that a screen in use may have (assumed): 1.8 to 2.6 were sold, and a picture mode goes beyond. */
export const gammaRange = [1.4, 3.2] as const;

/**
 * Gamma of a screen on which a level sends out a share of the white's light: share = (level / 255) ^ gamma.
 *
 * @param level 1 to 254
 */
export function gammaOfMatch(level: number, share: number): number {
  requireRange('level', level, 1, 254);
  return Math.log(share) / Math.log(level / 255);
}

/** Levels that a share of the white's light may need, by `gammaRange`. */
export function levelRange(share: number): readonly [number, number] {
  const [low, high] = gammaRange.map((gamma) => Math.round(255 * share ** (1 / gamma))) as [number, number];
  return [low, high];
}

/** Eye and steps of eight bits, 1 sd of a matched level (assumed: one level is seen where two greys meet, not beside rows). */
const matchSd = 3;

/** Error of a gamma by one match, 1 sd as a share of it: d(ln gamma) = d(level) / (level ln(255 / level)), at a standard screen's level. */
function matchError(which: Matched): number {
  const level = standardMatches[which];
  return matchSd / (level * Math.log(255 / level));
}

/**
 * A screen's gamma over that of the standard curve at the same share: 1 for a screen that keeps to IEC 61966-2-1, more for one that shows
 * middle tones too dark. Over the standard, not by itself: a pure power would falsify the dark end of a screen that has the standard's.
 */
export function steepnessOf(matches: ScreenMatches): number {
  const logs = matched.map((which) => logSteepness(which, matches));
  return Math.exp(logs.reduce((sum, log) => sum + log, 0) / logs.length);
}

/** False when the matches differ by more than three times their errors: one was made wrongly, or no single power describes the screen. */
export function matchesAgree(matches: ScreenMatches): boolean {
  const apart = Math.abs(logSteepness('half', matches) - logSteepness('quarter', matches));
  return apart <= 3 * Math.hypot(...matched.map((which) => matchError(which)));
}

function logSteepness(which: Matched, matches: ScreenMatches): number {
  const share = matchedShares[which];
  return Math.log(gammaOfMatch(matches[which], share) / gammaOfMatch(standardMatches[which], share));
}

/** The levels that make a screen show a colour as the standard means it. Black and white stay. @param steepness see `steepnessOf` */
export function levelsOn(steepness: number, { r, g, b, clipped }: Srgb): Srgb {
  const level = (byte: number) => Math.round(255 * (byte / 255) ** (1 / steepness));
  return { r: level(r), g: level(g), b: level(b), clipped };
}

/**
 * By how much a screen's gamma may be off, 1 sd as a share of it: of one that nobody taught (assumed: nine in ten from 1.85 to 2.6), and of a taught one
 * (derived from the errors of its two matches). An absorbance read off the screen is off by the same share: light T = 10^(-A) shown as T^(1 + e)
 * is that of A (1 + e).
 */
export const gammaError = {
  untaught: 0.1,
  taught: Math.hypot(...matched.map((which) => matchError(which))) / matched.length,
} as const;
