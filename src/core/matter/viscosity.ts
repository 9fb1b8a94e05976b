/** Viscosity of syrups: the handbook's equation for thin ones, the glass transition for thick ones, a blend between. */
import { glassTransitionC } from './glass.ts';
import { requireRange, requireSolids } from './range.ts';
import type { DrySolids } from './sugars.ts';

/** Genotelle's equation falls again above 85 % solids, WLF is for melts: hence hand over between these mass fractions. */
const THIN_TO = 0.8;
const THICK_FROM = 0.9;

/** log10 of Pa s. Genotelle 1978, Ind. Aliment. Agric. 95:747, as in the Sugar Technologists Manual (seen as a transcription). */
function thinLog10(solidsFraction: number, temperatureC: number): number {
  const percent = 100 * solidsFraction;
  const n = percent / (1900 - 18 * percent);
  const phi = (30 - temperatureC) / (91 + temperatureC);
  return 22.46 * n - 0.114 + phi * (1.1 + 43.1 * n ** 1.25) - 3;
}

/** log10 of Pa s. Williams, Landel & Ferry 1955, universal constants, with 1e12 Pa s at the glass transition (seen). */
function thickLog10(solidsFraction: number, temperatureC: number, dry: DrySolids): number {
  const aboveGlassK = temperatureC - glassTransitionC(solidsFraction, dry);
  requireRange('temperature above the glass transition (C)', aboveGlassK, 0, 400);
  return 12 - (17.44 * aboveGlassK) / (51.6 + aboveGlassK);
}

/**
 * Viscosity of a syrup.
 *
 * @param solidsFraction mass fraction of dry solids, 0 to 1
 * @param temperatureC 0 to 200 C, and not below the glass transition
 * @param dry mass shares of the dry solids; they matter above 80 % alone
 * @returns Pa s; within 8 % to 74 % solids, within a factor of 3 to 5 above 90 %
 * @throws RangeError outside the range
 */
export function viscosityPaS(solidsFraction: number, temperatureC: number, dry: DrySolids): number {
  requireSolids(solidsFraction);
  requireRange('syrup temperature (C)', temperatureC, 0, 200);
  if (solidsFraction <= THIN_TO) return 10 ** thinLog10(solidsFraction, temperatureC);
  const thick = thickLog10(solidsFraction, temperatureC, dry);
  if (solidsFraction >= THICK_FROM) return 10 ** thick;
  const share = (solidsFraction - THIN_TO) / (THICK_FROM - THIN_TO);
  return 10 ** ((1 - share) * thinLog10(solidsFraction, temperatureC) + share * thick);
}
