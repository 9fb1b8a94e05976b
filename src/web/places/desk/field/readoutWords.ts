/** What a spot of the field makes, in words. */

import { tasteNames } from '../../../../core/planning/taste.ts';
import { clock, ebcOf, span } from '../../../parts/figures.ts';
import type { Readout } from './FieldReadout.tsx';

/** Steps of a taste index (assumed, as the index itself is). */
const strengths = [
  { below: 1, word: 'none' },
  { below: 2.5, word: 'a hint' },
  { below: 4.5, word: 'some' },
  { below: 7, word: 'clear' },
  { below: Number.POSITIVE_INFINITY, word: 'strong' },
];

export const strengthOf = (index: number): string => strengths.find(({ below }) => index < below)?.word ?? '';

export const bandSaid = (a430: number, { low, high }: NonNullable<Readout['band']>): string =>
  span({ low: a430 * low, mid: a430, high: a430 * high }, ebcOf);

export function madeSaid({ here, band, refusals, working, failed }: Readout): string {
  if (failed !== undefined) return `not computed: ${failed}`;
  if (here) {
    const tastes = tasteNames.map((name) => `${name} ${strengthOf(here.taste[name])}`).join(', ');
    const likely = band ? `, 8 in 10 cooks ${bandSaid(here.a430, band)}` : '';
    return `${ebcOf(here.a430)} EBC${likely}; ${tastes}; ${clock(here.minutes)}`;
  }
  if (refusals[0]) return `no plan: ${refusals[0].message}`;
  return working ? 'being computed' : 'not done within 6 hours in this kit';
}
