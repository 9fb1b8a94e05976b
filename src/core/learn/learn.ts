/**
 * Learning a kit from a finished cook: every uncertain number of kit and sugar, and how full each spoon was, are fitted to all that was
 * read and measured, from what was known before. A cook that can't be told by any kit that was likely is not learned from.
 */
import { type Learned, type Lesson } from '../pan/learned.ts';
import { chiSquareLimit, fixedBy, mostMisfit, type Verdict } from './judged.ts';
import { type Knowledge, knownAfter, knownOf, valuesAt } from './knowledge.ts';
import { type CookTold, createReplay, type Replay } from './replay.ts';
import { type Smoothed, smooth } from './smoother.ts';
import { thinned } from './thinned.ts';

/** Scatter of a single spoonful, as a share (common practice, no source), and the least that counts as one. */
const spoonScatter = 0.2;
const leastFill = 0.3;

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

export function fitted(replay: Replay, known: Knowledge): Fit {
  const kitCount = known.names.length;
  const problem = {
    count: kitCount + replay.spoonings,
    predict: (scores: Float64Array) =>
      replay.predict(valuesAt(known, scores), scores.subarray(kitCount).map(fillAt)),
    observed: replay.observed,
  };
  const first = smooth({ ...problem, sd: replay.sd });
  const misfit = misfitOf(first);
  const counted = countedOnce(first, misfit);
  const smoothed =
    counted > 1.5
      ? smooth({ ...problem, sd: replay.sd.map((sd) => sd * Math.sqrt(counted)), start: first.centre })
      : first;
  const shift = smoothed.centre.subarray(0, kitCount).reduce((sum, score) => sum + score * score, 0);
  const shiftLimit = chiSquareLimit(Math.max(3, fixedBy(smoothed)));
  const accepted = misfit <= mostMisfit && shift <= shiftLimit;
  return { smoothed, verdict: { accepted, misfit, readingsOffC: readingsOff(replay, smoothed), shift, shiftLimit, settled: smoothed.settled } };
}

const fillAt = (score: number): number => Math.max(leastFill, 1 + spoonScatter * score);

function misfitOf(fit: Smoothed): number {
  const { residuals } = fit;
  const free = Math.max(1, residuals.length - fixedBy(fit));
  return residuals.reduce((sum, value) => sum + value * value, 0) / free;
}

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

function readingsOff({ observations, sd }: Replay, { predicted }: Smoothed): number {
  const squares = observations.flatMap(({ observation }, k) =>
    observation.kind === 'reading' ? [(observation.valueC - predicted[k]) ** 2] : [],
  );
  return sd.length === 0 ? 0 : Math.sqrt(squares.reduce((sum, value) => sum + value, 0) / squares.length);
}
