/** Checks of a thermometer where nature knows the temperature: boiling water and melting ice. */
import { pressureAtAltitudePa } from '../../matter/air.ts';
import { boilingPointOfWaterC } from '../../matter/water.ts';
import { combined, type Estimate, estimateOf } from './estimate.ts';

/** Air pressure of a place changes with the weather by about 2 kPa to either side (assumed: two standard deviations). */
const weatherPa = 1000;
/** A barometer at home, standard uncertainty (assumed). */
const barometerPa = 150;
/** Water at a full boil is hotter than its vapour by about this, and a probe in it errs by as much (assumed), K. */
const superheatK = 0.1;
/** Crushed ice in its own water, stirred: from 0 C by no more than this (assumed), K. */
const iceBathK = 0.1;

export type Air = { readonly altitudeM: number } | { readonly pressurePa: number };

/** Temperature at which water boils, and its standard uncertainty, C. */
export function boilingWater(air: Air): { readonly boilsC: number; readonly sd: number } {
  const byBarometer = 'pressurePa' in air;
  const pressurePa = byBarometer ? air.pressurePa : pressureAtAltitudePa(air.altitudeM);
  const pressureSd = byBarometer ? barometerPa : weatherPa;
  const boilsC = boilingPointOfWaterC(pressurePa);
  const slope = (boilingPointOfWaterC(pressurePa + 500) - boilingPointOfWaterC(pressurePa - 500)) / 1000;
  return { boilsC, sd: Math.hypot(slope * pressureSd, superheatK) };
}

/**
 * What a thermometer shows above the truth, by water at a full boil.
 *
 * @param readingsC at least 3, taken apart
 * @param air altitude, or better a barometer's pressure at the place itself (not reduced to the sea)
 * @param resolutionC smallest step that it shows
 * @returns K
 */
export function boilingWaterOffset(readingsC: readonly number[], air: Air, resolutionC = 0.1): Estimate {
  const { boilsC, sd: boilsSd } = boilingWater(air);
  const { mean, sd, degrees } = combined(readingsC, [boilsSd, resolutionSd(resolutionC)]);
  return estimateOf(mean - boilsC, sd, degrees);
}

/** The same by melting ice. */
export function iceOffset(readingsC: readonly number[], resolutionC = 0.1): Estimate {
  const { mean, sd, degrees } = combined(readingsC, [iceBathK, resolutionSd(resolutionC)]);
  return estimateOf(mean, sd, degrees);
}

/** The error in between and beyond, on the line through both points; its range widens away from them. K. */
export function offsetAt(temperatureC: number, ice: Estimate, boiling: Estimate, boilsC: number): Estimate {
  const share = temperatureC / boilsC;
  const value = (1 - share) * ice.value + share * boiling.value;
  return estimateOf(value, Math.hypot((1 - share) * ice.sd, share * boiling.sd));
}

/** Rounding spreads evenly over a step (JCGM 100:2008, 4.3.7). */
function resolutionSd(resolutionC: number): number {
  return resolutionC / Math.sqrt(12);
}
