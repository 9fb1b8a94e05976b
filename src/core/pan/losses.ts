/** Heat that a hot pan gives to a still room: free convection by published correlations, and radiation. */
import type { PanMaterial, PanVessel } from './kit.ts';
import { surfaceAreaM2 } from './kit.ts';

const stefanBoltzmann = 5.670374419e-8;
const zeroCelsiusK = 273.15;
const gravity = 9.80665;
const prandtl = 0.7;

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

/** Air at the film temperature: conductivity W/(m K) and kinematic viscosity m2/s, linear fits to handbook values, 20-120 C (from memory). */
function air(filmC: number): { conductivity: number; viscosity: number } {
  return { conductivity: 0.0243 + 7e-5 * filmC, viscosity: 1.33e-5 + 1e-7 * filmC };
}

function rayleigh(surfaceC: number, roomC: number, length: number): number {
  const film = (surfaceC + roomC) / 2;
  const { viscosity } = air(film);
  const expansion = 1 / (film + zeroCelsiusK);
  return (gravity * expansion * Math.abs(surfaceC - roomC) * length ** 3 * prandtl) / viscosity ** 2;
}

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
 * Source: horizontal plate facing up: McAdams, Nu = 0.54 Ra^1/4 (1e4 to 1e7), 0.15 Ra^1/3 above; length = area over perimeter.
 */
export function surfaceLossW(pan: PanVessel, surfaceC: number, roomC: number): number {
  const area = surfaceAreaM2(pan);
  const length = pan.diameterM / 4;
  const ra = rayleigh(surfaceC, roomC, length);
  const nusselt = ra < 1e7 ? 0.54 * ra ** 0.25 : 0.15 * ra ** (1 / 3);
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
