/** The log of an imported cook: all of its events, or none. */
import type { Begun, EventBodies, EventKind } from '../../log/bodies.ts';
import { deedBody } from '../../log/deedBody.ts';
import type { KnownEvent, LogEvent } from '../../log/event.ts';
import { makeEvent } from '../../log/makeEvent.ts';
import type { Preview } from './preview.ts';

/** Who imports, when the cook began, and ten random bytes for each event. */
export interface Importing extends Pick<LogEvent, 'cook' | 'device' | 'tz'> {
  readonly startMs: number;
  readonly random: () => Uint8Array;
}

/** @throws RangeError when a cell of the table said nothing */
export function eventsOf(
  { happenings, wrong, lastS }: Preview,
  begun: Begun,
  importing: Importing,
): readonly KnownEvent[] {
  if (wrong.length > 0) throw new RangeError(`cells that say nothing: ${wrong.length}; allowed: 0`);
  const { startMs, random, ...who } = importing;
  const events: KnownEvent[] = [];
  const say = <K extends EventKind>(kind: K, body: EventBodies[K], timeS: number) => {
    const tMono = Math.round(1000 * timeS);
    const clock = { bootId: who.device, tMono, wallMs: startMs + tMono, clockOffsetMs: 0, clockErrMs: 0 };
    const making = { ...who, ...clock, deviceSeq: events.length + 1, random: random() };
    events.push(makeEvent(making, kind, body) as KnownEvent);
  };
  let partsGiven = 0;
  say('begun', begun, 0);
  for (const { timeS, reading, deed } of happenings) {
    if (reading) say('reading', reading, timeS);
    if (!deed) continue;
    const { kind, body } = deedBody(deed, partsGiven);
    if (deed.kind === 'alkali') partsGiven++;
    say(kind, body, timeS);
  }
  say('ended', { how: 'done' }, lastS);
  return events;
}
