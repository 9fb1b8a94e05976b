/** Events as a device makes them. */
import type { EventBodies, EventKind } from './bodies.ts';
import { eventId } from './eventId.ts';
import { instantText } from './instant.ts';
import { upgrades } from './upgrade.ts';

/** When an event is made: by the device's wall clock, ms since 1970, and ten random bytes for its id. */
interface Made {
  readonly wallMs: number;
  readonly random: Uint8Array;
}

/** @param making with all else of the envelope that the maker knows; who counts events later leaves the count out */
export function makeEvent<K extends EventKind, M extends Made>(making: M, kind: K, body: EventBodies[K]) {
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
