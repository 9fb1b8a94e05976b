/** How much water a spoon really brings, and how much single spoonfuls differ. */

import { requireRange } from '../../matter/range.ts';
import { chiSquareShare, type Estimate, estimateOf, meanOf } from './estimate.ts';

export interface Spoons {
  /** Mean spoonful, kg. */
  readonly meanKg: Estimate;
  /** Standard deviation of single spoonfuls as a share of the mean; the range by chi-squared, so not even. */
  readonly scatter: { readonly value: number; readonly low: number; readonly high: number };
  /** Mean against what the spoon should hold. */
  readonly factor: Estimate;
}

/** Error of a kitchen scale that shows 0.1 g (assumed), kg. */
const scaleKg = 1e-4;

/**
 * @param spoonfulsKg water of each spoonful, at least 5, weighed one by one
 * @param spoonM3 what the spoon should hold
 */
export function spoonWeighing(spoonfulsKg: readonly number[], spoonM3: number): Spoons {
  requireRange('number of spoonfuls', spoonfulsKg.length, 5, 1000);
  const { mean, scatter } = meanOf(spoonfulsKg);
  const n = spoonfulsKg.length;
  // The weighing's own error is part of what scatters; the mean suffers from the scale's fixed error as well.
  const sd = Math.hypot(scatter / Math.sqrt(n), scaleKg / 2);
  const single = Math.sqrt(Math.max(0, scatter ** 2 - 2 * scaleKg ** 2)) / mean;
  const nominalKg = spoonM3 * 1000;
  return {
    meanKg: estimateOf(mean, sd, n - 1),
    scatter: {
      value: single,
      low: single / Math.sqrt(chiSquareShare(1.2816, n - 1)),
      high: single / Math.sqrt(chiSquareShare(-1.2816, n - 1)),
    },
    factor: estimateOf(mean / nominalKg, sd / nominalKg, n - 1),
  };
}
