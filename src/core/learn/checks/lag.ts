/** How fast a thermometer follows: plunged from one temperature into another, it goes there exponentially. */
import { requireRange } from '../../matter/range.ts';
import { smooth } from '../smoother.ts';
import { type Estimate, estimateOf } from './estimate.ts';

export interface Sample {
  readonly timeS: number;
  readonly valueC: number;
}

export interface LagCheck {
  readonly lagS: Estimate;
  /** What the readings are off the fitted curve, root mean square, C. */
  readonly offC: number;
}

/** Before a check a lag of 1 to 40 s is as good as any other: median, s, and standard deviation of the logarithm. */
const usualLagS = 6;
const lnLagSd = 1;
/** Ends of the curve are where the first and the last readings lie, to within this, C; the plunge was when it was said, s. */
const endSd = 3;
const plungeSd = 0.5;
/** Scatter of the readings, C, unless they show more. */
const noiseC = 0.2;

/**
 * First-order lag by least squares.
 *
 * @param samples readings after the plunge at time 0, at least 6, over some lags
 * @param fromC what it showed before
 */
export function lagCheck(samples: readonly Sample[], fromC: number): LagCheck {
  requireRange('number of readings', samples.length, 6, 10_000);
  const lastC = samples[samples.length - 1].valueC;
  requireRange('change of temperature (K)', Math.abs(lastC - fromC), 10, 300);
  const curve = ([lag, from, to, plunge]: Float64Array): Float64Array => {
    const startC = fromC + endSd * from;
    const endC = lastC + endSd * to;
    const lagS = usualLagS * Math.exp(lnLagSd * lag);
    return Float64Array.from(samples, ({ timeS }) => {
      const since = Math.max(0, timeS - plungeSd * plunge);
      return endC - (endC - startC) * Math.exp(-since / lagS);
    });
  };
  const observed = samples.map(({ valueC }) => valueC);
  const fitted = (sd: number) => smooth({ count: 4, predict: curve, observed, sd: observed.map(() => sd) });
  const first = fitted(noiseC);
  const free = Math.max(1, samples.length - 3);
  const offC = noiseC * Math.sqrt(first.residuals.reduce((sum, r) => sum + r * r, 0) / free);
  const { centre, precisionRoot } = offC > noiseC ? fitted(offC) : first;
  const lagS = usualLagS * Math.exp(lnLagSd * centre[0]);
  return { lagS: estimateOf(lagS, lagS * lnLagSd * spreadOfFirst(precisionRoot), free), offC };
}

/** Standard deviation of the first of four scores. */
function spreadOfFirst(lower: Float64Array): number {
  const column = [1, 0, 0, 0];
  for (let i = 0; i < 4; i++) {
    for (let k = 0; k < i; k++) column[i] -= lower[i * 4 + k] * column[k];
    column[i] /= lower[i * 4 + i];
  }
  return Math.hypot(...column);
}
