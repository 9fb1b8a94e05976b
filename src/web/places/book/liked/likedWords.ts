/** How a cook's beers were liked, in words that promise no more than the tastings do. */
import { type LikedCook, likedBest, type Standing } from '../../../../core/beer/liked.ts';
import { span } from '../../../parts/figures.ts';

export const points = (liking: number): string => liking.toFixed(1);

/** `7.7 of 10, 8 in 10 between 6.8 and 8.4` is too long for a row: `7.7 of 10 (6.8 to 8.4)`. */
export function likingText({ liking }: LikedCook): string {
  return `${points(liking.mid)} of 10 (${span(liking, points)})`;
}

export function countsText({ beers, tastings }: LikedCook): string {
  return `${counted(beers, 'beer')}, ${counted(tastings, 'tasting')}`;
}

export const standingWords: Readonly<Record<Standing, string>> = {
  better: 'liked better than the others',
  less: 'liked less than the others',
  'too few to tell': 'too few to tell from the others',
  'one of one': 'no other cook to tell it from',
};

/** Never certain: draws that all fall one way are still draws. */
export function chanceText(chance: number): string {
  const tenths = Math.round(10 * chance);
  if (chance >= 0.95) return 'more than 9 in 10';
  return tenths === 0 ? 'less than 1 in 10' : `${tenths} in 10`;
}

/** What all tastings together tell, as one sentence. */
export function verdictText(cooks: readonly LikedCook[], nameOf: (cookId: string) => string): string {
  const best = likedBest(cooks);
  if (best) return `The beers of “${nameOf(best.cookId)}” are liked best: ${chanceText(best.best)} that it is so.`;
  const better = cooks.filter(({ standing }) => standing === 'better').map(({ cookId }) => `“${nameOf(cookId)}”`);
  if (better.length > 0)
    return `Liked better than the others: ${better.join(', ')}. Which of all is best can't be told.`;
  return 'Too few to tell: by these tastings any difference may be chance, or the rest of the beer.';
}

function counted(count: number, what: string): string {
  return `${count} ${what}${count === 1 ? '' : 's'}`;
}
