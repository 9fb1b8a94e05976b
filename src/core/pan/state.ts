/** The state of a pan: one array of numbers, so that ensembles and integrators can treat it as a point in space. */
import { amount, amountCount, amountMassKg } from '../reactions/rates.ts';

/** Places in the state. The first `movingCount` change by themselves; the rest change by deeds alone. */
export const place = {
  ...amount,
  /** Alkali released and water alkalinity, eq. */
  base: 13,
  /** Dissolved alkali on its way into the syrup, eq. */
  caustic: 14,
  /** Slaked lime not dissolved yet, eq. */
  lime: 15,
  /** Sucrose not dissolved yet, mol. */
  crystals: 16,
  waterKg: 17,
  /** Heat content of syrup and crystals above 0 C, J. */
  enthalpyJ: 18,
  panC: 19,
  /** Heat that reaches the pan from the ring, W. */
  burnerW: 20,
  /** What the thermometer's tip has reached, C. */
  tipC: 21,
  /** Running totals since the start: water boiled off (kg), heat in, lost, carried off by steam, and set free by reactions (J). */
  steamKg: 22,
  heatInJ: 23,
  lostJ: 24,
  steamJ: 25,
  reactionJ: 26,
  maltKg: 27,
  citricMol: 28,
  /** Mass of alkali and acid added, kg. */
  mineralKg: 29,
} as const;

export const movingCount = 27;
export const stateSize = 30;

/** Dissolved dry matter of a state, kg: sugars and what became of them, malt extract, alkali and acid. */
export function dissolvedKg(y: Float64Array): number {
  let mass = y[place.maltKg] + y[place.mineralKg];
  for (let i = 0; i < amountCount; i++) mass += y[i] * amountMassKg[i];
  return mass;
}

/** Solids of the dissolved syrup, mass fraction. */
export function solidsIn(y: Float64Array): number {
  const dry = dissolvedKg(y);
  return dry / (dry + y[place.waterKg]);
}

/** Everything in the pan, kg. */
export function contentsKg(y: Float64Array): number {
  return dissolvedKg(y) + y[place.waterKg] + y[place.crystals] * amountMassKg[amount.sucrose];
}
