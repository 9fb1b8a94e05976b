/**
 * Learning a kit from a finished cook: every uncertain number of kit and sugar, and how full each spoon was, are fitted to all that was
 * read and measured, from what was known before. A cook that can't be told by any kit that was likely is not learned from.
 */
import type { Learned, Lesson } from '../pan/learned.ts';
import { judged, misfitOf, type Verdict } from './judged.ts';
import { type Knowledge, knownAfter, knownOf, valuesAt } from './knowledge.ts';
import { type CookTold, createReplay, type Replay } from './replay.ts';
import { type Smoothed, type Smoothing, smooth } from './smoother.ts';
import { thinned } from './thinned.ts';

/** Scatter of a single spoonful, as a share (common practice, no source). */
const spoonScatter = 0.2;
/** Further out than this, in scores, lies no kitchen, and the model need not be able to follow it. */
const furthestScore = 6;
/** Where fits begin, in scores, and the misfit below which no other is tried. */
const surfaceStarts = [0, -1.5, 1.5];
const goodMisfit = 2;

export type Learning =
  | { readonly kind: 'learned'; readonly learned: Learned; readonly verdict: Verdict }
  | { readonly kind: 'refused'; readonly verdict: Verdict };

/**
 * @param told the cook; its kit's `learned` is what was known before
 * @param cook its id
 * @returns what is known after it, or why nothing is learned
 */
export function learnFrom(told: CookTold, cook: string): Learning {
  const known = knownOf(told.prepared.kit);
  const replay = createReplay({ ...told, events: thinned(told.events) });
  const fit = fitted(replay, known);
  const { verdict, smoothed } = fit;
  if (!verdict.accepted) return { kind: 'refused', verdict };
  const lesson: Lesson = { kind: 'cook', name: cook, observations: replay.observed.length, misfit: verdict.misfit };
  return { kind: 'learned', learned: knownAfter(known, smoothed.centre, smoothed.precisionRoot, lesson), verdict };
}

interface Fit {
  readonly smoothed: Smoothed;
  readonly verdict: Verdict;
}

function fitted(replay: Replay, known: Knowledge): Fit {
  const kitCount = known.names.length;
  const problem = {
    count: kitCount + replay.spoonings,
    predict: (scores: Float64Array) =>
      scores.every((score) => Math.abs(score) < furthestScore)
        ? replay.predict(valuesAt(known, scores), scores.subarray(kitCount).map(fillAt))
        : undefined,
    observed: replay.observed,
  };
  const first = bestOf(problem, replay.sd, known.names.indexOf('surfaceRenewalS'));
  const misfit = misfitOf(first);
  const counted = countedOnce(first, misfit);
  const smoothed =
    counted > 1.5
      ? smooth({ ...problem, sd: replay.sd.map((sd) => sd * Math.sqrt(counted)), start: first.centre })
      : first;
  return { smoothed, verdict: judged(replay, smoothed, misfit, kitCount) };
}

/**
 * A pan below its boil and one that boils gently can look alike for a while, and a fit may settle on the wrong one. What parts them is how
 * fast the surface gives off water: when the fit is poor, others that begin there are tried, and the best one counts.
 */
function bestOf(problem: Omit<Smoothing, 'sd'>, sd: Float64Array, surfaceAt: number): Smoothed {
  let best: Smoothed | undefined;
  for (const score of surfaceStarts) {
    const start = new Float64Array(problem.count);
    start[surfaceAt] = score;
    const fit = smooth({ ...problem, sd, start });
    if (!best || misfitOf(fit) < misfitOf(best)) best = fit;
    if (misfitOf(best) < goodMisfit) break;
  }
  return best as Smoothed;
}

/** Mean 1. Without a least fill, at which nothing more could be told from a score. */
const fillAt = (score: number): number => Math.exp(spoonScatter * (score - spoonScatter / 2));

/**
 * By how much the errors' variances are too small for what was found: errors larger than stated (Birge 1932, Phys. Rev. 40:207), and
 * errors that hang together, which count once (lag-one autocorrelation r: (1 + r) / (1 - r), Priestley 1981).
 */
function countedOnce({ residuals }: Smoothed, misfit: number): number {
  let product = 0;
  let square = 0;
  for (let k = 1; k < residuals.length; k++) {
    product += residuals[k] * residuals[k - 1];
    square += residuals[k] * residuals[k];
  }
  const r = Math.min(0.95, Math.max(0, product / square));
  return (Math.max(1, misfit) * (1 + r)) / (1 - r);
}
