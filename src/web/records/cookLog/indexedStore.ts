/** Cooks kept in IndexedDB, which a page has over plain http too. */
import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import { newId } from '../newId.ts';
import { begunAmong, type CookStore, counted, type DeviceCount, type KeptCook } from './cookStore.ts';
import { type HeldEvent, merged } from './heldEvent.ts';

interface Shelves extends DBSchema {
  device: { key: string; value: DeviceCount };
  cooks: { key: string; value: KeptCook };
  /** Cook to the place reached. */
  places: { key: string; value: number };
  events: { key: string; value: HeldEvent; indexes: { cook: string } };
}

const thisDevice = 'this';

/** @throws when the browser refuses to keep anything */
export async function indexedStore(name = 'umberpan'): Promise<CookStore> {
  let db: IDBPDatabase<Shelves> | undefined;
  const open = async () => {
    db = await openDB<Shelves>(name, 1, {
      upgrade(fresh) {
        for (const shelf of ['device', 'places'] as const) fresh.createObjectStore(shelf);
        fresh.createObjectStore('cooks', { keyPath: 'id' });
        fresh.createObjectStore('events', { keyPath: 'event.id' }).createIndex('cook', 'event.cook');
      },
      // A tab with a later Umberpan wants to change the shelves.
      blocking: () => db?.close(),
      terminated: () => {
        db = undefined;
      },
    });
    return db;
  };
  /** Once more over a fresh connection when a phone has cut the old one while the page slept. */
  const withDb = async <T>(work: (db: IDBPDatabase<Shelves>) => Promise<T>): Promise<T> => {
    try {
      return await work(db ?? (await open()));
    } catch (error) {
      if (!isCut(error)) throw error;
      return work(await open());
    }
  };
  await open();

  return {
    storage: () => 'ok',
    append: (drafts) =>
      withDb(async (shelves) => {
        const writing = shelves.transaction(['device', 'cooks', 'events'], 'readwrite', { durability: 'strict' });
        const devices = writing.objectStore('device');
        const device = (await devices.get(thisDevice)) ?? { id: newId(), count: 0 };
        const held = counted(drafts, device);
        await Promise.all([
          devices.put({ ...device, count: device.count + held.length }, thisDevice),
          ...held.map((one) => writing.objectStore('events').add(one)),
          ...begunAmong(held).map((cook) => writing.objectStore('cooks').put(cook)),
          writing.done,
        ]);
        return held;
      }),
    put: (held) =>
      withDb(async (shelves) => {
        const writing = shelves.transaction('events', 'readwrite');
        await Promise.all([...held.map((one) => writing.store.put(one)), writing.done]);
      }),
    take: (cook, held, lastSeq) =>
      withDb(async (shelves) => {
        const writing = shelves.transaction(['events', 'places'], 'readwrite');
        const events = writing.objectStore('events');
        const add = async (one: HeldEvent) => {
          const known = await events.get(one.event.id);
          return events.put(known ? merged(known, one) : one);
        };
        const place = lastSeq === undefined ? undefined : writing.objectStore('places').put(lastSeq, cook);
        await Promise.all([...held.map(add), place, writing.done]);
      }),
    read: (cook) =>
      withDb(async (shelves) => {
        const reading = shelves.transaction(['events', 'places']);
        const [held, lastSeq] = await Promise.all([
          reading.objectStore('events').index('cook').getAll(cook),
          reading.objectStore('places').get(cook),
          reading.done,
        ]);
        return { held, lastSeq: lastSeq ?? 0 };
      }),
    noteCook: (cook) => withDb(async (shelves) => void (await shelves.put('cooks', cook))),
    cooks: () => withDb((shelves) => shelves.getAll('cooks')),
  };
}

/** `append` can be tried again after these: its transaction was never begun, or was undone. */
function isCut(error: unknown): boolean {
  return error instanceof DOMException && ['InvalidStateError', 'UnknownError'].includes(error.name);
}
