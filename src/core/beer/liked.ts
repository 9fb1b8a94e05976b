/**
 * How the beers that a cook's sugar went into were liked, told no more surely than the tastings tell it. Three things differ: cooks, the
 * beers of one cook, and the tastings of one beer. How much each does is not known either: all that is likely is gone through, on a grid,
 * and weighed by the tastings (Gelman et al. 2013, Bayesian Data Analysis, 3rd ed., chapter 5).
 */
import { normalNumbers } from '../reactions/normal.ts';
import { type Range, rangeOf } from '../twin/range.ts';
import { drawnMeans, evenlyDrawn, type GroupMean, type Pooling, poolingAt } from './pooled.ts';
import { likingRange } from './tasting.ts';

export interface TastedBeer {
  /** One for each tasting that said how it was liked; at least one. */
  readonly likings: readonly number[];
  /** Which cooks its sugars came from, each with its share of all sugar in it; a beer counts for a cook by that share. */
  readonly cooks: readonly { readonly cookId: string; readonly share: number }[];
}

/** `one of one`: there is no other cook to tell it from. */
export type Standing = 'better' | 'less' | 'too few to tell' | 'one of one';

export interface LikedCook {
  readonly cookId: string;
  readonly beers: number;
  readonly tastings: number;
  /** Of its beers, each by the mean of its tastings and by the sugar's share; nothing is pooled. */
  readonly plainMean: number;
  /** How a beer of this cook is likely to be liked in the mean, 10 % and 90 % about the middle. */
  readonly liking: Range;
  /** That its beers are liked best, 0 to 1. */
  readonly best: number;
  /** Against the mean of the others. */
  readonly standing: Standing;
}

/** Taken for sure, in the mean of draws: wrong once in ten times at most (assumed). */
const sureEnough = 0.9;
/** One beer tells nothing of a cook, nor is a measure for others: what its malt did can't be told from what the sugar did (assumed). */
const leastBeers = 2;

/**
 * Weak beliefs before any tasting, points of liking: a standard deviation is half a normal about 0 with this one (assumed). Between cooks
 * of one kitchen, between beers of one cook, and between tastings of one beer, by whom and at whatever age it is tasted.
 */
export const priors = { cooks: 1, beers: 1, tastings: 1.2 } as const;
const gridPoints = 12;
/** Of the prior's own: beyond it lies 1 in 370 of a half normal. */
const gridReach = 3;
const draws = 2000;

/** @returns cooks whose beers were tasted, the one liked best in the middle first */
export function likedCooks(beers: readonly TastedBeer[]): readonly LikedCook[] {
  const ids = [...new Set(beers.flatMap(({ cooks }) => cooks.map(({ cookId }) => cookId)))].toSorted();
  if (ids.length === 0) return [];
  const all = beers.filter(({ cooks }) => cooks.length > 0).map(toldOf);
  const cooks = ids.map((id) => all.flatMap((beer) => (beer.shares.has(id) ? [beer] : [])));
  const drawn = drawnLikings(all, ids, cooks);
  const sums = drawn.map((each) => each.reduce((sum, liking) => sum + liking, 0));
  const bests = drawn.map((each) => each.indexOf(each.reduce((a, b) => Math.max(a, b))));
  return ids
    .map((cookId, at): LikedCook => {
      const own = drawn.map((each) => each[at]);
      const above = shareOf(own, (liking, draw) => liking * ids.length > sums[draw]);
      return {
        cookId,
        beers: cooks[at].length,
        tastings: cooks[at].reduce((sum, { count }) => sum + count, 0),
        plainMean: weighted(cooks[at], (beer) => beer.shares.get(cookId) ?? 0).mean,
        liking: onScale(rangeOf(own)),
        best: shareOf(bests, (best) => best === at),
        standing: ids.length === 1 ? 'one of one' : standingBy(above, leastOf(cooks, at)),
      };
    })
    .toSorted((a, b) => b.liking.mid - a.liking.mid || b.best - a.best);
}

/** The cook that is liked best for sure; none when they can't be told apart. */
export function likedBest(cooks: readonly LikedCook[]): LikedCook | undefined {
  return cooks.find(({ best, standing }) => standing === 'better' && best >= sureEnough);
}

