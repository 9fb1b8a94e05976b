/** An event as this device keeps it: what was written, what the server said of it, and whether the server has it. */
import type { LogEvent, Stamp, StampedEvent } from '../../../core/log/event.ts';

export type ShownEvent = LogEvent & Partial<Stamp>;

/** What the server says of an event that it has written; the link before it comes with the stream. */
export type Receipt = Pick<Stamp, 'seq' | 'tServer' | 'hash'> & { readonly id: string };

export interface HeldEvent {
  readonly event: LogEvent;
  readonly stamp: Partial<Stamp>;
  /** Whether this browser made it, and so has to see it to the server. */
  readonly mine: boolean;
  readonly sending: 'waiting' | 'done' | 'refused';
  /** The server's words, if it refused. */
  readonly refusal: string | null;
}

export function mine(event: LogEvent): HeldEvent {
  return { event, stamp: {}, mine: true, sending: 'waiting', refusal: null };
}

/** As the server gives it. */
export function fromServer({ seq, tServer, prevHash, hash, ...event }: StampedEvent): HeldEvent {
  return { event, stamp: { seq, tServer, prevHash, hash }, mine: false, sending: 'done', refusal: null };
}

/** The server has it, but not on its disk: whoever made it keeps it until then. */
export function notWrittenYet(event: LogEvent): HeldEvent {
  return { event, stamp: {}, mine: false, sending: 'waiting', refusal: null };
}

export function receipted(held: HeldEvent, { seq, tServer, hash }: Receipt): HeldEvent {
  return { ...held, stamp: { ...held.stamp, seq, tServer, hash }, sending: 'done', refusal: null };
}

export function refusedWith(held: HeldEvent, refusal: string): HeldEvent {
  return { ...held, sending: 'refused', refusal };
}

/** The server's store was put back to a state without it: it has to go there again. */
export function toSendAgain({ event }: HeldEvent): HeldEvent {
  return mine(event);
}

/** What two tellings of one event come to, in whatever order they came: what the server has, it has. */
export function merged(one: HeldEvent, other: HeldEvent): HeldEvent {
  const best = rank(other) > rank(one) ? other : one;
  const isMine = one.mine || other.mine;
  if (best === one && one.mine === isMine && !addsTo(one.stamp, other.stamp)) return one;
  return { ...best, stamp: { ...one.stamp, ...other.stamp }, mine: isMine };
}

function rank({ sending, stamp }: HeldEvent): number {
  if (sending === 'done') return stamp.prevHash === undefined ? 2 : 3;
  return sending === 'refused' ? 1 : 0;
}

function addsTo(stamp: Partial<Stamp>, other: Partial<Stamp>): boolean {
  return Object.keys(other).some((name) => !Object.hasOwn(stamp, name));
}
