/** What is known of a kit's numbers, as a start for learning and as its result: scores that are independent, and their way to values. */
import { cholesky, solveLower, timesLower } from '../pan/cholesky.ts';
import type { Kit } from '../pan/kit.ts';
import type { Learned, Lesson } from '../pan/learned.ts';
import { modelParameters } from '../pan/model.ts';
import type { ModelParameter, ModelValues } from '../pan/physics.ts';
import { type Parameters, valueAt } from '../reactions/parameter.ts';

/** Real kits lie this much further out than is stated of them, as the twin takes it, too. */
export const widening = 1.25;

export interface Knowledge {
  readonly names: readonly ModelParameter[];
  /** As stated for any kit: scores count from these. */
  readonly stated: Parameters<ModelParameter>;
  readonly centre: Float64Array;
  /** Lower square root of the scores' covariance, without the widening. */
  readonly root: Float64Array;
  readonly lessons: readonly Lesson[];
}

export function knownOf(kit: Kit): Knowledge {
  const { learned, ...plain } = kit;
  const stated = modelParameters(plain);
  const names = Object.keys(stated) as ModelParameter[];
  const n = names.length;
  const centre = new Float64Array(n);
  const covariance = new Float64Array(n * n);
  for (let i = 0; i < n; i++) covariance[i * n + i] = 1;
  const rows = learned?.names.map((name) => names.indexOf(name)) ?? [];
  rows.forEach((row, i) => {
    centre[row] = learned?.centre[i] ?? 0;
    rows.forEach((column, j) => {
      covariance[row * n + column] = learned?.covariance[i][j] ?? 0;
    });
  });
  return { names, stated, centre, root: cholesky(covariance, n), lessons: learned?.lessons ?? [] };
}

/** Values at independent scores, of which more may follow that are not the kit's. */
export function valuesAt(known: Knowledge, independent: Float64Array): ModelValues {
  const { names, stated } = known;
  const scores = scoresAt(known, independent);
  return Object.fromEntries(names.map((name, i) => [name, valueAt(stated[name], scores[i])])) as ModelValues;
}

function scoresAt({ names, centre, root }: Knowledge, independent: Float64Array): Float64Array {
  const off = timesLower(root, independent.subarray(0, names.length));
  return centre.map((score, i) => score + widening * off[i]);
}

/**
 * What is known after a fit.
 *
 * @param independent the fitted scores: the kit's, then others
 * @param precisionRoot lower square root of their precision
 */
export function knownAfter(
  known: Knowledge,
  independent: Float64Array,
  precisionRoot: Float64Array,
  lesson: Lesson,
): Learned {
  const { names, root } = known;
  const n = names.length;
  const all = independent.length;
  // Columns of L^-1 for the kit's scores: the others are left uncertain as they are.
  const inverse = names.map((_, i) => {
    const unit = new Float64Array(all);
    unit[i] = 1;
    return solveLower(precisionRoot, unit);
  });
  const spreads = Array.from({ length: all }, (_, k) =>
    timesLower(
      root,
      Float64Array.from(names, (_, i) => inverse[i][k]),
    ),
  );
  const covariance = names.map((_, i) =>
    Array.from({ length: n }, (_, j) => spreads.reduce((sum, spread) => sum + spread[i] * spread[j], 0)),
  );
  return { names, centre: [...scoresAt(known, independent)], covariance, lessons: [...known.lessons, lesson] };
}
