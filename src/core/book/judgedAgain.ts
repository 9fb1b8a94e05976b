/** Alarms of a cook, judged again from its log; and of a rehearsal the surprises that were drawn for it, as they came. */
import type { AlarmChange } from '../advice/alarms/engine.ts';
import { createLiveCook } from '../advice/liveCook.ts';
import { type RevealedSurprise, revealedSurprise } from '../advice/reveal.ts';
import { createSurprises, drawSurprises } from '../advice/surprises.ts';
import type { KnownEvent, LogEvent } from '../log/event.ts';
import type { CookState } from '../log/fold.ts';
import { inOrder } from '../log/order.ts';
import { upToDate } from '../log/upgrade.ts';
import { prepareKit } from '../pan/preparedKit.ts';
import { doingsOf } from './doings.ts';

export interface Judged {
  readonly history: readonly AlarmChange[];
  /** Undefined where there were to be none. Their times are those of a twin with other members: within half a minute or so. */
  readonly surprises: readonly RevealedSurprise[] | undefined;
}

/** A look each so often, s; a log with a reading a second is thinned to it first. A rehearsal reads as often. */
const everyS = 10;

/** @param onPart told how far the work is, 0 to 1 */
export function judgedAgain(
  state: CookState,
  events: readonly LogEvent[],
  members: number,
  onPart: (done: number) => void = () => {},
): Judged {
  const { begun, startMs } = state;
  if (!begun || startMs === null) return { history: [], surprises: undefined };
  const { kit, steps, amounts, rehearsal } = begun.body;
  const cook = createLiveCook({ prepared: prepareKit(kit), charge: amounts.charge, steps, members });
  const surprises = rehearsal?.surprises
    ? createSurprises(drawSurprises(rehearsal.seed, steps), {
        steps,
        roomC: kit.roomC,
        progress: () => cook.followed.progress,
      })
    : undefined;
  const { endS } = doingsOf(state);
  const ordered = thinned(events);
  let heard = 0;
  let timeS = everyS;
  for (; timeS <= endS; timeS += everyS) {
    // What the thermometer showed is not in the log; whether a fault is due does not depend on it.
    surprises?.sends(Number.NaN, timeS);
    const before = heard;
    for (; heard < ordered.length && ordered[heard].trueMs <= startMs + 1000 * timeS; heard++) {
      const event = upToDate(ordered[heard].event) as KnownEvent | undefined;
      if (event) surprises?.hear(event.kind, event.body, (ordered[heard].trueMs - startMs) / 1000);
    }
    if (heard > before) cook.hear(ordered.slice(0, heard).map(({ event }) => event));
    cook.moveTo(timeS);
    onPart(timeS / endS);
  }
  const { history } = cook.alarms;
  return { history, surprises: surprises?.came.map((surprise) => revealedSurprise(surprise, history, timeS)) };
}

/** In true order; of readings that crowd each other the first. */
function thinned(events: readonly LogEvent[]) {
  let lastMs = Number.NEGATIVE_INFINITY;
  return inOrder(events).filter(({ event, trueMs }) => {
    if (event.kind !== 'reading') return true;
    if (trueMs - lastMs < 900 * everyS) return false;
    lastMs = trueMs;
    return true;
  });
}
