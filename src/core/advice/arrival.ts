/** When the pan gets to a temperature if nothing is done: as many times as pans of the twin are asked. */
import type { Step } from '../pan/steps.ts';
import type { Range } from '../twin/range.ts';
import type { Outlook } from './outlook.ts';
import { isApproaching, type Progress } from './progress.ts';

export interface Arrival {
  readonly toC: number;
  /** From now, s, the soonest first; `Infinity` for a pan that does not get there within the outlook. */
  readonly afterS: readonly number[];
  /** How far the outlook looks, s. */
  readonly withinS: number;
  /** The same as a range, by rank, s: `high` is `Infinity` if more than one in ten do not get there. */
  readonly range: Range;
}

/** What the step waits for, C: the end of a climb, or the lower edge of a hold that is not begun; none in a hold, or letting down. */
export function awaitedC(step: Step, progress: Progress): number | undefined {
  if (step.letDown || !isApproaching(progress, step)) return undefined;
  return 'reachedC' in step.end ? step.end.reachedC : step.bandC[0];
}

/** @param view of at least one pan; a pan that is there already arrives at once */
export function arrivalIn(view: Outlook, toC: number): Arrival {
  const { temperatureC, everyS } = view;
  const members = temperatureC[0].length;
  const afterS = Array.from({ length: members }, (_, m) => crossingS(view, m, toC)).sort((a, b) => a - b);
  const at = (share: number) => afterS[Math.ceil(share * members) - 1];
  return {
    toC,
    afterS,
    withinS: everyS * (temperatureC.length - 1),
    range: { low: at(0.1), mid: at(0.5), high: at(0.9) },
  };
}

function crossingS({ temperatureC, everyS }: Outlook, member: number, toC: number): number {
  const row = temperatureC.findIndex((each) => each[member] >= toC);
  if (row < 0) return Number.POSITIVE_INFINITY;
  if (row === 0) return 0;
  const [before, after] = [temperatureC[row - 1][member], temperatureC[row][member]];
  return everyS * (row - 1 + (toC - before) / (after - before));
}
