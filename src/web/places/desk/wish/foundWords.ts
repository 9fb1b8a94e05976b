/** What was found for a wish, in words. */
import { ebcOf, span } from '../../../parts/figures.ts';
import type { Found } from '../planner.worker.ts';

const outOfTen = (share: number): string => `${Math.round(10 * share)} in 10`;

/** @param forBeer the band is what a beer may need */
export function saysOf(found: Found, forBeer: boolean): string {
  if (found.kind === 'refused') return `No plan: ${found.refusals.map(({ message }) => message).join('; ')}.`;
  if (found.kind === 'failed') return `This could not be computed: ${found.message}`;
  const { a430, odds, band, short, request } = found;
  const lands = `Planned to land at ${ebcOf(a430)} EBC; 8 in 10 cooks of it at ${span(odds.a430, ebcOf)} EBC.`;
  const [from, to] = band.map(ebcOf);
  const within = forBeer
    ? `between the ${from} and ${to} EBC that the beer may need`
    : `within what you call near enough, ${from} to ${to} EBC`;
  const chance = `${outOfTen(odds.band ?? 0)} come ${within}, ${outOfTen(odds.justVisible)} look the same beside it.`;
  return short === undefined
    ? `${lands} ${chance} By the ${request.route} route.`
    : `${lands} ${chance} This is the nearest: ${short}.`;
}
