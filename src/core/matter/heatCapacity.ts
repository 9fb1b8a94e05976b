/** Heat capacity and enthalpy of syrups: water and dissolved sugar, each by its mass. */
import { requireRange, requireSolids } from './range.ts';
import { liquidHeatCapacityJPerKgK } from './water.ts';

/** Where the handbook's line for dissolved sugar meets the flatter line measured on molten sucrose; both give 2378 J/kg K. */
const JOIN_C = 94;
const AT_0_C = 1673;
const SLOPE_BELOW = 7.5;
const SLOPE_ABOVE = 2.9317;
const AT_JOIN = AT_0_C + SLOPE_BELOW * JOIN_C;

function requireTemperature(temperatureC: number): void {
  requireRange('syrup temperature (C)', temperatureC, 0, 200);
}

/**
 * Heat capacity of the dissolved or molten sugar by itself.
 *
 * @param temperatureC 0 to 200 C
 * @returns J/kg K, within about 6 %; not for the glass, which holds 700 to 780 J/kg K less
 * @throws RangeError outside the range
 * Source: to 94 C the limit of {@link handbookHeatCapacityJPerKgK} for no water; above, slope of supercooled liquid sucrose, Magon et
 * al. 2014 (from memory); the join is derived.
 */
export function dryHeatCapacityJPerKgK(temperatureC: number): number {
  requireTemperature(temperatureC);
  if (temperatureC <= JOIN_C) return AT_0_C + SLOPE_BELOW * temperatureC;
  return AT_JOIN + SLOPE_ABOVE * (temperatureC - JOIN_C);
}

/**
 * Enthalpy of the dissolved or molten sugar, zero at 0 C: the integral of {@link dryHeatCapacityJPerKgK}.
 *
 * @param temperatureC 0 to 200 C
 * @returns J per kg of dry solids
 * @throws RangeError outside the range
 */
export function dryEnthalpyJPerKg(temperatureC: number): number {
  requireTemperature(temperatureC);
  const below = Math.min(temperatureC, JOIN_C);
  const above = Math.max(0, temperatureC - JOIN_C);
  return below * (AT_0_C + (SLOPE_BELOW / 2) * below) + above * (AT_JOIN + (SLOPE_ABOVE / 2) * above);
}

/**
 * Heat capacity of a syrup: the mass-weighted rule, so that enthalpies of water and solids add up.
 *
 * @param solidsFraction mass fraction of dry solids, 0 to 1
 * @param temperatureC 0 to 200 C
 * @returns J/kg K; within 1.5 % of the handbook's formula to 94 C, about 6 % uncertain above
 * @throws RangeError outside the range
 */
export function syrupHeatCapacityJPerKgK(solidsFraction: number, temperatureC: number): number {
  requireSolids(solidsFraction);
  const water = liquidHeatCapacityJPerKgK(temperatureC);
  return (1 - solidsFraction) * water + solidsFraction * dryHeatCapacityJPerKgK(temperatureC);
}

/**
 * Heat capacity of a sucrose syrup as the sugar factory's handbook gives it.
 *
 * @param solidsFraction mass fraction of dry solids, 0 to 0.9
 * @param temperatureC 0 to 94 C
 * @param purity sucrose in the dry solids, 0 to 1
 * @returns J/kg K
 * @throws RangeError outside the range
 * Source: Bubnik et al. 1995, Sugar Technologists Manual (seen as a transcription).
 */
export function handbookHeatCapacityJPerKgK(solidsFraction: number, temperatureC: number, purity = 1): number {
  requireSolids(solidsFraction, 0.9);
  requireRange('syrup temperature (C)', temperatureC, 0, JOIN_C);
  requireRange('purity', purity, 0, 1);
  return 4184 + solidsFraction * (-2971 + 460 * purity + 7.5 * temperatureC);
}
