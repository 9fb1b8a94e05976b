/** Heat that a hot, level plate gives to still air, by either of its sides: free convection by McAdams' correlations, and radiation. */
import { requireRange } from '../matter/range.ts';

const stefanBoltzmann = 5.670374419e-8;
const zeroCelsiusK = 273.15;
const gravity = 9.80665;
const prandtl = 0.7;

/** Free air meets the top of a slab, and what lies on a rack from below. */
export type PlateSide = 'top' | 'underside';

export interface Plate {
  /** Area over perimeter, m. */
  readonly lengthM: number;
  readonly emissivity: number;
}

/** Nusselt number of a level plate warmer than the air; McAdams 1954, as printed in heat transfer texts (seen as a transcription). */
function nusselt(side: PlateSide, rayleigh: number): number {
  if (side === 'underside') return 0.27 * rayleigh ** 0.25;
  return rayleigh < 1e7 ? 0.54 * rayleigh ** 0.25 : 0.15 * rayleigh ** (1 / 3);
}

/**
 * Heat transfer from a plate to still air and to walls as warm as the air.
 *
 * @param surfaceC -30 to 200 C
 * @param airC -30 to 50 C
 * @returns W/(m2 K) of the difference between surface and air; about 15 % uncertain, draughts not counted
 * @throws RangeError outside the range
 * Source: see `nusselt`; air by linear fits to handbook values at the film temperature (from memory), as in the pan's losses.
 */
export function plateWPerM2K({ lengthM, emissivity }: Plate, side: PlateSide, surfaceC: number, airC: number): number {
  requireRange('surface temperature (C)', surfaceC, -30, 200);
  requireRange('air temperature (C)', airC, -30, 50);
  const filmC = (surfaceC + airC) / 2;
  const viscosity = 1.33e-5 + 1e-7 * filmC;
  const expansion = 1 / (filmC + zeroCelsiusK);
  const rayleigh = (gravity * expansion * Math.abs(surfaceC - airC) * lengthM ** 3 * prandtl) / viscosity ** 2;
  const convection = (nusselt(side, rayleigh) * (0.0243 + 7e-5 * filmC)) / lengthM;
  const [surfaceK, airK] = [surfaceC + zeroCelsiusK, airC + zeroCelsiusK];
  const radiation = emissivity * stefanBoltzmann * (surfaceK ** 2 + airK ** 2) * (surfaceK + airK);
  return convection + radiation;
}
