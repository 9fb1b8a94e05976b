/**
 * One observation corrects the ensemble: the serial ensemble square-root filter (Whitaker & Hamill 2002, Mon. Weather Rev. 130:1913),
 * limited to named groups of variables and to correlations that the sample supports, with the spread relaxed towards what it was before (Whitaker & Hamill 2012, Mon. Weather
 * Rev. 140:3078) by shares that were chosen by measured coverage (bench/results/twin.md).
 */

export interface Correction {
  /** Members x coordinates, row by row; changed in place. */
  readonly ensemble: Float64Array;
  readonly coordinates: number;
  /** What each member expects to be observed. */
  readonly expected: Float64Array;
  readonly observed: number;
  /** Variance of the observation's error. */
  readonly variance: number;
  /** For each coordinate: may this observation correct it (0 or 1)? */
  readonly reach: Float64Array;
  /** Share of the lost spread that is given back, 0 to 1. */
  readonly relaxation: number;
}

/** Sum of squares below which a coordinate has no spread. */
const leastSpread = 1e-200;

export function meanAndVariance(values: Float64Array): { mean: number; variance: number } {
  let mean = 0;
  for (const value of values) mean += value;
  mean /= values.length;
  let sum = 0;
  for (const value of values) sum += (value - mean) ** 2;
  return { mean, variance: sum / (values.length - 1) };
}

/**
 * How far a sample covariance is to be believed: r^2 / (r^2 + (1 + r^2) / N), which drops correlations that a sample of this size
 * shows by chance (Furrer & Bengtsson 2007, J. Multivariate Anal. 98:227).
 */
function trust(covariance: number, sumA: number, sumB: number, members: number): number {
  const r2 = (covariance / Math.sqrt(sumA) / Math.sqrt(sumB)) ** 2;
  return r2 / (r2 + (1 + r2) / members);
}

/** Applies one observation. With no spread in what is expected nothing changes. */
export function assimilate(c: Correction): void {
  const { ensemble, coordinates, expected, observed, variance, reach, relaxation } = c;
  const members = expected.length;
  const { mean, variance: spread } = meanAndVariance(expected);
  if (!(spread > 0)) return;
  const total = spread + variance;
  const innovation = observed - mean;
  // Factor that shrinks deviations so that their variance is right without perturbing the observation.
  const shrink = 1 / (1 + Math.sqrt(variance / total));
  for (let j = 0; j < coordinates; j++) {
    if (reach[j] === 0) continue;
    let average = 0;
    for (let i = 0; i < members; i++) average += ensemble[i * coordinates + j];
    average /= members;
    let covariance = 0;
    let before = 0;
    for (let i = 0; i < members; i++) {
      const deviation = ensemble[i * coordinates + j] - average;
      covariance += deviation * (expected[i] - mean);
      before += deviation * deviation;
    }
    // A ring that was turned off hours ago gives next to no watts: so little can't be told from none, and would underflow.
    if (before < leastSpread) continue;
    const gain = (trust(covariance, before, spread * (members - 1), members) * covariance) / (members - 1) / total;
    let after = 0;
    for (let i = 0; i < members; i++) {
      const deviation = ensemble[i * coordinates + j] - average - shrink * gain * (expected[i] - mean);
      after += deviation * deviation;
      ensemble[i * coordinates + j] = deviation;
    }
    const widen = after > 0 ? 1 + relaxation * (Math.sqrt(before / after) - 1) : 1;
    const centre = average + gain * innovation;
    for (let i = 0; i < members; i++) {
      const at = i * coordinates + j;
      ensemble[at] = centre + widen * ensemble[at];
    }
  }
}
