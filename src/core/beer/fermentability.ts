/** How much of a browned sugar yeast takes. Nobody has published it: a range by colour, until a forced ferment says better. */
import { specificFromRating } from '../colour/rating.ts';
import { requireRange } from '../matter/range.ts';
import type { Range } from '../twin/range.ts';
import { fermentedShare, realExtract } from './balling.ts';

export const fermentabilitySource =
  'sucrose, glucose and fructose wholly (textbooks, from memory), caramel hardly at all (seen quoted); by colour: judgement, no source';

/** Marks at an EBC of a 10 % w/w solution (assumed): pale and gold, amber and brown, dark, near-black. */
const byColour = [
  { ebc: 8, low: 0.97, high: 1 },
  { ebc: 40, low: 0.9, high: 0.97 },
  { ebc: 200, low: 0.8, high: 0.92 },
  { ebc: 750, low: 0.55, high: 0.8 },
] as const;
const steps = byColour.map(({ ebc, low, high }) => ({
  ln: Math.log(specificFromRating(ebc, 'tenPercentByWeight')),
  low,
  high,
}));

/**
 * Share of the solids that yeast ferments, by colour alone; straight lines in the logarithm of the colour.
 *
 * @param specific430 of the dry sugar, L/(g cm), 0 or more
 * Assumed: see `fermentabilitySource`.
 */
export function fermentabilityByColour(specific430: number): Range {
  requireRange('specific absorbance, L/(g cm)', specific430, 0, 2);
  const low = between(specific430, 'low');
  const high = between(specific430, 'high');
  return { low, mid: (low + high) / 2, high };
}

function between(specific430: number, mark: 'low' | 'high'): number {
  const ln = Math.log(specific430);
  const next = steps.findIndex((step) => step.ln > ln);
  if (next === 0) return byColour[0][mark];
  const [below, above] = [steps.at(next - 1), steps[next]];
  if (below === undefined || above === undefined) return byColour[3][mark];
  return below[mark] + ((ln - below.ln) / (above.ln - below.ln)) * (above[mark] - below[mark]);
}

/**
 * Fermentability that a forced ferment showed: 100 g/L of the sugar with yeast and nutrient at 25 C, until the gravity stands still.
 *
 * @param originalPlato of the solution, 5 to 20
 * @param finalPlato as the hydrometer shows it in the end, -4 to `originalPlato`
 * @returns share of the solids, within 0.03 either way for a hydrometer read to 0.2 P (derived)
 */
export function fermentabilityFromForcedFerment(originalPlato: number, finalPlato: number): Range {
  requireRange('original extract (P)', originalPlato, 5, 20);
  requireRange('final extract (P)', finalPlato, -4, originalPlato);
  const mid = shareWithin(fermentedShare(originalPlato, realExtract(originalPlato, finalPlato)));
  const reach = (0.8192 * 0.2 * Math.SQRT2) / originalPlato;
  return { low: shareWithin(mid - reach), mid, high: shareWithin(mid + reach) };
}

function shareWithin(share: number): number {
  return Math.min(1, Math.max(0, share));
}
