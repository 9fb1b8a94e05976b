/** All events of a cook that this device knows, each once. An event that did not change stays the same object. */
import { type HeldEvent, merged, type ShownEvent } from './heldEvent.ts';

export interface KnownEvents {
  shown(): readonly ShownEvent[];
  /** The device's own that the server does not have yet, in the order in which they have to go there. */
  waiting(): readonly HeldEvent[];
  refused(): readonly HeldEvent[];
  all(): readonly HeldEvent[];
  get(id: string): HeldEvent | undefined;
  /** Adds what is known; returns what is new in that. */
  take(held: readonly HeldEvent[]): HeldEvent[];
  /** Puts events back to how they stand now, whatever was known. */
  put(held: readonly HeldEvent[]): void;
}

export function knownEvents(first: readonly HeldEvent[]): KnownEvents {
  const held = new Map<string, HeldEvent>();
  const shapes = new WeakMap<HeldEvent, ShownEvent>();
  let shown: readonly ShownEvent[] | undefined;
  let waiting: readonly HeldEvent[] | undefined;
  const put = (changed: readonly HeldEvent[]) => {
    for (const one of changed) held.set(one.event.id, one);
    if (changed.length > 0) shown = waiting = undefined;
  };
  const take = (more: readonly HeldEvent[]) => {
    const changed = more.flatMap((one) => {
      const known = held.get(one.event.id);
      const next = known ? merged(known, one) : one;
      return next === known ? [] : [next];
    });
    put(changed);
    return changed;
  };
  const shape = (one: HeldEvent) => {
    const made = shapes.get(one) ?? { ...one.event, ...one.stamp };
    shapes.set(one, made);
    return made;
  };
  take(first);
  return {
    shown() {
      shown ??= [...held.values()].map(shape);
      return shown;
    },
    waiting() {
      waiting ??= [...held.values()].filter((one) => one.mine && one.sending === 'waiting').sort(inSendingOrder);
      return waiting;
    },
    refused: () => [...held.values()].filter(({ sending }) => sending === 'refused'),
    all: () => [...held.values()],
    get: (id) => held.get(id),
    take,
    put,
  };
}

/** The beginning first; then as the device counted. A page without storage was a device of its own: one after the other. */
function inSendingOrder({ event: a }: HeldEvent, { event: b }: HeldEvent): number {
  const begins = Number(b.kind === 'begun') - Number(a.kind === 'begun');
  if (begins !== 0) return begins;
  if (a.device === b.device) return a.deviceSeq - b.deviceSeq;
  return a.device < b.device ? -1 : 1;
}
