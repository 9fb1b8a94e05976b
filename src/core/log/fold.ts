/** The state of a cook from its events. Whatever order, copies and ways they came in, the same events give the same state. */
import type { EventKind } from './bodies.ts';
import { type AnyEntry, amended, type Entry } from './corrections.ts';
import type { LogEvent, Stamp } from './event.ts';
import { lateArrivals } from './lateArrivals.ts';
import { inOrder } from './order.ts';
import { believedReadings } from './probesApart.ts';
import { inShownUnit } from './shownUnit.ts';
import { upToDate } from './upgrade.ts';

const deedKinds = ['heat', 'water', 'alkali', 'stir', 'spoonTest', 'step', 'poured'] as const;
const measurementKinds = ['weight', 'dilutionPh', 'dilutionBrix'] as const;
const remarkKinds = ['note', 'photo'] as const;
const answerKinds = ['foam', 'here', 'vouched'] as const;

/** Entries of certain kinds, in true order. */
type Entries<K extends EventKind> = readonly { [One in K]: Entry<One> }[K][];

export interface CookState {
  /** How it began; null until that event has come in. Times are then counted from the earliest event. */
  readonly begun: Entry<'begun'> | null;
  /** True time that `timeS` is counted from, ms since 1970; null for an empty log. */
  readonly startMs: number | null;
  readonly mode: 'live' | 'rehearsal' | null;
  readonly readings: Entries<'reading'>;
  /** Those of thermometers that the cook believes. */
  readonly believed: Entries<'reading'>;
  readonly deeds: Entries<(typeof deedKinds)[number]>;
  /** Index of the step last begun; null before the first. */
  readonly stepIndex: number | null;
  readonly measurements: Entries<(typeof measurementKinds)[number]>;
  readonly remarks: Entries<(typeof remarkKinds)[number]>;
  /** What the cook said when asked. */
  readonly answers: Entries<(typeof answerKinds)[number]>;
  readonly probeUnits: Entries<'probeUnit'>;
  readonly seen: Entries<'seen'>;
  readonly putAside: Entries<'putAside'>;
  readonly clockJumps: Entries<'clock'>;
  readonly ended: Entry<'ended'> | null;
  readonly struckOut: readonly AnyEntry[];
  /** Ids of events that only a later Umberpan understands. */
  readonly unknown: readonly string[];
  /** The one part that depends on how events came in. */
  readonly arrival: {
    readonly lastSeq: number | null;
    /** Ids of events that came in after later ones. */
    readonly late: readonly string[];
  };
}

export function foldCook(events: readonly (LogEvent & Partial<Stamp>)[]): CookState {
  const ordered = inOrder(events);
  const current = ordered.map(({ event, trueMs }) => ({ event: upToDate(event), trueMs }));
  const known = current.flatMap(({ event, trueMs }) => (event ? [{ event, trueMs }] : []));
  const start = known.find(({ event }) => event.kind === 'begun') ?? ordered[0];
  const { entries, struckOut } = amended(known, start?.trueMs ?? 0);
  const of = <K extends EventKind>(...kinds: readonly K[]) =>
    entries.filter(({ kind }) => (kinds as readonly EventKind[]).includes(kind)) as unknown as Entries<K>;
  const [begun = null] = of('begun');
  const readings = inShownUnit(of('reading'), of('probeUnit'));
  const answers = of(...answerKinds);
  return {
    begun,
    startMs: start?.trueMs ?? null,
    mode: begun?.body.mode ?? null,
    readings,
    believed: believedReadings(readings, answers),
    deeds: of(...deedKinds),
    stepIndex: of('step').at(-1)?.body.index ?? null,
    measurements: of(...measurementKinds),
    remarks: of(...remarkKinds),
    answers,
    probeUnits: of('probeUnit'),
    seen: of('seen'),
    putAside: of('putAside'),
    clockJumps: of('clock'),
    ended: of('ended')[0] ?? null,
    struckOut,
    unknown: ordered.filter((_, place) => current[place].event === undefined).map(({ event }) => event.id),
    arrival: { lastSeq: lastSeq(events), late: lateArrivals(ordered) },
  };
}

function lastSeq(events: readonly Partial<Stamp>[]): number | null {
  return events.reduce<number | null>((last, { seq }) => (seq === undefined ? last : Math.max(last ?? seq, seq)), null);
}
