/** Among ways that reach a colour, the one that suits best: the taste wished for first, then the cook that was asked for. */
import type { TasteAim } from '../aim.ts';
import type { PlanRequest } from '../request.ts';
import type { Way } from './ways.ts';

/** A way this near to the colour counts as reaching it: tuning does the rest. */
const nearShare = 0.02;

export const reaches = (way: Way, a430: number): boolean => Math.abs(Math.log(way.a430 / a430)) < nearShare;

/** How far a way is from what was wished, in steps of the taste indices (weights assumed). */
function unsuited({ taste, request }: Way, wish: TasteAim | undefined, asked: PlanRequest): number {
  const off = (have: number, want: number | undefined): number => (want === undefined ? 0 : Math.abs(have - want));
  const wished = off(taste.fruit, wish?.fruit) + off(taste.roast, wish?.roast);
  // Nobody wishes for burnt or for lye; and without a wish the holds stay as they were asked for.
  const unwished = 0.5 * taste.burnt + 0.1 * taste.alkali;
  const changed = (['invertMinutes', 'brownMinutes', 'roastMinutes'] as const).reduce(
    (sum, hold) => sum + Math.abs(Math.log((request[hold] + 1) / (asked[hold] + 1))),
    0,
  );
  return wished + unwished + (wish ? 0.2 : 1) * changed;
}

/** @param ways at least one */
export function chosen(ways: readonly Way[], a430: number, wish: TasteAim | undefined, asked: PlanRequest): Way {
  const reaching = ways.filter((way) => reaches(way, a430));
  if (reaching.length === 0) {
    const off = (way: Way): number => Math.abs(Math.log(way.a430 / a430));
    return ways.reduce((best, way) => (off(way) < off(best) ? way : best));
  }
  return reaching.reduce((best, way) => (unsuited(way, wish, asked) < unsuited(best, wish, asked) ? way : best));
}
