/** Corrections, applied: each event with what it says now and what it said before; those that never happened set apart. */
import type { EventBodies, EventKind } from './bodies.ts';
import type { EventOf, KnownEvent } from './event.ts';
import { grouped } from './grouped.ts';

/** An event as the log now has it. */
export interface Entry<K extends EventKind = EventKind> {
  readonly id: string;
  readonly kind: K;
  readonly device: string;
  /** True time, ms since 1970, and s since the cook began. */
  readonly trueMs: number;
  readonly timeS: number;
  readonly body: EventBodies[K];
  /** What it said before it was corrected, oldest first. */
  readonly before: readonly EventBodies[K][];
}

export type AnyEntry = { [K in EventKind]: Entry<K> }[EventKind];

export interface Amended {
  readonly entries: readonly AnyEntry[];
  /** Events that never happened, as they were last. */
  readonly struckOut: readonly AnyEntry[];
}

interface Timed {
  readonly event: KnownEvent;
  readonly trueMs: number;
}

type CorrectionEvent = EventOf<'correction'>;

/** @param events in true order; of several corrections of one event the last holds */
export function amended(events: readonly Timed[], startMs: number): Amended {
  const standing = standingCorrections(events.flatMap(({ event }) => (event.kind === 'correction' ? [event] : [])));
  const entries: AnyEntry[] = [];
  const struckOut: AnyEntry[] = [];
  for (const { event, trueMs } of events) {
    if (event.kind === 'correction') continue;
    const later = standing.get(event.id)?.filter(({ body }) => body.kind === event.kind) ?? [];
    const said = [event.body, ...later.map(({ body }) => body.body)];
    const bodies = said.filter((body) => body !== null);
    const { id, kind, device } = event;
    const timeS = (trueMs - startMs) / 1000;
    const entry = { id, kind, device, trueMs, timeS, body: bodies.at(-1), before: bodies.slice(0, -1) } as AnyEntry;
    (said.at(-1) === null ? struckOut : entries).push(entry);
  }
  return { entries, struckOut };
}

/** Corrections that were not taken back, by the event that they correct. */
function standingCorrections(corrections: readonly CorrectionEvent[]): Map<string, CorrectionEvent[]> {
  const all = grouped(corrections, ({ body }) => body.corrects);
  // A correction that leads back to itself was made by no honest client; it takes nothing back.
  const isTakenBack = (id: string, above: readonly string[]): boolean =>
    (all.get(id) ?? []).some(
      ({ id: by, body }) => body.kind === 'correction' && !above.includes(by) && !isTakenBack(by, [...above, by]),
    );
  return grouped(
    corrections.filter(({ id }) => !isTakenBack(id, [id])),
    ({ body }) => body.corrects,
  );
}
