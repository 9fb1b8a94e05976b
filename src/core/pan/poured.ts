/** What of a pan's contents ends up as finished sugar. */
import { contentsKg } from './state.ts';

/** Share of the contents that stays on pan and spoon (assumed): it lies evenly between these. */
export const stuckShare = { least: 0.015, most: 0.045 };
const middle = (stuckShare.least + stuckShare.most) / 2;
/** Standard deviation of that share. */
export const stuckSd = (stuckShare.most - stuckShare.least) / Math.sqrt(12);

/**
 * Sugar out of a pan in this state, kg.
 *
 * @param stuck share of the contents that stays in the pan
 */
export function pouredKg(y: Float64Array, stuck = middle): number {
  return contentsKg(y) * (1 - stuck);
}
