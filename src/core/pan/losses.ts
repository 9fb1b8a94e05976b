/** Heat that a hot pan gives to a still room: free convection by published correlations, and radiation. */
import type { PanMaterial, PanVessel } from './kit.ts';
import { surfaceAreaM2 } from './kit.ts';
import { air, nusseltFacingUp, prandtl, rayleigh, stefanBoltzmann, zeroCelsiusK } from './stillAir.ts';

/** Emissivity of the outside: stainless after use and enamel as tabulated (seen); copper and iron from memory. */
const emissivity: Record<PanMaterial, number> = {
  stainless: 0.3,
  enamel: 0.9,
  copper: 0.1,
  castIron: 0.8,
  aluminium: 0.2,
  unknownCoating: 0.9,
};

/** Emissivity of syrup (from memory). */
const syrupEmissivity = 0.94;

function radiationW(surfaceC: number, roomC: number, area: number, emissivityOf: number): number {
  return emissivityOf * stefanBoltzmann * area * ((surfaceC + zeroCelsiusK) ** 4 - (roomC + zeroCelsiusK) ** 4);
}

/**
 * Heat lost by the pan's outer side, W.
 *
 * @param surfaceC temperature of the side, at least the room's
 * Source: vertical surface, laminar: Churchill & Chu 1975, Nu = 0.68 + 0.670 Ra^1/4 / [1 + (0.492/Pr)^(9/16)]^(4/9).
 */
export function sideLossW(pan: PanVessel, surfaceC: number, roomC: number): number {
  const area = Math.PI * pan.diameterM * pan.heightM;
  const nusselt =
    0.68 + (0.67 * rayleigh(surfaceC, roomC, pan.heightM) ** 0.25) / (1 + (0.492 / prandtl) ** (9 / 16)) ** (4 / 9);
  const coefficient = (nusselt * air((surfaceC + roomC) / 2).conductivity) / pan.heightM;
  return coefficient * area * (surfaceC - roomC) + radiationW(surfaceC, roomC, area, emissivity[pan.material]);
}

/**
 * Heat lost by the syrup's surface without evaporation, W.
 *
 * Source: `nusseltFacingUp`.
 */
export function surfaceLossW(pan: PanVessel, surfaceC: number, roomC: number): number {
  const area = surfaceAreaM2(pan);
  const length = pan.diameterM / 4;
  const nusselt = nusseltFacingUp(rayleigh(surfaceC, roomC, length));
  const coefficient = (nusselt * air((surfaceC + roomC) / 2).conductivity) / length;
  return coefficient * area * (surfaceC - roomC) + radiationW(surfaceC, roomC, area, syrupEmissivity);
}

/** Loss as a + b x (temperature above the room): heat lost is `linear * d + quadratic * d^2`, W for d in K. */
export interface LossLaw {
  readonly linear: number;
  readonly quadratic: number;
}

/** The two-term law through a loss function at 60 and 130 K above the room; within 3 % of it from 40 to 160 K. */
export function lossLaw(loss: (surfaceC: number) => number, roomC: number): LossLaw {
  const at60 = loss(roomC + 60) / 60;
  const at130 = loss(roomC + 130) / 130;
  const quadratic = (at130 - at60) / 70;
  return { linear: at60 - 60 * quadratic, quadratic };
}
