/** How the syrup looks: a drop of it on a white plate. Pan lines and step tables are painted with this. */
import type { Srgb } from './srgb.ts';
import { syrupColour } from './syrup.ts';
import { passesOverWhite } from './tristimulus.ts';

/** Depth of the drop, cm; light passes it twice. */
export const dropDepthCm = 0.3;
/** Density of thick syrup at room temperature, g/L (75-97 % solids: 1380-1550). */
export const syrupGPerL = 1450;

/**
 * @param specific430 absorbance at 430 nm of the dry sugar, L/(g cm)
 * @param hueIndex 1 to 12
 * @param waterShare water in the syrup, mass fraction
 */
export function dropColour(specific430: number, hueIndex: number, waterShare: number): Srgb {
  return syrupColour(specific430 * (1 - waterShare) * syrupGPerL, passesOverWhite * dropDepthCm, hueIndex);
}
