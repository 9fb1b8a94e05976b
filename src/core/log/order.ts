/** From any heap of events to one log: each event once, in the order in which things really happened. */
import { canonicalJson } from './canonicalJson.ts';
import type { LogEvent, Stamp } from './event.ts';
import { trueTimes } from './trueTime.ts';

export interface TimedEvent<E extends LogEvent = LogEvent> {
  readonly event: E;
  readonly trueMs: number;
}

/** Each event once, by true time, then device, then the device's own count. */
export function inOrder<E extends LogEvent & Partial<Stamp>>(events: readonly E[]): TimedEvent<E>[] {
  const once = new Map<string, E>();
  for (const event of events) {
    const there = once.get(event.id);
    if (there === undefined || isPreferred(event, there)) once.set(event.id, event);
  }
  const times = trueTimes([...once.values()]);
  return [...times]
    .map(([event, trueMs]) => ({ event, trueMs }))
    .sort((a, b) => a.trueMs - b.trueMs || compareMakers(a.event, b.event));
}

function compareMakers(a: LogEvent, b: LogEvent): number {
  return compare(a.device, b.device) || a.deviceSeq - b.deviceSeq || compare(a.id, b.id);
}

/** Of copies of an event, the one that the store holds; of copies that differ, which honest clients never make, always the same. */
function isPreferred(one: LogEvent & Partial<Stamp>, other: LogEvent & Partial<Stamp>): boolean {
  const [a, b] = [one.seq ?? Number.POSITIVE_INFINITY, other.seq ?? Number.POSITIVE_INFINITY];
  return a === b ? canonicalJson(one) < canonicalJson(other) : a < b;
}

function compare(a: string, b: string): number {
  if (a === b) return 0;
  return a < b ? -1 : 1;
}
