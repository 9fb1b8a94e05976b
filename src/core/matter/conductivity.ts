/** Thermal conductivity of syrups. */
import { requireRange, requireSolids } from './range.ts';

/**
 * Thermal conductivity of a sucrose syrup.
 *
 * @param solidsFraction mass fraction of dry solids, 0 to 1
 * @param temperatureC 0 to 200 C; fitted to 80 C, extrapolated above
 * @returns W/m K
 * @throws RangeError outside the range
 * Source: Bubnik et al. 1995, Sugar Technologists Manual (seen as a transcription).
 */
export function conductivityWPerMK(solidsFraction: number, temperatureC: number): number {
  requireSolids(solidsFraction);
  requireRange('syrup temperature (C)', temperatureC, 0, 200);
  const t = temperatureC;
  const water = 0.563 + t * (1.976e-3 - t * 7.847e-6);
  return water + solidsFraction * (-0.3024 + t * (-1.176e-3 + t * 5.466e-6));
}
