/** Glass transition of syrups and candy: Fox rule for the dry sugars, Gordon & Taylor for the water in them. */
import { requireSolids } from './range.ts';
import { type DrySolids, requireDrySolids } from './sugars.ts';

const KELVIN = 273.15;

/** Johari, Hallbrucker & Mayer 1987, Nature 330:552 (seen, quoted). */
const WATER_TG_K = 138.15;

/**
 * Dry glass transitions in C, onset by calorimetry; laboratories differ by 2 (sucrose) to 8 C (fructose).
 * Source: Roos 1993, Carbohydr. Res. 238:39 (from memory; sucrose, glucose and fructose also seen elsewhere); dextrin as maltodextrin of
 * dextrose equivalent 36, Roos & Karel 1991 (from memory).
 */
const DRY_TG_C: Readonly<Record<keyof DrySolids, number>> = {
  sucrose: 62,
  glucose: 31,
  fructose: 5,
  maltose: 87,
  dextrin: 100,
};

/**
 * Glass transition of the dry solids.
 *
 * @param dry mass shares of the dry solids
 * @returns C; invert sugar comes out at 17 C, its published blend at 20
 * @throws RangeError when the shares do not add up to 1
 * Source: Fox 1956, 1/Tg = sum of share/Tg in kelvin (seen).
 */
export function dryGlassTransitionC(dry: DrySolids): number {
  requireDrySolids(dry);
  const names = Object.keys(DRY_TG_C) as (keyof DrySolids)[];
  const inverse = names.reduce((sum, name) => sum + dry[name] / (DRY_TG_C[name] + KELVIN), 0);
  return 1 / inverse - KELVIN;
}

/**
 * Glass transition of a syrup or candy.
 *
 * @param solidsFraction mass fraction of dry solids, 0 to 1; measured data end near 75 %
 * @param dry mass shares of the dry solids
 * @returns C; uncertain by 3 to 5 C at 2 to 5 % water (the older constant for sucrose, 4.7, gives 3 to 5 C more)
 * @throws RangeError outside the range
 * Source: Gordon & Taylor 1952 with k = 0.0293 Tg + 3.61, Roos 1993, Carbohydr. Res. 238:39 (from memory).
 */
export function glassTransitionC(solidsFraction: number, dry: DrySolids): number {
  requireSolids(solidsFraction);
  const dryC = dryGlassTransitionC(dry);
  const waterWeight = (0.0293 * dryC + 3.61) * (1 - solidsFraction);
  const kelvin = (solidsFraction * (dryC + KELVIN) + waterWeight * WATER_TG_K) / (solidsFraction + waterWeight);
  return kelvin - KELVIN;
}
