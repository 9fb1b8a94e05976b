/**
 * The envelope of an event. A client makes all of it; once made it never changes (a mistake is put right by a further
 * event), so it can be sent any number of times, by any way, in any order.
 */
import type { EventBodies, EventKind } from './bodies.ts';

/** When a device made an event, by its own clocks. */
export interface Clocked {
  readonly device: string;
  /** Counts the device's events, from 1. */
  readonly deviceSeq: number;
  /** Wall clock, RFC 3339 in UTC with milliseconds. */
  readonly tDevice: string;
  /** Monotonic clock, ms since an origin of its own. */
  readonly tMono: number;
  /** One unbroken run of the monotonic clock. A device begins another when that clock may have stood still: after it slept. */
  readonly bootId: string;
  /** Server's clock less the device's, as last measured, and how far off that may be, ms; null when never measured in this run. */
  readonly clockOffsetMs: number | null;
  readonly clockErrMs: number | null;
}

interface Envelope extends Clocked {
  /** UUID version 7. */
  readonly id: string;
  readonly cook: string;
  /** Version of the body. */
  readonly v: number;
  /** The device's time zone, an IANA name. */
  readonly tz: string;
}

/** An event as it may come out of a file: the kind may be one that a later Umberpan knows. */
export interface LogEvent extends Envelope {
  readonly kind: string;
  readonly body: unknown;
}

export interface EventOf<K extends EventKind> extends Envelope {
  readonly kind: K;
  readonly body: EventBodies[K];
}

export type KnownEvent = { [K in EventKind]: EventOf<K> }[EventKind];

/** What the server adds when it has an event on its disk: its place in the store, when it came in, and its link of the hash chain. */
export interface Stamp {
  readonly seq: number;
  readonly tServer: string;
  readonly prevHash: string;
  readonly hash: string;
}

export type StampedEvent = LogEvent & Stamp;
