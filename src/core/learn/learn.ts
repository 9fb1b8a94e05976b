/**
 * Learning a kit from a finished cook: every uncertain number of kit and sugar, and how full each spoon was, are fitted to all that was
 * read and measured, from what was known before. A cook that can't be told by any kit that was likely is not learned from.
 */
import type { Learned, Lesson } from '../pan/learned.ts';
import { judged, misfitOf, mostMisfit, type Verdict } from './judged.ts';
import { type Knowledge, knownAfter, knownOf, valuesAt } from './knowledge.ts';
import { type CookTold, createReplay, type Replay } from './replay.ts';
import { type Smoothed, type Smoothing, smooth } from './smoother.ts';
import { thinned } from './thinned.ts';

/** Scatter of a single spoonful, as a share (common practice, no source). */
const spoonScatter = 0.2;
/** Further out than this, in scores, lies no kitchen, and the model need not be able to follow it. */
const furthestScore = 6;
/** How much of the log is taken in before the whole of it, and how many steps are spent on each part. */
const windows = [0.2, 0.4, 0.6, 0.8];
const windowSteps = 6;
/** The tempered fit begins where the other ended: it moves little, and its spread is what is wanted of it. */
const temperedSteps = 2;
/**
 * What is left uncertain is reckoned as if the model were straight around the best fit, and over a valley that bends it is not: the log
 * counts for so much less (a tempered posterior: Bissiri, Holmes & Walker 2016, J. R. Stat. Soc. B 78:1103; by how much was chosen by
 * measured coverage on hidden kitchens that are not those of bench/results/learn.md).
 */
const tempering = 4;

/** The cook's readings, and what they should have been by what was known before and by what is known now. */
export interface Retold {
  readonly timeS: Float64Array;
  readonly readC: Float64Array;
  readonly beforeC: Float64Array;
  readonly afterC: Float64Array;
}

export type Learning =
  | { readonly kind: 'learned'; readonly learned: Learned; readonly verdict: Verdict; readonly retold: Retold }
  | { readonly kind: 'refused'; readonly verdict: Verdict; readonly retold: Retold };

export interface LearningFrom extends Pick<Lesson, 'name' | 'at'> {
  /** Told after each run of the model, of which it takes some hundreds to a few thousand. */
  readonly onRun?: ((runs: number) => void) | undefined;
}

/**
 * @param told the cook; its kit's `learned` is what was known before
 * @param from the cook's id, and when it is learned from
 * @returns what is known after it, or why nothing is learned
 */
export function learnFrom(told: CookTold, { name, at, onRun }: LearningFrom): Learning {
  const { known, replay, problem, smoothed, misfit, verdict } = fitTo(told, onRun);
  const retold = retoldBy(replay, problem.predict(new Float64Array(problem.count)), smoothed.predicted);
  if (!verdict.accepted) return { kind: 'refused', verdict, retold };
  const lesson = { kind: 'cook', name, observations: replay.observed.length, misfit, ...(at && { at }) } as const;
  const learned = knownAfter(known, smoothed.centre, smoothed.precisionRoot, lesson);
  return { kind: 'learned', learned, verdict, retold };
}

export interface Fit {
  readonly known: Knowledge;
  readonly replay: Replay;
  readonly problem: Smoothing;
  /** Scores of the kit's numbers, then one of how full each spoon was. */
  readonly smoothed: Smoothed;
  readonly misfit: number;
  readonly verdict: Verdict;
}

/** The kit, and how full each spoon was, that tell a cook best. */
export function fitTo(told: CookTold, onRun?: LearningFrom['onRun']): Fit {
  const known = knownOf(told.prepared.kit);
  const replay = createReplay({ ...told, events: thinned(told.events) });
  const problem = problemOf(replay, known, onRun);
  const { smoothed, misfit } = fitted(problem);
  return { known, replay, problem, smoothed, misfit, verdict: judged(replay, smoothed, misfit, known.names.length) };
}

interface Windowed extends Smoothing {
  /** The same of so many observations, the first. */
  upTo(count: number): Smoothing;
}

/** The kit's scores come first; how full the spoons were follows. */
function problemOf(replay: Replay, known: Knowledge, onRun: LearningFrom['onRun']): Windowed {
  const kitCount = known.names.length;
  const count = kitCount + replay.spoonings;
  const { observed, sd } = replay;
  let runs = 0;
  const predict = (scores: Float64Array, upTo = observed.length) => {
    if (scores.some((score) => Math.abs(score) >= furthestScore)) return undefined;
    onRun?.(++runs);
    return replay.predict(valuesAt(known, scores), scores.subarray(kitCount).map(fillAt), upTo);
  };
  const upTo = (rows: number): Smoothing => ({
    count,
    predict: (scores) => predict(scores, rows),
    observed: observed.subarray(0, rows),
    sd: sd.subarray(0, rows),
  });
  return { ...upTo(observed.length), upTo };
}

/**
 * The log is taken in from its beginning, longer and longer, and each fit begins where the one before ended: over the whole of it at once a
 * fit can settle on a pan that boils where the real one did not, and never leave it (Pires, Vautard & Talagrand 1996, Tellus A 48:96).
 * A part that no kit tells ends it.
 */
function fitted(problem: Windowed): { readonly smoothed: Smoothed; readonly misfit: number } {
  let start: Float64Array = new Float64Array(problem.count);
  for (const share of windows) {
    const first = smooth({
      ...problem.upTo(Math.round(share * problem.observed.length)),
      start,
      mostSteps: windowSteps,
    });
    const misfit = misfitOf(first);
    if (misfit > mostMisfit) return { smoothed: first, misfit };
    start = first.centre;
  }
  const whole = smooth({ ...problem, start });
  const misfit = misfitOf(whole);
  if (misfit > mostMisfit) return { smoothed: whole, misfit };
  const counted = tempering * countedOnce(whole, misfit);
  const sd = Float64Array.from(problem.sd, (one) => one * Math.sqrt(counted));
  return { smoothed: smooth({ ...problem, sd, start: whole.centre, mostSteps: temperedSteps }), misfit };
}

/** How full a spoon is at a score, mean 1. Without a least fill, at which nothing more could be told from a score. */
export const fillAt = (score: number): number => Math.exp(spoonScatter * (score - spoonScatter / 2));

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

function retoldBy({ observations, observed }: Replay, before: Float64Array | undefined, after: Float64Array): Retold {
  const readings = observations.flatMap(({ observation }, i) => (observation.kind === 'reading' ? [i] : []));
  // A fit that ended early tells of the first part alone.
  const pick = (values: ArrayLike<number>) => Float64Array.from(readings, (i) => values[i] ?? Number.NaN);
  return {
    timeS: Float64Array.from(readings, (i) => observations[i].timeS),
    readC: pick(observed),
    beforeC: before ? pick(before) : new Float64Array(),
    afterC: pick(after),
  };
}
