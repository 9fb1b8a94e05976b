/** The log of a rehearsal, whose simulated device is the same each time, as events that may stand beside all others. */
import type { EventBodies, EventKind } from '../log/bodies.ts';
import type { KnownEvent, LogEvent } from '../log/event.ts';
import { makeEvent } from '../log/makeEvent.ts';

export interface Keeping extends Pick<LogEvent, 'cook' | 'bootId' | 'tz'> {
  /** When it was over by the wall clock, ms since 1970; it is told as if it had gone at its own pace until then. */
  readonly endMs: number;
  /** Ten bytes for each event. */
  readonly random: () => Uint8Array;
}

/** Without device and count, which the store gives; with an end, which a rehearsal has by itself. */
export function asKept(
  events: readonly KnownEvent[],
  { endMs, random, ...who }: Keeping,
): Omit<LogEvent, 'device' | 'deviceSeq'>[] {
  const lastMs = events.at(-1)?.tMono ?? 0;
  const make = <K extends EventKind>(kind: K, body: EventBodies[K], tMono: number) =>
    makeEvent(
      {
        ...who,
        tMono,
        wallMs: Math.round(endMs - lastMs + tMono),
        clockOffsetMs: null,
        clockErrMs: null,
        random: random(),
      },
      kind,
      body,
    );
  const newIds = new Map<string, string>();
  const kept = events.map(({ id, kind, body, tMono }) => {
    const event = make(kind, pointed(body, newIds) as EventBodies[typeof kind], tMono);
    newIds.set(id, event.id);
    return event;
  });
  return events.some(({ kind }) => kind === 'ended') ? kept : [...kept, make('ended', { how: 'done' }, lastMs)];
}

/** What a body says of an event before it, said of that event under its new id. */
function pointed(body: KnownEvent['body'], newIds: ReadonlyMap<string, string>): KnownEvent['body'] {
  if ('corrects' in body) return { ...body, corrects: newIds.get(body.corrects) ?? body.corrects };
  if ('from' in body && body.from !== null) return { ...body, from: newIds.get(body.from) ?? body.from };
  return body;
}
