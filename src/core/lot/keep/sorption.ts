/** How fast a sugar can draw water from the air: a bound, because what happens below its surface is slower and nobody has measured it here. */
import { requireRange } from '../../matter/range.ts';
import { saturationPressurePa } from '../../matter/water.ts';

/** Transfer of heat to a cool surface in a room without draughts, W/(m2 K): 2 to 5 in handbooks of free convection (from memory); the upper end bounds. */
const stillAirWPerM2K = 5;
/** Air of a room, J/(m3 K): 1.2 kg/m3 of 1005 J/(kg K) (from memory). */
const airJPerM3K = 1206;
/** Lewis number of water vapour in air, to the power 2/3: 0.86^(2/3) (from memory). */
const lewis = 0.904;
/** Gas constant of water vapour, J/(kg K). */
const vapourGasJPerKgK = 461.5;

export interface Air {
  readonly roomC: number;
  /** Relative humidity, 0 to 1. */
  readonly humidity: number;
}

/**
 * The most water that a surface can draw from still air.
 *
 * @param activity water activity of the surface, 0 to 1; as dry as the sugar is, so that it stays a bound while it gets wetter
 * @returns kg for each m2 in an hour; 0 in air that is drier than the surface
 * @throws RangeError for a room outside 0 to 40 C
 * Source: analogy of heat and mass transfer (Chilton & Colburn 1934), k = h / (density x heat capacity x Le^(2/3)).
 */
export function fastestGainKgPerM2H(activity: number, { roomC, humidity }: Air): number {
  requireRange('room temperature (C)', roomC, 0, 40);
  const kelvin = roomC + 273.15;
  const transferMPerS = stillAirWPerM2K / (airJPerM3K * lewis);
  const vapourKgPerM3 = saturationPressurePa(roomC) / (vapourGasJPerKgK * kelvin);
  return 3600 * transferMPerS * vapourKgPerM3 * Math.max(0, humidity - activity);
}

/**
 * Hours that a layer of shards takes at the least to gain a share of its mass.
 *
 * @param share of the mass, such as 0.01
 * @param kgPerM2 mass behind each m2 that meets the air
 */
export function hoursToGain(share: number, kgPerM2: number, activity: number, air: Air): number {
  return (share * kgPerM2) / fastestGainKgPerM2H(activity, air);
}
