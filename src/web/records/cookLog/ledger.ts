/** A cook's events in the page and in the browser's storage, kept in step. */
import type { Begun } from '../../../core/log/bodies.ts';
import type { LogEvent, StampedEvent } from '../../../core/log/event.ts';
import { foldCook } from '../../../core/log/fold.ts';
import type { CookStore, EventDraft } from './cookStore.ts';
import {
  fromServer,
  type HeldEvent,
  notWrittenYet,
  type Receipt,
  receipted,
  refusedWith,
  toSendAgain,
} from './heldEvent.ts';
import { type KnownEvents, knownEvents } from './knownEvents.ts';

export interface Ledger {
  readonly known: Omit<KnownEvents, 'take' | 'put'>;
  begun(): HeldEvent | undefined;
  /** Whether an end was written, corrected since or not. */
  isOver(): boolean;
  /** Place up to which all events of the server are here. */
  lastSeq(): number;
  /** Writes new events of this device, then shows them; returns them as they are held. */
  append(drafts: readonly EventDraft[]): Promise<HeldEvent[]>;
  /** Events of the server, up to a place; all of them since the place before. */
  came(events: readonly StampedEvent[], lastSeq: number): Promise<void>;
  pending(event: LogEvent): void;
  /** What another tab of this device told. */
  heard(held: readonly HeldEvent[]): void;
  acknowledged(receipts: readonly Receipt[]): Promise<HeldEvent[]>;
  refused(event: LogEvent, words: string): Promise<HeldEvent[]>;
  /** The server does not know the cook (any more): what it was sent has to go there again. */
  serverLost(): Promise<void>;
  /** These are all events that the server has: what else it was sent has to go there again. */
  serverPutBack(events: readonly StampedEvent[], lastSeq: number): Promise<void>;
  /** What other tabs have written. */
  reload(): Promise<void>;
}

/** @param changed called after every change of what is known */
export async function ledger(cook: string, store: CookStore, changed: () => void): Promise<Ledger> {
  const kept = await store.read(cook);
  const known = knownEvents(kept.held);
  let { lastSeq } = kept;

  const begun = () => known.all().find(({ event }) => event.kind === 'begun');
  const show = (held: readonly HeldEvent[]) => {
    const fresh = known.take(held);
    if (fresh.length > 0) changed();
    return fresh;
  };

  /** Shows events as they stand now, whatever was known of them, and writes that. */
  async function restate(held: readonly HeldEvent[], reached: number) {
    lastSeq = reached;
    known.put(held);
    changed();
    await store.put(held);
    await store.take(cook, [], reached);
    await noteCook(held);
  }

  async function settle(held: readonly HeldEvent[]) {
    const fresh = show(held);
    await store.put(fresh);
    return fresh;
  }

  /** Keeps the line in the list of cooks in step with the log. */
  async function noteCook(fresh: readonly HeldEvent[]) {
    if (!fresh.some(({ event }) => ['begun', 'ended', 'correction'].includes(event.kind))) return;
    const beginning = begun()?.event;
    if (!beginning) return;
    const { mode, request } = beginning.body as Begun;
    const { name } = request as { readonly name: string };
    const ended = foldCook(known.shown()).ended?.body.how ?? null;
    await store.noteCook({ id: cook, name, mode, beganAt: beginning.tDevice, ended });
  }

  const sent = () => known.all().filter(({ mine, sending }) => mine && sending === 'done');

  return {
    known,
    begun,
    isOver: () => known.all().some(({ event }) => event.kind === 'ended'),
    lastSeq: () => lastSeq,
    async append(drafts) {
      const held = await store.append(drafts);
      show(held);
      await noteCook(held);
      return held;
    },
    async came(events, reached) {
      const fresh = show(events.map(fromServer));
      lastSeq = Math.max(lastSeq, reached);
      await store.take(cook, fresh, lastSeq);
      await noteCook(fresh);
    },
    pending: (event) => void show([notWrittenYet(event)]),
    heard: (held) => void show(held),
    acknowledged: (receipts) =>
      settle(
        receipts.flatMap((receipt) => {
          const held = known.get(receipt.id);
          return held ? [receipted(held, receipt)] : [];
        }),
      ),
    async refused({ id }, words) {
      const held = known.get(id);
      return held ? settle([refusedWith(held, words)]) : [];
    },
    async serverLost() {
      if (begun()?.mine) await restate(sent().map(toSendAgain), 0);
    },
    async serverPutBack(events, reached) {
      const there = new Set(events.map(({ id }) => id));
      const lost = sent().filter(({ event }) => !there.has(event.id));
      const stand = events.map((event) => ({ ...fromServer(event), mine: known.get(event.id)?.mine ?? false }));
      await restate([...lost.map(toSendAgain), ...stand], reached);
    },
    async reload() {
      show((await store.read(cook)).held);
    },
  };
}
