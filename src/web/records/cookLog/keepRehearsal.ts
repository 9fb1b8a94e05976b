/** A rehearsal that is over, kept like a cook of this device: it goes to the server when there is one. */
import { asKept } from '../../../core/book/keptRehearsal.ts';
import type { KnownEvent } from '../../../core/log/event.ts';
import { newId } from '../newId.ts';
import { keepHere, openCookLog } from './openCookLog.ts';

/** @returns the cook's id */
export async function keepRehearsal(events: readonly KnownEvent[]): Promise<string> {
  const cook = newId();
  const kept = asKept(events, {
    cook,
    bootId: newId(),
    tz: Intl.DateTimeFormat().resolvedOptions().timeZone,
    endMs: Date.now(),
    random: () => crypto.getRandomValues(new Uint8Array(10)),
  });
  await keepHere(kept);
  // Opened for as long as the server takes it in; what it does not take now goes when the cook is opened again.
  const log = await openCookLog(cook);
  setTimeout(() => log.close(), 60_000);
  return cook;
}
