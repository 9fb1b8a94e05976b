/** A check's result joined to what is known of a kit: some numbers are told, and those that go with them move along. */
import { requireRange } from '../matter/range.ts';
import { cholesky, solveLower, solveTransposed } from '../pan/cholesky.ts';
import type { Kit } from '../pan/kit.ts';
import type { Learned, Lesson } from '../pan/learned.ts';
import { modelParameters } from '../pan/model.ts';
import type { ModelParameter } from '../pan/physics.ts';
import { knownAfter, knownOf, widening } from './knowledge.ts';

/**
 * What an experiment alone says of some numbers, without what was known before, as a Gaussian in its information form (Maybeck 1979,
 * Stochastic Models, Estimation and Control 1, 5.7): it adds to what is known. In standard scores as stated for any kit.
 */
export interface Told {
  readonly names: readonly ModelParameter[];
  readonly information: readonly (readonly number[])[];
  /** Information times the scores that fit best. */
  readonly pull: readonly number[];
}

/**
 * One number as it was measured.
 *
 * @param measured value and standard uncertainty, in the parameter's unit
 */
export function toldOf(
  kit: Kit,
  name: ModelParameter,
  measured: { readonly value: number; readonly sd: number },
): Told {
  const { centre, sd, spread } = modelParameters({ ...kit, learned: undefined })[name];
  requireRange('standard uncertainty', measured.sd, Number.MIN_VALUE, Number.MAX_VALUE);
  const logarithmic = spread === 'lognormal';
  if (logarithmic) requireRange(name, measured.value, Number.MIN_VALUE, Number.MAX_VALUE);
  const score = logarithmic ? Math.log(measured.value / centre) / sd : (measured.value - centre) / sd;
  const information = (sd / (logarithmic ? measured.sd / measured.value : measured.sd)) ** 2;
  return { names: [name], information: [[information]], pull: [information * score] };
}

/** @returns what is known of the kit with it: exact for numbers that are Gaussian in their scores */
export function taughtBy(kit: Kit, { names, information, pull }: Told, lesson: Omit<Lesson, 'misfit'>): Learned {
  const known = knownOf(kit);
  const n = known.names.length;
  const places = names.map((name) => known.names.indexOf(name));
  // How the told scores move with each independent one.
  const ways = places.map((row) => known.root.subarray(row * n, row * n + n).map((part) => widening * part));
  const surprise = pull.map((one, i) =>
    places.reduce((left, place, j) => left - information[i][j] * known.centre[place], one),
  );
  const precision = new Float64Array(n * n);
  const drawn = new Float64Array(n);
  for (let a = 0; a < n; a++) {
    precision[a * n + a] = 1;
    names.forEach((_, i) => {
      drawn[a] += ways[i][a] * surprise[i];
      for (let b = 0; b <= a; b++) {
        names.forEach((__, j) => {
          precision[a * n + b] += ways[i][a] * information[i][j] * ways[j][b];
        });
      }
    });
  }
  const root = cholesky(precision, n);
  const independent = solveTransposed(root, solveLower(root, drawn));
  // How far what was known moved, in its own spread, squared, for each number told: 1 or less when the two agree as they should.
  const misfit = independent.reduce((sum, score) => sum + score * score, 0) / names.length;
  return knownAfter(known, independent, root, { ...lesson, misfit });
}
