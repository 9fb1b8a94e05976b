/** How much cold water stops a cook when the pan is stood in it. */
import { syrupHeatCapacityJPerKgK } from '../../matter/heatCapacity.ts';
import { liquidHeatCapacityJPerKgK } from '../../matter/water.ts';

/** From here down nothing more browns while the sugar still pours (assumed). */
export const stoppedC = 125;
/** A bath warmer than this cools too slowly (assumed). */
const bathEndsC = 35;

export interface Cooled {
  readonly contentsKg: number;
  readonly solids: number;
  /** Heat capacity of the pan, J/K. */
  readonly panJPerK: number;
  readonly temperatureC: number;
}

/**
 * Water of a bath that takes pan and contents down to `stoppedC` and warms to 35 C itself, kg; none when they are cooler already.
 *
 * @param waterC as it comes from the tap, below 35 C
 */
export function coldBathKg({ contentsKg, solids, panJPerK, temperatureC }: Cooled, waterC: number): number {
  const fall = Math.max(0, temperatureC - stoppedC);
  const middleC = (temperatureC + stoppedC) / 2;
  const heatJ = fall * (contentsKg * syrupHeatCapacityJPerKgK(solids, middleC) + panJPerK);
  const rise = Math.max(1, bathEndsC - waterC);
  return heatJ / (rise * liquidHeatCapacityJPerKgK((waterC + bathEndsC) / 2));
}
