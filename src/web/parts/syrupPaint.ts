/** Computed syrup colours as the page paints them: a film of one depth for the ribbon, a domed drop for a swatch. */
import { dropDepthCm } from '../../core/colour/drop.ts';
import { poolColour, type Tone } from '../../core/colour/pool.ts';

export { filmDepthCm, likelyHueIndex, poolColour, type Tone } from '../../core/colour/pool.ts';

/** Colours from the middle of a drop to its rim: a cap of a sphere, so its depth falls with the square of the way out. */
export function dropRings(tone: Tone, rings = 7): { readonly out: number; readonly colour: string }[] {
  return Array.from({ length: rings }, (_, i) => {
    const out = i / (rings - 1);
    return { out, colour: poolColour(tone, dropDepthCm * (1 - out * out)) };
  });
}
