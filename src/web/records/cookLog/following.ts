/**
 * Keeps a device up to date with the server: fetches what it missed, then follows the stream, and comes back for ever when
 * the stream breaks or falls silent. Whether it is live is told by beats alone: a socket can look open long after the
 * server is gone.
 */
import type { StorageState } from '../../../api/cook.ts';
import type { LogEvent, StampedEvent } from '../../../core/log/event.ts';
import { ProblemError } from '../answer.ts';
import { isNotLetIn, isNotShared } from '../reach.ts';
import { backoffMs } from './backoff.ts';
import type { CookServer, EventPage } from './cookServer.ts';
import type { Clocks } from './deviceClock.ts';

/** Without a beat for so long the picture is old, ms; beats come every 2 s. */
const staleMs = 6000;
/** A beat that is no older than this leaves no doubt about the stream, ms. */
const freshMs = 3000;
/** A try that began no longer ago is left to go on, ms. */
const youngMs = 1000;

/** 'unknown': the server is there, and has no such cook. */
export type LinkState = 'live' | 'catching up' | 'on its own' | 'not let in' | 'unknown';

export interface FollowingParts {
  readonly server: Pick<CookServer, 'eventsSince' | 'follow'>;
  readonly clocks: Clocks;
  readonly random: () => number;
  /** Whether the server can know of the cook. If not, `retryNow` is called when it can. */
  mayAsk(): boolean;
  /** Place up to which everything is here. */
  lastSeq(): number;
  /** Everything between the place reached before and this one. */
  came(page: Pick<EventPage, 'events' | 'lastSeq'>): Promise<void>;
  pending(event: LogEvent): void;
  /** All that the server has, after its store was put back. */
  putBack(events: readonly StampedEvent[], lastSeq: number): Promise<void>;
  cookUnknown(): Promise<void>;
  /** The state may have changed. */
  changed(): void;
  /** The server is there again. */
  back(): void;
}

export interface Following {
  state(): LinkState;
  /** Since the last beat, ms; null before the first. */
  ageMs(): number | null;
  /** Whether the server can write what it gets, as it last said. */
  serverStorage(): StorageState | null;
  /** To be called each second: notices when the stream falls silent. */
  look(): void;
  /** Something else that was asked of the server failed so. */
  failed(error: unknown): void;
  /** Something says that the server may be reached again, or that the stream may be dead. */
  retryNow(): void;
  stop(): void;
}

interface Moment {
  readonly wallMs: number;
  readonly monoMs: number;
}

export function following(parts: FollowingParts): Following {
  const { server, clocks, random } = parts;
  let state: LinkState = 'on its own';
  let serverStorage: StorageState | null = null;
  let beaten: Moment | undefined;
  /** When the stream that is open was last heard of. */
  let heard: Moment | undefined;
  let tried: Moment | undefined;
  let failures = 0;
  let again: ReturnType<typeof setTimeout> | undefined;
  let closeStream = () => {};
  /** Counts the tries: what an earlier one still brings is passed over. */
  let round = 0;
  let stopped = false;

  const now = (): Moment => ({ wallMs: clocks.wallMs(), monoMs: clocks.monoMs() });
  /** By whichever clock says more: the monotonic one may have stood still while the device slept. */
  const sinceMs = (then: Moment | undefined) =>
    then ? Math.max(clocks.monoMs() - then.monoMs, clocks.wallMs() - then.wallMs) : Number.POSITIVE_INFINITY;

  function enter(next: LinkState) {
    if (next === state) return;
    state = next;
    parts.changed();
  }

  function leave() {
    closeStream();
    closeStream = () => {};
    heard = tried = undefined;
    clearTimeout(again);
    round += 1;
  }

  function connect() {
    leave();
    if (!parts.mayAsk()) return;
    tried = now();
    const own = round;
    const isCurrent = () => own === round;
    catchUp(isCurrent).catch((error) => {
      if (isCurrent()) lose(error);
    });
  }

  function lose(error?: unknown) {
    leave();
    enter(aloneBy(error));
    again = setTimeout(connect, backoffMs(failures, random()));
    failures += 1;
    if (isUnknown(error)) void parts.cookUnknown();
  }

  async function catchUp(isCurrent: () => boolean) {
    await fetchPages(parts.lastSeq(), isCurrent, parts.came);
    if (isCurrent()) followFrom(parts.lastSeq(), isCurrent);
  }

  async function fetchPages(from: number, isCurrent: () => boolean, take: FollowingParts['came']) {
    for (let page: EventPage | undefined; page === undefined || page.more; ) {
      page = await server.eventsSince(page?.lastSeq ?? from);
      if (!isCurrent()) return;
      enter('catching up');
      await take(page);
    }
  }

  function followFrom(place: number, isCurrent: () => boolean) {
    heard = now();
    const hear =
      <Told extends unknown[]>(work: (...told: Told) => void) =>
      (...told: Told) => {
        if (!isCurrent()) return;
        heard = now();
        work(...told);
      };
    closeStream = server.follow(place, {
      logged: hear((event) => void parts.came({ events: [event], lastSeq: event.seq })),
      pending: hear(parts.pending),
      storage: hear((storage) => {
        serverStorage = storage;
        parts.changed();
      }),
      beat: hear(({ lastSeq, storage }) => beat(lastSeq, storage)),
      putBack: hear(() => {
        closeStream();
        heard = undefined;
        readAnew(isCurrent).catch((error) => {
          if (isCurrent()) lose(error);
        });
      }),
      broken: hear(() => lose()),
    });
  }

  function beat(lastSeq: number, storage: StorageState) {
    const wasLive = state === 'live';
    beaten = now();
    failures = 0;
    serverStorage = storage;
    enter(parts.lastSeq() >= lastSeq ? 'live' : 'catching up');
    if (!wasLive && state === 'live') parts.back();
  }

  async function readAnew(isCurrent: () => boolean) {
    const events: StampedEvent[] = [];
    let lastSeq = 0;
    enter('catching up');
    await fetchPages(0, isCurrent, async (page) => {
      events.push(...page.events);
      lastSeq = page.lastSeq;
    });
    if (!isCurrent()) return;
    await parts.putBack(events, lastSeq);
    if (isCurrent()) followFrom(lastSeq, isCurrent);
  }

  connect();
  return {
    state: () => state,
    ageMs: () => (beaten ? Math.max(0, sinceMs(beaten)) : null),
    serverStorage: () => serverStorage,
    look() {
      if (heard && sinceMs(heard) > staleMs) lose();
    },
    failed(error) {
      if (state !== 'live' && state !== 'catching up') enter(aloneBy(error));
    },
    retryNow() {
      if (stopped || (state === 'live' && sinceMs(beaten) < freshMs) || sinceMs(tried) < youngMs) return;
      failures = 0;
      connect();
    },
    stop() {
      stopped = true;
      leave();
      state = 'on its own';
    },
  };
}

function aloneBy(error: unknown): LinkState {
  if (isUnknown(error)) return 'unknown';
  return isNotLetIn(error) ? 'not let in' : 'on its own';
}

function isUnknown(error: unknown): boolean {
  return isNotShared(error) || (error instanceof ProblemError && error.problem.status === 404);
}
