/** Heat that a hot, level plate gives to still air, by either of its sides: free convection by McAdams' correlations, and radiation. */
import { requireRange } from '../matter/range.ts';
import { air, nusseltFacingUp, rayleigh, stefanBoltzmann, zeroCelsiusK } from '../pan/stillAir.ts';

/** Free air meets the top of a slab, and what lies on a rack from below. */
export type PlateSide = 'top' | 'underside';

export interface Plate {
  /** Area over perimeter, m. */
  readonly lengthM: number;
  readonly emissivity: number;
}

/** Nusselt number of a level plate warmer than the air; McAdams 1954, as printed in heat transfer texts (seen as a transcription). */
function nusselt(side: PlateSide, ra: number): number {
  return side === 'underside' ? 0.27 * ra ** 0.25 : nusseltFacingUp(ra);
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
  const { conductivity } = air((surfaceC + airC) / 2);
  const convection = (nusselt(side, rayleigh(surfaceC, airC, lengthM)) * conductivity) / lengthM;
  const [surfaceK, airK] = [surfaceC + zeroCelsiusK, airC + zeroCelsiusK];
  const radiation = emissivity * stefanBoltzmann * (surfaceK ** 2 + airK ** 2) * (surfaceK + airK);
  return convection + radiation;
}
