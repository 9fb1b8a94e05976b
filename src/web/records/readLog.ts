/** The whole log of a cook to look back at: from the server, and what only this device holds of it. */
import type { LogEvent, Stamp } from '../../core/log/event.ts';
import { cookServer } from './cookLog/cookServer.ts';
import { eventsHere } from './cookLog/openCookLog.ts';

/** A long log comes in parts that the server gives without keeping anybody else waiting. */
const atOnce = 2500;

export type ReadEvent = LogEvent & Partial<Stamp>;

/** @throws what the server said, or that it was not reached, when this device holds nothing of the cook either */
export async function readLog(cook: string): Promise<readonly ReadEvent[]> {
  const here = eventsHere(cook).catch((): readonly ReadEvent[] => []);
  const there = eventsThere(cook);
  try {
    return [...(await there), ...(await here)];
  } catch (error) {
    const held = await here;
    if (held.length > 0) return held;
    throw error;
  }
}

async function eventsThere(cook: string): Promise<readonly ReadEvent[]> {
  const server = cookServer(cook);
  const events: ReadEvent[] = [];
  for (let since = 0, more = true; more; ) {
    const page = await server.eventsSince(since, atOnce);
    events.push(...page.events);
    since = page.lastSeq;
    more = page.more;
  }
  return events;
}
