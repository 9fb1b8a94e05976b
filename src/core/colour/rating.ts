/**
 * On what strength of solution a sugar's printed EBC was measured. The same sugar carries numbers ten times apart
 * depending on it, so a rating is nothing without its basis. All derived from EBC = 25 A430 in 1 cm.
 */
import { a430FromEbc, a430FromSpecific, ebcFromA430 } from './scales.ts';

export const ratingBases = {
  /** What this program prints: 100 g in 1000 g of solution, density 1.0381 g/mL at 20 C (ICUMSA SPS-4). */
  tenPercentByWeight: { gramsPerLitre: 103.81, meaning: '10 % w/w solution' },
  /** 100 g made up to 1 L: caramel and corn-syrup trade (CRA E-16, seen quoted). */
  tenPercentByVolume: { gramsPerLitre: 100, meaning: '10 % w/v solution' },
  /** A 1 + 9 dilution, counted back to the undiluted syrup: EBC method 6.9 and caramel makers' sheets (seen quoted). */
  asIs: { gramsPerLitre: 1000, meaning: 'undiluted, per 1000 g/L' },
} as const;

export type RatingBasis = keyof typeof ratingBases;

/** A430 per cm of the basis' solution, from a specific absorbance in L/(g cm). */
export function ratingA430(specificAbsorbance: number, basis: RatingBasis): number {
  return a430FromSpecific(specificAbsorbance, ratingBases[basis].gramsPerLitre);
}

/** EBC of a sugar on a basis, from its specific absorbance in L/(g cm). */
export function ratingEbc(specificAbsorbance: number, basis: RatingBasis): number {
  return ebcFromA430(ratingA430(specificAbsorbance, basis));
}

/** Specific absorbance, L/(g cm), of a sugar whose EBC is stated on a basis. */
export function specificFromRating(ebc: number, basis: RatingBasis): number {
  return a430FromEbc(ebc) / ratingBases[basis].gramsPerLitre;
}
