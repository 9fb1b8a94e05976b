/** Events as a device makes them. */
import type { EventBodies, EventKind } from './bodies.ts';
import type { Clocked, EventOf } from './event.ts';
import { eventId } from './eventId.ts';
import { instantText } from './instant.ts';
import { upgrades } from './upgrade.ts';

/** Who makes an event, of which cook, and when. */
export interface Making extends Omit<Clocked, 'tDevice'> {
  readonly cook: string;
  /** The device's wall clock, ms since 1970. */
  readonly wallMs: number;
  /** Its time zone, an IANA name. */
  readonly tz: string;
  /** Ten random bytes for the event's id. */
  readonly random: Uint8Array;
}

export function makeEvent<K extends EventKind>(making: Making, kind: K, body: EventBodies[K]): EventOf<K> {
  const { wallMs, random, ...rest } = making;
  return {
    ...rest,
    id: eventId(wallMs, random),
    tDevice: instantText(wallMs),
    kind,
    v: upgrades[kind].length + 1,
    body,
  };
}
