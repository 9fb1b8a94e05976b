/**
 * The one way into the logs: events are written, then acknowledged, then told to everybody who follows the cook, in the
 * order of their places in the store. While the storage fails they are held in memory and told as not written.
 */
import type { StorageState } from '../../api/cook.ts';
import { mostTogether } from '../../api/event.ts';
import type { EventOf, LogEvent, StampedEvent } from '../../core/log/event.ts';
import { beginCook, runningCooks, takeInCook } from '../store/cooks.ts';
import type { Appended, Incoming } from '../store/events.ts';
import { appendEvents } from '../store/events.ts';
import { storageFault } from '../store/storageFault.ts';
import type { Store } from '../store/store.ts';
import type { Backups } from './keepBackups.ts';
import { ownEvents } from './ownEvents.ts';
import { createRing, type RingLimits } from './ring.ts';
import type { SteadyClock } from './steadyClock.ts';

export type News =
  | { readonly kind: 'logged'; readonly event: StampedEvent }
  /** Not on the disk yet; comes again as `logged` when it is. */
  | { readonly kind: 'pending'; readonly event: LogEvent }
  | { readonly kind: 'storage'; readonly storage: StorageState }
  /** All that is kept was replaced: what was told before may be gone. */
  | { readonly kind: 'putBack' };

/** Thrown when events are held in memory because they could not be written. */
export class StorageFailing extends Error {
  override readonly name = 'StorageFailing';
}

export interface LogbookOptions {
  readonly store: Store;
  readonly clock: SteadyClock;
  readonly backups: Backups;
  readonly warn: (problem: unknown, message: string) => void;
  /** Time between two tries to write again, ms. */
  readonly retryMs?: number;
  readonly ring?: RingLimits;
}

export type Logbook = ReturnType<typeof createLogbook>;

export function createLogbook({ store, clock, backups, warn, retryMs = 5000, ring: limits }: LogbookOptions) {
  const { db } = store;
  const ring = createRing(limits);
  const make = ownEvents(clock);
  const followers = new Map<string, Set<(news: News) => void>>();
  let failure: string | null = null;
  let retry: NodeJS.Timeout | undefined;
  let turn: Promise<unknown> = Promise.resolve();

  /** One after the other, so that news goes out in the order of the places. */
  function inTurn<T>(work: () => Promise<T>): Promise<T> {
    const result = turn.then(work);
    turn = result.catch(() => {});
    return result;
  }

  function storage(): StorageState {
    const state = failure === null ? 'well' : 'failing';
    return { state, reason: failure, waiting: ring.size, dropped: ring.dropped };
  }

  function tell(cook: string, news: News) {
    for (const follower of followers.get(cook) ?? []) follower(news);
  }

  function tellStorage() {
    for (const cook of followers.keys()) tell(cook, { kind: 'storage', storage: storage() });
  }

  function tellStored(cook: string, appended: Appended): Appended {
    if (appended.outcome !== 'stored') return appended;
    if (!followers.has(cook)) return appended;
    for (const { event, seq, tServer, prevHash, hash } of appended.fresh) {
      tell(cook, { kind: 'logged', event: { ...event, seq, tServer, prevHash, hash } });
    }
    return appended;
  }

  function backUpAfter(appended: Appended): Appended {
    if (appended.outcome !== 'stored') return appended;
    const reason = ['begun', 'ended'].find((kind) => appended.fresh.some((event) => event.kind === kind));
    if (reason) backups.now(`cook-${reason}`);
    return appended;
  }

  function fail(reason: string) {
    failure = reason;
    tellStorage();
    clearTimeout(retry);
    retry = setTimeout(() => void inTurn(writeHeld), retryMs).unref();
  }

  function hold(cook: string, incoming: readonly Incoming[]): never {
    for (const event of ring.hold(incoming)) tell(cook, { kind: 'pending', event });
    throw new StorageFailing(
      `Not written yet: ${failure}. It is held in memory and will be tried again; send it again until it is acknowledged.`,
    );
  }

  /** Tries to write what was held, over a fresh connection. */
  async function writeHeld() {
    try {
      await store.reopen();
      while (ring.size > 0) {
        const incoming = ring.oldest(mostTogether);
        const { cook } = incoming[0].event;
        const appended = backUpAfter(tellStored(cook, await appendEvents(db, cook, incoming)));
        if (appended.outcome === 'differs')
          warn(incoming[appended.place].event, 'An event has the id of another and was given up');
        ring.release(appended.outcome === 'stored' ? incoming : [incoming[appended.place]]);
      }
      failure = null;
      tellStorage();
    } catch (error) {
      warn(error, 'The store can still not be written');
      fail(storageFault(error) ?? 'it can not be written');
    }
  }

  /** @throws whatever `write` throws, after noting a storage that fails */
  async function written(cook: string, write: () => Promise<Appended>): Promise<Appended> {
    try {
      return tellStored(cook, await write());
    } catch (error) {
      const reason = storageFault(error);
      if (reason !== undefined) {
        warn(error, 'The store can not be written');
        fail(reason);
      }
      throw error;
    }
  }

  return {
    storage,
    make,
    now: () => clock.now(),

    begin(begun: EventOf<'begun'>): Promise<Appended> {
      return inTurn(async () => backUpAfter(await written(begun.cook, () => beginCook(db, begun, clock.now()))));
    },

    /** @throws StorageFailing when the events are held in memory instead */
    append(cook: string, events: readonly LogEvent[]): Promise<Appended> {
      const tServer = clock.now();
      const incoming = events.map((event) => ({ event, tServer }));
      return inTurn(async () => {
        if (failure !== null) hold(cook, incoming);
        try {
          return backUpAfter(await written(cook, () => appendEvents(db, cook, incoming)));
        } catch (error) {
          if (failure === null) throw error;
          return hold(cook, incoming);
        }
      });
    },

    takeIn(begun: EventOf<'begun'>, incoming: readonly Incoming[]): Promise<Appended> {
      return inTurn(async () => {
        const appended = await written(begun.cook, () => takeInCook(db, begun, incoming));
        if (appended.outcome === 'stored' && appended.fresh.length > 0) backups.soon();
        return appended;
      });
    },

    /**
     * Lets all that is kept be replaced while nothing is written to a log.
     *
     * @throws StorageFailing while events are held in memory, which would be lost
     */
    replace<T>(work: () => Promise<T>): Promise<T> {
      return inTurn(async () => {
        if (failure !== null) throw new StorageFailing(`Nothing was replaced: ${failure}.`);
        const done = await work();
        for (const cook of followers.keys()) tell(cook, { kind: 'putBack' });
        return done;
      });
    },

    /** Tells all news of a cook from now on, until the function returned is called. */
    follow(cook: string, follower: (news: News) => void): () => void {
      const all = followers.get(cook) ?? new Set();
      followers.set(cook, all.add(follower));
      return () => {
        all.delete(follower);
        if (all.size === 0) followers.delete(cook);
      };
    },

    /** Notes jumps of the system's clock in the logs of the cooks that are running. */
    async noteClockJumps() {
      for (const jump of clock.jumps()) {
        for (const { id } of await runningCooks(db)) await this.append(id, [make(id, 'clock', jump)]);
      }
    },

    async stop() {
      clearTimeout(retry);
      await turn;
      if (ring.size > 0) await writeHeld();
      clearTimeout(retry);
    },
  };
}
