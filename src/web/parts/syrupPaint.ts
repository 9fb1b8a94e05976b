/** Computed syrup colours as the page paints them: a film of one depth for the ribbon, a domed drop for a swatch. */
import { dropColour, dropDepthCm } from '../../core/colour/drop.ts';
import { expectedHueIndex } from '../../core/colour/hueIndex.ts';
import { specificFromRating } from '../../core/colour/rating.ts';
import { ebcFromA430 } from '../../core/colour/scales.ts';

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
 * strong, so the core's drop serves for every depth.
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

/** Colours from the middle of a drop to its rim: a cap of a sphere, so its depth falls with the square of the way out. */
export function dropRings(tone: Tone, rings = 7): { readonly out: number; readonly colour: string }[] {
  return Array.from({ length: rings }, (_, i) => {
    const out = i / (rings - 1);
    return { out, colour: poolColour(tone, dropDepthCm * (1 - out * out)) };
  });
}
