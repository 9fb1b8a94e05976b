/** The whole log of a kept cook: from the server, joined with what only this device has. */
import type { LogEvent } from '../../../../core/log/event.ts';
import { cookServer } from '../../../records/cookLog/cookServer.ts';
import { eventsHere } from '../../../records/cookLog/openCookLog.ts';

/** @throws TypeError when neither has anything of it */
export async function cookEvents(cook: string): Promise<readonly LogEvent[]> {
  const [kept, here] = await Promise.all([eventsOfServer(cook).catch(() => []), eventsHere(cook).catch(() => [])]);
  const known = new Map<string, LogEvent>([...here, ...kept].map((event) => [event.id, event]));
  if (known.size === 0) throw new TypeError(`nothing is here of cook ${cook}`);
  return [...known.values()];
}

async function eventsOfServer(cook: string): Promise<readonly LogEvent[]> {
  const server = cookServer(cook);
  const events: LogEvent[] = [];
  for (let since = 0, more = true; more; ) {
    const page = await server.eventsSince(since);
    events.push(...page.events);
    since = page.lastSeq;
    more = page.more;
  }
  return events;
}
