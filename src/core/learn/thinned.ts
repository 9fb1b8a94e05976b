/** Readings that are told closer together than they say anything new of a kit are left out. */
import type { TwinEvent } from '../twin/twin.ts';

/** Nearer readings share the model's own error, so they would count for more than they know, s. */
const apartS = 40;

/** The events without the readings of a thermometer that follow another one too closely; those by hand all stay. */
export function thinned(events: readonly TwinEvent[]): readonly TwinEvent[] {
  let lastS = Number.NEGATIVE_INFINITY;
  return events.filter((event) => {
    if (!('observation' in event) || event.observation.kind !== 'reading' || event.observation.byHand) return true;
    if (event.timeS - lastS < apartS) return false;
    lastS = event.timeS;
    return true;
  });
}
