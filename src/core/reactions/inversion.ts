/** Inversion of sucrose by itself: its speed at a hot pH, as the scheme has it. */
import { arrhenius } from './arrhenius.ts';
import type { ReactionParameter } from './parameters.ts';

/**
 * First-order rate constant of inversion, 1/s.
 *
 * @param p values of the scheme's parameters
 * @param ph hot pH, at the temperature itself
 * @param temperatureC 20 to 170 C
 * @param waterDensity water in the solution, g/mL: 1 dilute, about 0.14 in syrup of 10.5 % water
 * Sources and spreads: `inversionRate130`, `inversionEnergy`, `waterOrder`, `scissionRate150` in parameters.ts.
 */
export function inversionPerS(
  p: Readonly<Record<ReactionParameter, number>>,
  ph: number,
  temperatureC: number,
  waterDensity: number,
): number {
  const acid = arrhenius(p.inversionRate130, p.inversionEnergy, 130, temperatureC) * 10 ** -ph;
  const scission = arrhenius(p.scissionRate150, p.scissionEnergy, 150, temperatureC);
  return (acid * waterDensity ** p.waterOrder + scission) / 60;
}

/** Minutes until half of the sucrose is inverted; arguments as `inversionPerS`. */
export function inversionHalfLifeMin(
  p: Readonly<Record<ReactionParameter, number>>,
  ph: number,
  temperatureC: number,
  waterDensity: number,
): number {
  return Math.LN2 / inversionPerS(p, ph, temperatureC, waterDensity) / 60;
}
