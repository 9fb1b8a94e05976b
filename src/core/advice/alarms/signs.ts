/** What a cook's log, and the twin that follows it, say of how readings come in and who is at the stove. */
import type { CookState } from '../../log/fold.ts';
import { furthestApart } from '../../log/probesApart.ts';
import { readByHandEveryS } from '../advise.ts';
import type { Followed } from '../followed.ts';
import { readingDoubt } from './readingDoubt.ts';
import type { Signs } from './watch.ts';

/** A new thermometer is given this interval until it has shown its own (assumed), s. */
const firstEveryS = 10;
const longestEveryS = 60;
const gapsCounted = 10;
const readingsWatched = 3;

/** What only the device knows. */
export interface DeviceSigns {
  readonly freeBytes: number | null;
  readonly writeFailed: boolean;
}

export function signsOf(
  state: CookState,
  { beliefs }: Pick<Followed, 'beliefs'>,
  timeS: number,
  device: DeviceSigns,
): Signs {
  const received = state.believed.filter(({ body }) => body.valueC !== null);
  const last = received.at(-1);
  const byHand = last === undefined || last.body.quality === 'byHand';
  const fromProbe = received.filter(({ body }) => body.quality !== 'byHand').slice(-gapsCounted - 1);
  const touches = [...state.deeds, ...state.answers, ...state.remarks, ...state.measurements, ...state.seen];
  const handS = received.findLast(({ body }) => body.quality === 'byHand')?.timeS ?? 0;
  const read = beliefs.flatMap(({ timeS: readS, reading }) => (reading ? [{ readS, ...reading }] : []));
  return {
    timeS,
    receivedS: lastReadS(state),
    usedS: read.findLast(({ taken }) => taken.used)?.readS ?? 0,
    everyS: byHand ? readByHandEveryS : usualGapS(fromProbe.map((one) => one.timeS)),
    byHand,
    lastReadings: read
      .slice(-readingsWatched)
      .map(({ valueC, taken }) => ({ valueC, doubt: readingDoubt(taken, valueC) })),
    apartK: furthestApart(state.believed, timeS)?.byK ?? null,
    foam: foamRises(state),
    touchedS: touches.reduce((latest, one) => Math.max(latest, one.timeS), handS),
    ...device,
  };
}

/** When a number last came from a thermometer; the start, before one has. */
export function lastReadS({ believed }: CookState): number {
  return believed.findLast(({ body }) => body.valueC !== null)?.timeS ?? 0;
}

/** The cook has said that foam rises, and not yet that it is quiet. */
export function foamRises({ answers }: CookState): boolean {
  const said = answers.findLast((one) => one.kind === 'foam');
  return said?.kind === 'foam' && said.body.rising;
}

/** The middle one of the last gaps, so that a break in between does not count. */
function usualGapS(timesS: readonly number[]): number {
  const gaps = timesS.slice(1).map((s, i) => s - (timesS[i] ?? 0));
  if (gaps.length === 0) return firstEveryS;
  const middle = gaps.toSorted((a, b) => a - b)[gaps.length >> 1];
  return Math.min(longestEveryS, Math.max(1, middle));
}
