/** Boiling point of syrups: where water activity times the vapour pressure of water equals the air's pressure. */
import { ACTIVITY_MAX_SOLIDS, waterActivity, waterPerSolids } from './activity.ts';
import { requireRange, requireSolids } from './range.ts';
import { bracketedRoot } from './root.ts';
import { type DrySolids, pureSucrose, requireDrySolids } from './sugars.ts';
import { boilingPointOfWaterC, saturationPressurePa } from './water.ts';

/** Hottest syrup, in C, for which the curve is followed; from about 160 C decomposition makes it doubtful by 5 C. */
const HOTTEST_C = 200;

function requirePressure(pressurePa: number): void {
  requireRange('pressure (Pa)', pressurePa, 5_000, 120_000);
}

/**
 * Dry solids of a syrup that visibly boils.
 *
 * @param temperatureC syrup temperature, from the boiling point of water at this pressure to 200 C
 * @param dry mass shares of the dry solids
 * @param pressurePa air pressure, 5 to 120 kPa
 * @param theta this batch against the mean of the published tables, in standard deviations, -5 to 5
 * @returns mass fraction of dry solids; holds only while it boils, since a pan held below its boiling curve is not at equilibrium
 * @throws RangeError outside the range, or where the syrup holds less than 0.5 % water
 */
export function solidsAtBoil(temperatureC: number, dry: DrySolids, pressurePa: number, theta = 0): number {
  requirePressure(pressurePa);
  requireRange('boiling temperature (C)', temperatureC, boilingPointOfWaterC(pressurePa), HOTTEST_C);
  const activity = Math.min(1, pressurePa / saturationPressurePa(temperatureC));
  if (activity === 1) return 0;
  const solids = 1 / (1 + waterPerSolids(activity, temperatureC, dry, theta));
  requireRange('solids at this boiling temperature', solids, 0, ACTIVITY_MAX_SOLIDS + 1e-9);
  return solids;
}

/**
 * Temperature at which a syrup boils: the inverse of {@link solidsAtBoil}.
 *
 * @param solidsFraction mass fraction of dry solids, 0 to 0.995
 * @param dry mass shares of the dry solids
 * @param pressurePa air pressure, 5 to 120 kPa
 * @param theta this batch against the mean of the published tables, in standard deviations, -5 to 5
 * @returns C; one standard deviation of the published tables is {@link boilingPointSdC}
 * @throws RangeError outside the range
 * Source: see activity.ts; within 1 C of Starzak & Peacock 1997 from 40 to 97 %.
 */
export function boilingPointC(solidsFraction: number, dry: DrySolids, pressurePa: number, theta = 0): number {
  requireSolids(solidsFraction, ACTIVITY_MAX_SOLIDS);
  requireDrySolids(dry);
  requirePressure(pressurePa);
  const waterBoilsC = boilingPointOfWaterC(pressurePa);
  if (solidsFraction === 0) return waterBoilsC;
  const wanted = Math.log(pressurePa);
  const excess = (t: number): number =>
    Math.log(waterActivity(solidsFraction, t, dry, theta) * saturationPressurePa(t)) - wanted;
  // A millionth of a degree below, so that rounding cannot hide the root of a very thin syrup.
  return Math.max(waterBoilsC, bracketedRoot(excess, waterBoilsC - 1e-6, HOTTEST_C, 1e-10));
}

/**
 * How far the published boiling tables lie apart, as one standard deviation of the boiling point of a sucrose syrup at 1 atm.
 *
 * @param solidsFraction mass fraction of dry solids, 0 to 0.995
 * @returns C; half of what theta = 1 and theta = -1 differ by, and at least 3 C from 98 % on, where the tables are weakest
 * Source: derived from the spread of the tables in `reference/boiling-*.csv`.
 */
export function boilingPointSdC(solidsFraction: number): number {
  requireSolids(solidsFraction, ACTIVITY_MAX_SOLIDS);
  const atm = 101_325;
  const low = boilingPointC(solidsFraction, pureSucrose, atm, 1);
  const high = boilingPointC(solidsFraction, pureSucrose, atm, -1);
  const thickest = 3 * Math.min(1, Math.max(0, (solidsFraction - 0.97) / 0.01));
  return Math.max(thickest, Math.abs(high - low) / 2);
}
