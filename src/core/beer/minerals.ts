/** Sodium and calcium that the alkali of a cook leaves in its sugar: NaOH is 57.48 % sodium, Ca(OH)2 54.09 % calcium (molar masses). */
import type { AlkaliGiven } from '../lot/lot.ts';
import type { Range } from '../twin/range.ts';
import { inversionGain, type Minerals } from './sugar.ts';
import { certain, timesRange } from './uncertain.ts';

const metalShare = { sodiumHydroxide: 22.98977 / 39.99711, calciumHydroxide: 40.078 / 74.0927 } as const;

/**
 * @param solids of the finished sugar, mass fraction
 * @param inverted share of the sucrose that was inverted, which made it heavier
 */
export function mineralsOfAlkali(
  { substance, gramsPerKgSucrose }: AlkaliGiven,
  solids: Range,
  inverted: number,
): Minerals {
  const perSolids = (gramsPerKgSucrose * metalShare[substance]) / (1 + inversionGain * inverted);
  const metal = timesRange(solids, perSolids);
  return substance === 'sodiumHydroxide'
    ? { sodiumGPerKg: metal, calciumGPerKg: certain(0) }
    : { sodiumGPerKg: certain(0), calciumGPerKg: metal };
}

export const noMinerals: Minerals = { sodiumGPerKg: certain(0), calciumGPerKg: certain(0) };
