/** Events that the server makes itself, for thermometers that only send a number. It is a device like any other; its clock is the reference. */
import { randomBytes, randomUUID } from 'node:crypto';
import type { EventBodies, EventKind } from '../../core/log/bodies.ts';
import type { EventOf } from '../../core/log/event.ts';
import { makeEvent } from '../../core/log/makeEvent.ts';
import type { SteadyClock } from './steadyClock.ts';

export type MakeEvent = <K extends EventKind>(cook: string, kind: K, body: EventBodies[K]) => EventOf<K>;

export function ownEvents(clock: SteadyClock): MakeEvent {
  // Each start of the server is a device of its own, so that its count need not be kept.
  const device = randomUUID();
  const originMs = clock.nowMs();
  let deviceSeq = 0;
  return (cook, kind, body) => {
    const nowMs = clock.nowMs();
    deviceSeq += 1;
    const tz = Intl.DateTimeFormat().resolvedOptions().timeZone;
    const when = { wallMs: nowMs, tMono: nowMs - originMs, clockOffsetMs: 0, clockErrMs: 0, tz };
    const random = randomBytes(10);
    return makeEvent({ cook, device, bootId: device, deviceSeq, ...when, random }, kind, body);
  };
}
