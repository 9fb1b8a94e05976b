/** What each setting of a dial gives: several heating tests side by side, against a dial that goes evenly. */
import { requireRange } from '../../matter/range.ts';
import { chiSquareShare, type Estimate, estimateOf } from './estimate.ts';

export interface Setting {
  readonly notch: number;
  /** Heat that reaches the pan at it, W. */
  readonly powerW: Estimate;
}

export interface HeatCurve {
  /** Heat for each notch, W, on the straight line through nothing that fits best. */
  readonly perNotchW: Estimate;
  /** Each setting against that line: 1 lies on it. */
  readonly ratios: readonly { readonly notch: number; readonly ratio: Estimate }[];
  /** Mean square of what the line leaves, in the settings' own uncertainty, and what one even dial in twenty exceeds. */
  readonly misfit: number;
  readonly misfitLimit: number;
  /** False: settings between those tested must not be reckoned from one number. */
  readonly even: boolean;
}

/** @param settings at least 2, from separate tests */
export function heatCurve(settings: readonly Setting[]): HeatCurve {
  requireRange('number of settings', settings.length, 2, 50);
  const weight = ({ powerW }: Setting) => 1 / powerW.sd ** 2;
  const squares = settings.reduce((sum, one) => sum + weight(one) * one.notch ** 2, 0);
  const slope = settings.reduce((sum, one) => sum + weight(one) * one.notch * one.powerW.value, 0) / squares;
  const degrees = settings.length - 1;
  const misfit =
    settings.reduce((sum, one) => sum + weight(one) * (one.powerW.value - slope * one.notch) ** 2, 0) / degrees;
  const misfitLimit = chiSquareShare(1.6449, degrees);
  return {
    // A dial that is not even leaves more than the tests' own errors.
    perNotchW: estimateOf(slope, Math.sqrt(Math.max(1, misfit) / squares), degrees >= 2 ? degrees : undefined),
    ratios: settings.map(({ notch, powerW }) => ({
      notch,
      ratio: estimateOf(powerW.value / (slope * notch), powerW.sd / (slope * notch)),
    })),
    misfit,
    misfitLimit,
    even: misfit <= misfitLimit,
  };
}
