// A data folder with one cook that is under way, and what its store holds.

import { beginCook, runningCooks } from '../../src/server/store/cooks.ts';
import { appendEvents, readEvents } from '../../src/server/store/events.ts';
import { openStore } from '../../src/server/store/store.ts';
import { sampleBodies, sampleCook, sampleDevice } from '../sampleCook.ts';

const tServer = '2031-05-09T18:30:00.000Z';

/** @returns ids of its events, the beginning first */
export async function fill(folder: string, readings: number): Promise<string[]> {
  const { db, close } = await openStore(folder);
  const { cook, begun } = sampleCook(0);
  const device = sampleDevice(cook);
  const events = Array.from({ length: readings }, (_, s) => device.make('reading', sampleBodies.reading, s));
  await beginCook(db, begun, tServer);
  await appendEvents(
    db,
    cook,
    events.map((event) => ({ event, tServer })),
  );
  await close();
  return [begun.id, ...events.map(({ id }) => id)];
}

export interface Held {
  readonly ids: readonly string[];
  readonly damaged: readonly number[];
}

/** What the cook's log holds; opens the store as any start does. */
export async function heldIn(
  folder: string,
  ...more: Parameters<typeof openStore> extends [string, ...infer M] ? M : never
): Promise<Held> {
  const { db, close } = await openStore(folder, ...more);
  try {
    const [{ id }] = await runningCooks(db);
    const { events, damaged } = await readEvents(db, id);
    return { ids: events.map((event) => event.id), damaged };
  } finally {
    await close();
  }
}

/** What is missing of what was acknowledged, doubled, or damaged. */
export function lossesOf(when: string, acknowledged: readonly string[], { ids, damaged }: Held): string[] {
  const there = new Set(ids);
  const lost = acknowledged.filter((id) => !there.has(id)).length;
  return [
    ...(lost > 0 ? [`${when}: ${lost} of ${acknowledged.length} acknowledged events lost`] : []),
    ...(there.size < ids.length ? [`${when}: ${ids.length - there.size} events doubled`] : []),
    ...(damaged.length > 0 ? [`${when}: events at ${damaged.join(', ')} damaged`] : []),
  ];
}
