/** Bodies of earlier versions, brought up to date when they are read. What is stored and exported stays as it was written. */
import type { EventKind } from './bodies.ts';
import type { KnownEvent, LogEvent } from './event.ts';

/** For each kind what leads from version 1 to 2, from 2 to 3 and so on; a kind without an entry is at version 1. */
export type Upgrades = Readonly<Record<string, readonly ((body: never) => unknown)[]>>;

export const upgrades = {
  begun: [],
  reading: [],
  heat: [],
  water: [],
  alkali: [],
  stir: [],
  spoonTest: [],
  note: [],
  photo: [],
  step: [],
  poured: [],
  weight: [],
  dilutionPh: [],
  dilutionBrix: [],
  foam: [],
  here: [],
  vouched: [],
  probeUnit: [],
  seen: [],
  putAside: [],
  clock: [],
  correction: [],
  ended: [],
} as const satisfies Record<EventKind, Upgrades[string]>;

export const eventKinds = Object.keys(upgrades) as EventKind[];

/** The event at the version that this Umberpan knows; undefined for a kind, or a version, that only a later one does. */
export function upToDate(event: LogEvent, known: Upgrades = upgrades): KnownEvent | undefined {
  if (!Object.hasOwn(known, event.kind)) return undefined;
  const steps = known[event.kind];
  if (event.v > steps.length + 1) return undefined;
  if (event.v === steps.length + 1) return event as KnownEvent;
  const body = steps.slice(event.v - 1).reduce((old: unknown, step) => step(old as never), event.body);
  return { ...event, v: steps.length + 1, body } as KnownEvent;
}
