/** What was found for a wish, in words. */
import { ebcOf, span } from '../../../parts/figures.ts';
import type { Found } from '../planner.worker.ts';

const outOfTen = (share: number): string => `${Math.round(10 * share)} in 10`;

export function saysOf(found: Found): string {
  if (found.kind === 'refused') return `No plan: ${found.refusals.map(({ message }) => message).join('; ')}.`;
  if (found.kind === 'failed') return `This could not be computed: ${found.message}`;
  const { a430, odds, short, request } = found;
  const lands = `Planned to land at ${ebcOf(a430)} EBC; 8 in 10 cooks of it at ${span(odds.a430, ebcOf)} EBC.`;
  const chance = `${outOfTen(odds.band ?? 0)} come within a tenth of the aim, ${outOfTen(odds.justVisible)} look the same beside it.`;
  return short === undefined
    ? `${lands} ${chance} By the ${request.route} route.`
    : `${lands} ${chance} This is the nearest: ${short}.`;
}
