/**
 * A cook's log as this device has it: its own events, kept here before anything else, and those of the server. It works
 * without a server, and brings both sides together when there is one.
 */
import type { EventBodies, EventKind } from '../../../core/log/bodies.ts';
import type { EventOf, LogEvent } from '../../../core/log/event.ts';
import type { CookServer } from './cookServer.ts';
import type { CookStore, EventDraft } from './cookStore.ts';
import type { Clocks } from './deviceClock.ts';
import { following } from './following.ts';
import type { HeldEvent, ShownEvent } from './heldEvent.ts';
import { ledger } from './ledger.ts';
import { type Link, nextLink } from './link.ts';
import { outbox } from './outbox.ts';
import type { Device } from './thisDevice.ts';
import type { Writer } from './writer.ts';

/** How often it is tried to send what waits, to measure the clock, and to see whether all is as it was, ms. */
const sendAgainMs = 5000;
const measureAgainMs = 60_000;
const lookMs = 1000;

export interface RefusedEvent {
  readonly event: LogEvent;
  /** The server's words. */
  readonly reason: string;
}

export interface CookLog {
  readonly cook: string;
  /** Everything known of the cook, each event once; the same array until something changes. */
  events(): readonly ShownEvent[];
  /**
   * Makes an event, and keeps it on this device before it settles.
   * @throws WrittenElsewhere while another tab of this device writes
   */
  add<K extends EventKind>(kind: K, body: EventBodies[K]): Promise<EventOf<K>>;
  /** The server's time as far as it is known here, ms since 1970. */
  nowMs(): number;
  /** The same object until something changes. */
  link(): Link;
  /** Events of this device that the server will never take. */
  refused(): readonly RefusedEvent[];
  writer(): 'here' | 'elsewhere';
  /** Makes this tab the one of this device that writes. */
  takeOver(): Promise<void>;
  subscribe(listener: () => void): () => void;
  close(): void;
}

export class WrittenElsewhere extends Error {
  override readonly name = 'WrittenElsewhere';

  constructor() {
    super('This cook is written in another tab of this device.');
  }
}

/** The other tabs of this device that have the same cook open. */
export interface Tabs {
  tell(held: readonly HeldEvent[]): void;
  /** @returns the way to stop */
  listen(told: (held: readonly HeldEvent[]) => void): () => void;
}

export interface CookLogParts {
  readonly cook: string;
  readonly store: CookStore;
  readonly server: CookServer;
  readonly device: Device;
  readonly clocks: Clocks;
  readonly tabs: Tabs;
  readonly claimWriter: (cook: string, changed: () => void) => Promise<Writer>;
  /** Calls back when the page is seen again, its network is back or it was let in; returns the way to stop. */
  readonly onReturn: (back: () => void) => () => void;
  readonly random: () => number;
}

export async function cookLog(parts: CookLogParts): Promise<CookLog> {
  const { cook, store, server, device, clocks, tabs, random } = parts;
  const listeners = new Set<() => void>();
  let link: Link | undefined;
  let writer: Writer | undefined;
  const changed = () => {
    for (const listener of [...listeners]) listener();
  };
  const isWriter = () => writer?.isHere() ?? false;

  const book = await ledger(cook, store, changed);
  const { known, begun } = book;
  const isOnServer = () => begun()?.sending === 'done';

  const deliver = outbox({
    waiting: () => (begun()?.sending === 'refused' ? [] : known.waiting().map(({ event }) => event)),
    begin: server.begin,
    send: server.send,
    async acknowledged(receipts) {
      const wasOnServer = isOnServer();
      tabs.tell(await book.acknowledged(receipts));
      if (!wasOnServer) follow.retryNow();
    },
    refused: async (event, words) => tabs.tell(await book.refused(event, words)),
    cookUnknown: book.serverLost,
    failed: (error) => follow.failed(error),
  });
  const send = () => {
    if (isWriter()) void deliver();
  };

  writer = await parts.claimWriter(cook, () => {
    if (writer === undefined) return;
    changed();
    // What the tab that wrote before has left.
    void book.reload().then(send);
  });
  const follow = following({
    server,
    clocks,
    random,
    mayAsk: () => !begun()?.mine || isOnServer(),
    lastSeq: book.lastSeq,
    came: ({ events, lastSeq }) => book.came(events, lastSeq),
    pending: book.pending,
    putBack: (events, lastSeq) => book.serverPutBack(events, lastSeq).then(send),
    cookUnknown: () => book.serverLost().then(send),
    changed,
    back: send,
  });

  async function append(drafts: readonly EventDraft[]): Promise<HeldEvent[]> {
    const held = await book.append(drafts);
    tabs.tell(held);
    send();
    return held;
  }

  /** The event that says that the clocks went apart, if they did since the last look. */
  function jumpNoted(): EventDraft[] {
    const jump = device.look();
    if (!jump) return [];
    void device.measure();
    return isWriter() && begun() && !book.isOver() ? [device.draft(cook, 'clock', jump)] : [];
  }

  function noteJump() {
    const jump = jumpNoted();
    if (jump.length > 0) void append(jump);
  }

  function linkNow(): Link {
    const ageMs = follow.ageMs();
    return {
      state: follow.state(),
      ageS: ageMs === null ? null : Math.floor(ageMs / 1000),
      waiting: known.waiting().length,
      refused: known.refused().length,
      storage: store.storage(),
      server: follow.serverStorage(),
    };
  }

  const stops = [
    tabs.listen((held) => {
      book.heard(held);
      // The other tab may have brought the cook to the server.
      if (isOnServer()) follow.retryNow();
    }),
    parts.onReturn(() => {
      noteJump();
      follow.retryNow();
      send();
      void device.measure();
    }),
    every(lookMs, () => {
      noteJump();
      follow.look();
      if (link && nextLink(link, linkNow()) !== link) changed();
    }),
    every(sendAgainMs, () => known.waiting().length > 0 && send()),
    every(measureAgainMs, () => void device.measure()),
    follow.stop,
    writer.release,
  ];
  void device.measure().then(device.measure).then(device.measure);
  send();

  return {
    cook,
    events: known.shown,
    nowMs: device.nowMs,
    async add<K extends EventKind>(kind: K, body: EventBodies[K]) {
      if (!isWriter()) throw new WrittenElsewhere();
      const held = await append([...jumpNoted(), device.draft(cook, kind, body)]);
      return held.at(-1)?.event as EventOf<K>;
    },
    link() {
      link = nextLink(link, linkNow());
      return link;
    },
    refused: () => known.refused().map(({ event, refusal }) => ({ event, reason: refusal ?? '' })),
    writer: () => (isWriter() ? 'here' : 'elsewhere'),
    takeOver: async () => writer?.takeOver(),
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    close() {
      listeners.clear();
      for (const stop of stops) stop();
    },
  };
}

function every(ms: number, work: () => unknown): () => void {
  const timer = setInterval(work, ms);
  return () => clearInterval(timer);
}
