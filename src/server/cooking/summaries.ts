/** Makes the summaries that are due, one cook after the other, in slices so short that whoever asks the server something hardly waits. */
import { setImmediate } from 'node:timers/promises';
import type { Kysely } from 'kysely';
import type { CookRecord } from '../../api/cook.ts';
import { following } from '../../core/book/following.ts';
import { type Summary, summaryOf } from '../../core/book/summary.ts';
import type { LogEvent, Stamp } from '../../core/log/event.ts';
import { foldCook } from '../../core/log/fold.ts';
import { readEvents } from '../store/events.ts';
import { keepSummary, listBook } from '../store/summaries.ts';
import type { Tables } from '../store/tables.ts';

export interface Summaries {
  /** Makes what is due; returns at once. */
  wake(): void;
  /** Ends what is being made. */
  stop(): Promise<void>;
}

export interface SummariesOptions {
  readonly db: Kysely<Tables>;
  readonly now: () => string;
  readonly warn: (problem: unknown, message: string) => void;
}

/** As many as are looked through for what is due: more than a kitchen cooks in years. */
const mostCooks = 10_000;
/** Events that are read at once: some ten milliseconds. */
const inOneTurn = 500;

export function keepSummaries({ db, now, warn }: SummariesOptions): Summaries {
  let stopped = false;
  let work: Promise<void> | undefined;

  async function makeDue(): Promise<void> {
    for (const { cook, due } of await listBook(db, now(), mostCooks)) {
      if (!due) continue;
      const summary = await summaryOfCook(cook);
      if (stopped) return;
      await keepSummary(db, cook.id, cook.lastSeq, summary);
    }
  }

  /** Null for a log that can't be gone through; that is kept, too, and tried again when something is added to the log. */
  async function summaryOfCook({ id, lastSeq }: CookRecord): Promise<Summary | null> {
    try {
      return (await summarised(await eventsInTurns(id, lastSeq), () => stopped)) ?? null;
    } catch (error) {
      warn(error, `Cook ${id} could not be summed up`);
      return null;
    }
  }

  /** A long log takes a quarter of a second to be read: others are answered in between. */
  async function eventsInTurns(id: string, lastSeq: number): Promise<LogEvent[]> {
    const all: LogEvent[] = [];
    for (let since = 0; since < lastSeq && !stopped; ) {
      const { events, damaged } = await readEvents(db, id, since, inOneTurn);
      all.push(...events);
      since = Math.max(0, events.at(-1)?.seq ?? 0, ...damaged) || lastSeq;
      await setImmediate();
    }
    return all;
  }

  return {
    wake() {
      if (stopped) return;
      work ??= makeDue()
        .catch((error) => warn(error, 'Summaries of cooks were not made'))
        .finally(() => {
          work = undefined;
        });
    },
    async stop() {
      stopped = true;
      await work;
    },
  };
}

async function summarised(
  events: readonly (LogEvent & Partial<Stamp>)[],
  stopped: () => boolean,
): Promise<Summary | undefined> {
  const state = foldCook(events);
  await setImmediate();
  const run = following(state);
  for (;;) {
    const { done, value } = run.next();
    if (done) return value && summaryOf(state, value);
    if (stopped()) return undefined;
    await setImmediate();
  }
}
