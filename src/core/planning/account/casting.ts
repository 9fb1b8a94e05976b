/** Where the sugar goes: the tray that a cast needs for its thickness, the water that lets a syrup down to its Brix. */
import { syrupDensityKgPerM3 } from '../../matter/density.ts';
import { requireRange } from '../../matter/range.ts';

/** Breaks by hand, and cools within the hour (common practice, no source). */
export const usualThicknessM = 0.006;
export const thicknessRangeM = [0.002, 0.03] as const;

/**
 * Area of a cast of a thickness, m2, cooled to 20 C.
 *
 * @param solids mass fraction of the cast
 * Density: ICUMSA SPS-4, extrapolated to glass (about 1.5 %).
 */
export function trayAreaM2(massKg: number, solids: number, thicknessM = usualThicknessM): number {
  requireRange('thickness of the cast (m)', thicknessM, ...thicknessRangeM);
  return massKg / (syrupDensityKgPerM3(solids, 20) * thicknessM);
}

/** Water that brings a syrup to `solids` (Brix/100), kg: solids stay, so that dry / solids is the mass wanted. */
export function letDownWaterKg(dryKg: number, waterKg: number, solids: number): number {
  requireRange('solids wanted (mass fraction)', solids, 0.3, 1);
  return Math.max(0, dryKg / solids - dryKg - waterKg);
}