/** Beers of a cook or of all others, whichever are fewer. */
function leastOf(cooks: readonly (readonly unknown[])[], at: number): number {
  const all = cooks.reduce((sum, { length }) => sum + length, 0);
  return Math.min(cooks[at].length, all - cooks[at].length);
}

function standingBy(above: number, beers: number): Standing {
  if (beers < leastBeers) return 'too few to tell';
  if (above >= sureEnough) return 'better';
  return above <= 1 - sureEnough ? 'less' : 'too few to tell';
}

interface Told {
  readonly mean: number;
  readonly count: number;
  /** Sum of squares about the mean. */
  readonly squares: number;
  readonly shares: ReadonlyMap<string, number>;
}

function toldOf({ likings, cooks }: TastedBeer): Told {
  const mean = likings.reduce((sum, liking) => sum + liking, 0) / likings.length;
  const squares = likings.reduce((sum, liking) => sum + (liking - mean) ** 2, 0);
  const shares = new Map<string, number>();
  for (const { cookId, share } of cooks) shares.set(cookId, (shares.get(cookId) ?? 0) + share);
  return { mean, count: likings.length, squares, shares };
}

function weighted(beers: readonly Told[], weight: (beer: Told) => number) {
  let [sum, total] = [0, 0];
  for (const beer of beers) {
    sum += weight(beer) * beer.mean;
    total += weight(beer);
  }
  return { mean: sum / total, total };
}

interface Spot {
  readonly groups: readonly GroupMean[];
  readonly pooling: Pooling;
}

/** Draws of every cook's mean liking, as likely as the tastings make them. */
function drawnLikings(all: readonly Told[], ids: readonly string[], cooks: readonly (readonly Told[])[]) {
  const spots: Spot[] = [];
  const logWeights: number[] = [];
  for (const tastingSd of gridOf(priors.tastings)) {
    for (const beerSd of gridOf(priors.beers)) {
      const withinBeers =
        logPrior(tastingSd, priors.tastings) + logPrior(beerSd, priors.beers) + within(all, tastingSd);
      const varianceOf = ({ count }: Told): number => beerSd ** 2 + tastingSd ** 2 / count;
      let logWeight = withinBeers;
      const groups = cooks.map((beers, at): GroupMean => {
        const shareOfBeer = ({ shares }: Told): number => shares.get(ids[at]) ?? 0;
        const { mean, total } = weighted(beers, (beer) => shareOfBeer(beer) / varianceOf(beer));
        for (const beer of beers) {
          const variance = varianceOf(beer);
          logWeight -= 0.5 * shareOfBeer(beer) * (Math.log(variance) + (beer.mean - mean) ** 2 / variance);
        }
        logWeight -= 0.5 * Math.log(total);
        return { mean, variance: 1 / total };
      });
      for (const cookSd of gridOf(priors.cooks)) {
        const pooling = poolingAt(groups, cookSd);
        spots.push({ groups, pooling });
        logWeights.push(logWeight + logPrior(cookSd, priors.cooks) + pooling.logLikelihood);
      }
    }
  }
  const most = logWeights.reduce((a, b) => Math.max(a, b));
  const weights = logWeights.map((log) => Math.exp(log - most));
  const normal = normalNumbers(1);
  return Array.from(evenlyDrawn(weights, draws), (at) => drawnMeans(spots[at].groups, spots[at].pooling, normal));
}

/** What the tastings of each beer say of how far they scatter about it. */
function within(all: readonly Told[], tastingSd: number): number {
  return all.reduce(
    (sum, { count, squares }) => sum - (count - 1) * Math.log(tastingSd) - squares / (2 * tastingSd ** 2),
    0,
  );
}

/** Middles of even parts: none is 0, at which nothing would differ at all. */
function gridOf(prior: number): readonly number[] {
  return Array.from({ length: gridPoints }, (_, i) => (gridReach * prior * (i + 0.5)) / gridPoints);
}

function logPrior(sd: number, prior: number): number {
  return -0.5 * (sd / prior) ** 2;
}

function shareOf<T>(each: readonly T[], counts: (one: T, at: number) => boolean): number {
  return each.filter(counts).length / each.length;
}

/** What was drawn beyond the ends of the scale nobody can say. */
function onScale({ low, mid, high }: Range): Range {
  const kept = (liking: number): number => Math.min(likingRange[1], Math.max(likingRange[0], liking));
  return { low: kept(low), mid: kept(mid), high: kept(high) };
}
