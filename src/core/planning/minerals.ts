/** Sodium and calcium that alkali brings into a sugar. All of it stays: neither boils off. */
import { MOLAR_MASS } from '../matter/sugars.ts';
import type { AlkaliAmounts } from './amounts.ts';

export interface Minerals {
  /** g for each kg of finished sugar. */
  readonly sodiumGPerKg: number;
  readonly calciumGPerKg: number;
}

/** @param contentsKg everything in the pan at the pour: what sticks to it keeps its share of the metal */
export function mineralsOf(
  alkali: Pick<AlkaliAmounts, 'substance' | 'equivalents'> | undefined,
  contentsKg: number,
): Minerals {
  const { substance, equivalents } = alkali ?? { substance: 'sodiumHydroxide', equivalents: 0 };
  const sodium = substance === 'sodiumHydroxide';
  // One sodium, or half a calcium, for each equivalent of base, be it hydroxide or carbonate.
  return {
    sodiumGPerKg: sodium ? (1000 * equivalents * MOLAR_MASS.sodium) / contentsKg : 0,
    calciumGPerKg: sodium ? 0 : (500 * equivalents * MOLAR_MASS.calcium) / contentsKg,
  };
}
