/** Makes the summaries that are due, one cook after the other, in slices so short that whoever asks the server something hardly waits. */
import type { Kysely } from 'kysely';
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

export function keepSummaries({ db, now, warn }: SummariesOptions): Summaries {
  let stopped = false;
  let work: Promise<void> | undefined;

  async function makeDue(): Promise<void> {
    for (const { cook, due } of await listBook(db, now(), mostCooks)) {
      if (!due) continue;
      const summary = await summaryOfCook(cook.id);
      if (stopped) return;
      await keepSummary(db, cook.id, cook.lastSeq, summary);
    }
  }

  /** Null for a log that can't be gone through; that is kept, too, and tried again when something is added to the log. */
  async function summaryOfCook(id: string): Promise<Summary | null> {
    try {
      const { events } = await readEvents(db, id);
      return (await summarised(events, () => stopped)) ?? null;
    } catch (error) {
      warn(error, `Cook ${id} could not be summed up`);
      return null;
    }
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
  const run = following(state);
  for (;;) {
    const { done, value } = run.next();
    if (done) return value && summaryOf(state, value);
    if (stopped()) return undefined;
    await new Promise((resolve) => setImmediate(resolve));
  }
}
