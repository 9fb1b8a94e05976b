/** What a cook came to, as the twin believes it at the pour: 10, 50 and 90 % marks. */
import type { Followed } from '../advice/followed.ts';
import { ebcFromA430 } from '../colour/scales.ts';
import type { Range } from '../twin/range.ts';

/** EBC of a 10 % w/w solution; shares 0 to 1, of the sucrose's moles and of the mass in the pan. */
export interface Landed {
  readonly ebc: Range;
  readonly inverted: Range;
  readonly waterShare: Range;
}

/** @returns nothing for a cook that was not poured */
export function landedOf({ progress, beliefs }: Pick<Followed, 'progress' | 'beliefs'>): Landed | undefined {
  const last = beliefs.at(-1);
  if (!progress.poured || !last) return undefined;
  const { a430, inverted, waterShare } = last.unseen;
  const [low, mid, high] = [a430.low, a430.mid, a430.high].map(ebcFromA430);
  return { ebc: { low, mid, high }, inverted, waterShare };
}
