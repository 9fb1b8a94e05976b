/** Which events came in late: after one that happened later had come in, so that what was shown by then has to be looked at again. */
import type { LogEvent, Stamp } from './event.ts';
import { instantMs } from './instant.ts';
import type { TimedEvent } from './order.ts';

/** Two devices' events may overtake each other by this much without anybody minding, ms (assumed). */
const overtakenMs = 5000;

/** @param ordered in true order; events without a stamp have not come in yet, and are not late */
export function lateArrivals(ordered: readonly TimedEvent<LogEvent & Partial<Stamp>>[]): string[] {
  const stamped = ordered.flatMap(({ event, trueMs }) =>
    event.tServer === undefined ? [] : [{ id: event.id, trueMs, cameMs: instantMs(event.tServer) }],
  );
  // Sorting is stable: what came in together stays in true order.
  const byArrival = stamped.toSorted((a, b) => a.cameMs - b.cameMs);
  const late = new Set<string>();
  let latestMs = Number.NEGATIVE_INFINITY;
  for (const { id, trueMs } of byArrival) {
    if (trueMs < latestMs - overtakenMs) late.add(id);
    latestMs = Math.max(latestMs, trueMs);
  }
  return stamped.filter(({ id }) => late.has(id)).map(({ id }) => id);
}
