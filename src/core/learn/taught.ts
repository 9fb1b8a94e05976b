/** A check's result joined to what is known of a kit: one number is told, and those that go with it move along. */
import { requireRange } from '../matter/range.ts';
import type { Kit } from '../pan/kit.ts';
import type { Learned } from '../pan/learned.ts';
import type { ModelParameter } from '../pan/physics.ts';
import { knownOf, widening } from './knowledge.ts';

/**
 * One observation of a Gaussian (Kalman 1960): exact for a normal number; of a lognormal one the logarithm is taken.
 *
 * @param check its name, kept with what was learned
 * @param measured value and standard uncertainty, in the parameter's unit
 */
export function taughtBy(
  check: string,
  kit: Kit,
  name: ModelParameter,
  measured: { readonly value: number; readonly sd: number },
): Learned {
  const { names, stated, centre, root, lessons } = knownOf(kit);
  const n = names.length;
  const at = names.indexOf(name);
  const { centre: usual, sd, spread } = stated[name];
  requireRange('standard uncertainty', measured.sd, Number.MIN_VALUE, Number.MAX_VALUE);
  const logarithmic = spread === 'lognormal';
  if (logarithmic) requireRange(name, measured.value, Number.MIN_VALUE, Number.MAX_VALUE);
  const score = logarithmic ? Math.log(measured.value / usual) / sd : (measured.value - usual) / sd;
  const scoreSd = (logarithmic ? measured.sd / measured.value : measured.sd) / sd / widening;
  const covariance = names.map((_, i) =>
    names.map((__, j) => {
      let sum = 0;
      for (let k = 0; k <= Math.min(i, j); k++) sum += root[i * n + k] * root[j * n + k];
      return sum;
    }),
  );
  const total = covariance[at][at] + scoreSd ** 2;
  const surprise = score - centre[at];
  return {
    names,
    centre: names.map((_, i) => centre[i] + (covariance[i][at] / total) * surprise),
    covariance: covariance.map((row, i) =>
      row.map((value, j) => value - (covariance[i][at] * covariance[at][j]) / total),
    ),
    lessons: [
      ...lessons,
      { kind: 'check', name: check, observations: 1, misfit: surprise ** 2 / (widening ** 2 * total) },
    ],
  };
}
