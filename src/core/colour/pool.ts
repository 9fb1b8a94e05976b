/** A syrup as it is painted wherever a cook is drawn: a pool of some depth on white. */
import { dropColour, dropDepthCm } from './drop.ts';
import { expectedHueIndex } from './hueIndex.ts';
import { specificFromRating } from './rating.ts';
import { ebcFromA430 } from './scales.ts';

/** A smear on a white plate: thin enough that dark sugars still differ, cm. */
export const filmDepthCm = 0.1;

/** A sugar's colour: A430 of its 10 % w/w solution, hue index, and the water in the syrup. */
export interface Tone {
  readonly a430: number;
  readonly hueIndex: number;
  readonly waterShare: number;
}

/**
 * CSS colour of a tone as a pool of `depthCm` on white. By Bouguer-Lambert a pool half as deep looks like one half as
 * strong, so the drop serves for every depth.
 */
export function poolColour({ a430, hueIndex, waterShare }: Tone, depthCm: number): string {
  const specific430 = specificFromRating(ebcFromA430(a430), 'tenPercentByWeight');
  const { r, g, b } = dropColour((specific430 * depthCm) / dropDepthCm, hueIndex, waterShare);
  return `rgb(${r} ${g} ${b})`;
}

/** Hue index where only A430 is known, as at the ends of a band: of pigment from sugar alone, which is nearly all at usual doses of malt extract. */
export function likelyHueIndex(a430: number): number {
  return expectedHueIndex(specificFromRating(ebcFromA430(a430), 'tenPercentByWeight'), 0).mean;
}

/** The same where nothing is known but what a twin believes: A430 and water. */
export function believedColour(a430: number, waterShare: number): string {
  const tone = { a430, hueIndex: likelyHueIndex(a430), waterShare: Math.min(1, Math.max(0, waterShare)) };
  return poolColour(tone, filmDepthCm);
}
