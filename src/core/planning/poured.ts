/** What of a pan's contents ends up as finished sugar. */
import { contentsKg } from '../pan/state.ts';

/** Share of the pour that stays in the pan and on the spoon (assumed). */
const stuckShare = 0.03;

/** Sugar out of a pan in this state, kg. */
export function pouredKg(y: Float64Array): number {
  return contentsKg(y) * (1 - stuckShare);
}
