/**
 * Partial pooling: of groups whose means are each known with some error, how far they differ, and what each is likely to be when it may
 * lean on the others. The hierarchical normal model of Gelman, Carlin, Stern, Dunson, Vehtari & Rubin 2013, Bayesian Data Analysis
 * (3rd ed.), section 5.4, eq. 5.17, 5.20 and 5.21, with a flat prior on the common mean (seen in a transcription).
 */

/** A group's mean as measured, and the variance of its error, above 0. */
export interface GroupMean {
  readonly mean: number;
  readonly variance: number;
}

export interface Pooling {
  /** Standard deviation between the groups, above 0. */
  readonly between: number;
  /** Of all groups. */
  readonly commonMean: number;
  readonly commonVariance: number;
  /** Logarithm of the density of `between` without its prior; a constant is left out. */
  readonly logLikelihood: number;
}

/** What a standard deviation between the groups would mean for the common mean, and how well it goes with what was measured. */
export function poolingAt(groups: readonly GroupMean[], between: number): Pooling {
  const spread = between ** 2;
  let precision = 0;
  let sum = 0;
  for (const { mean, variance } of groups) {
    precision += 1 / (variance + spread);
    sum += mean / (variance + spread);
  }
  const commonMean = sum / precision;
  let logLikelihood = -0.5 * Math.log(precision);
  for (const { mean, variance } of groups) {
    const each = variance + spread;
    logLikelihood -= 0.5 * (Math.log(each) + (mean - commonMean) ** 2 / each);
  }
  return { between, commonMean, commonVariance: 1 / precision, logLikelihood };
}

/** One draw of all groups' true means. @param normal a source of standard normal numbers; 1 and one for each group are taken */
export function drawnMeans(groups: readonly GroupMean[], pooling: Pooling, normal: () => number): Float64Array {
  const common = pooling.commonMean + Math.sqrt(pooling.commonVariance) * normal();
  const spread = pooling.between ** 2;
  return Float64Array.from(groups, ({ mean, variance }) => {
    const precision = 1 / variance + 1 / spread;
    return (mean / variance + common / spread) / precision + normal() / Math.sqrt(precision);
  });
}

/**
 * Which of some weighted things each of `count` draws takes, evenly spread, so that no chance is added.
 *
 * @param weights 0 or more, not all 0
 */
export function evenlyDrawn(weights: ArrayLike<number>, count: number): Int32Array {
  let total = 0;
  for (let i = 0; i < weights.length; i++) total += weights[i];
  const taken = new Int32Array(count);
  let at = 0;
  let upTo = weights[0];
  for (let draw = 0; draw < count; draw++) {
    const mark = (total * (draw + 0.5)) / count;
    while (upTo < mark && at < weights.length - 1) upTo += weights[++at];
    taken[draw] = at;
  }
  return taken;
}
