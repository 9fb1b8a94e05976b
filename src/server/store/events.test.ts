import { randomUUID } from 'node:crypto';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { sql } from 'kysely';
import { expect, it, onTestFinished } from 'vitest';
import { sampleBodies, sampleCook, sampleDevice } from '../../../test/sampleCook.ts';
import { scratchFolder } from '../../../test/testServer.ts';
import type { LogEvent } from '../../core/log/event.ts';
import { damageOfNewestCook } from '../cooking/damage.ts';
import { beginCook, findCook, takeInCook } from './cooks.ts';
import { appendEvents, readEvents } from './events.ts';
import { openDatabase } from './sqlite.ts';
import { openStore } from './store.ts';

const tServer = '2031-05-09T18:30:00.000Z';

async function open(folder: string) {
  const store = await openStore(folder);
  let open = true;
  const close = async () => {
    if (open) await store.close();
    open = false;
  };
  onTestFinished(close);
  return { ...store, close };
}

/** A folder with one closed store, in which a cook with all kinds of events lies. */
async function storedCook(readings = 40) {
  const folder = scratchFolder();
  const sample = sampleCook(readings);
  const { db, close } = await open(folder);
  await beginCook(db, sample.begun, tServer);
  await appendEvents(
    db,
    sample.cook,
    sample.events.slice(1).map((event) => ({ event, tServer })),
  );
  await close();
  return { ...sample, folder, file: join(folder, 'umberpan.sqlite') };
}

it('gives back events after a restart as they were made, linked from the first to the last', async () => {
  const { cook, events, folder } = await storedCook();
  const { db } = await open(folder);
  const log = await readEvents(db, cook);
  expect(log.damaged).toEqual([]);
  expect(log.events).toMatchObject(events);
  expect(log.events.slice(1).map(({ prevHash }) => prevHash)).toEqual(log.events.slice(0, -1).map(({ hash }) => hash));
  expect(await damageOfNewestCook(db)).toBeUndefined();
});

it('keeps each cook in a chain of its own, and never gives a place twice', async () => {
  const { db } = await open(scratchFolder());
  const cooks = [sampleCook(3), sampleCook(3)];
  for (const { begun } of cooks) await beginCook(db, begun, tServer);
  for (let place = 1; place < 10; place++) {
    for (const { cook, events } of cooks) await appendEvents(db, cook, [{ event: events[place], tServer }]);
  }
  for (const { cook } of cooks) expect((await readEvents(db, cook)).damaged).toEqual([]);
  const [{ cook, events }] = cooks;
  await sql`DELETE FROM event WHERE seq > 15`.execute(db);
  const again = await appendEvents(db, cook, [{ event: events[11], tServer }]);
  expect(again).toMatchObject({ outcome: 'stored', stored: [{ seq: 21 }] });
});

it('writes all of a batch or nothing', async () => {
  const { cook, events, folder } = await storedCook(3);
  const { db } = await open(folder);
  const device = sampleDevice(cook);
  const fresh = Array.from({ length: 20 }, (_, s) => device.make('stir', {}, s));
  const batch = fresh.with(15, { ...events[3], tMono: 1 } as never).map((event) => ({ event, tServer }));
  expect(await appendEvents(db, cook, batch)).toEqual({ outcome: 'differs', place: 15 });
  expect((await readEvents(db, cook)).events).toHaveLength(events.length);
});

it('refuses a new cook one of whose ids another cook has, and says which', async () => {
  const { events, folder } = await storedCook(3);
  const { db } = await open(folder);
  const { cook, begun, events: others } = sampleCook(3);
  const taken = others.with(7, { ...others[7], id: events[2].id });
  const incoming = taken.map((event) => ({ event, tServer }));
  expect(await takeInCook(db, begun, incoming)).toEqual({ outcome: 'differs', place: 7 });
  expect(await findCook(db, cook)).toBeUndefined();
});

it('keeps once what a new cook says twice', async () => {
  const { db } = await open(scratchFolder());
  const { cook, begun, events } = sampleCook(3);
  const incoming = [...events, events[4]].map((event) => ({ event, tServer }));
  const taken = await takeInCook(db, begun, incoming);
  expect(taken).toMatchObject({
    outcome: 'stored',
    stored: { length: events.length + 1 },
    fresh: { length: events.length },
  });
  expect((await readEvents(db, cook)).events).toHaveLength(events.length);
});

it('refuses an event of a cook that is not there', async () => {
  const { db } = await open(scratchFolder());
  const { cook, events } = sampleCook(3);
  await expect(appendEvents(db, cook, [{ event: events[1], tServer }])).rejects.toThrow(/FOREIGN KEY/);
  expect(await findCook(db, cook)).toBeUndefined();
});

it.each(['received', 'hash', 'prevHash', 'kind', 'id'])('finds damage beside the event: %s', async (column) => {
  const { cook, events, folder } = await storedCook(5);
  const { db } = await open(folder);
  const value = column === 'received' ? '2031-05-09T18:30:00.001Z' : randomUUID();
  await sql`UPDATE event SET ${sql.ref(column)} = ${value} WHERE seq = 4`.execute(db);
  const log = await readEvents(db, cook);
  expect(log.damaged[0]).toBe(4);
  expect(await damageOfNewestCook(db)).toContain('place 4');
  expect(log.events.map(({ id }) => id)).toEqual(events.toSpliced(3, 1).map(({ id }) => id));
});

it('finds an event that was taken out, and two that changed places', async () => {
  const { cook, folder } = await storedCook(5);
  const { db } = await open(folder);
  await sql`UPDATE event SET seq = 1000 WHERE seq = 4`.execute(db);
  expect((await readEvents(db, cook)).damaged).toEqual([5, 1000]);
});

it('backs up while it is written to, and the copy is whole up to some event', async () => {
  const { cook, events, folder } = await storedCook();
  const { db, backUp } = await open(folder);
  const device = sampleDevice(cook);
  const all: LogEvent[] = [...events];
  const backingUp = backUp('test', new Date());
  for (let s = 0; s < 200; s++) {
    const event = device.make('reading', sampleBodies.reading, s);
    all.push(event);
    await appendEvents(db, cook, [{ event, tServer }]);
    // Lets the copying have its turns.
    await new Promise((resolve) => setImmediate(resolve));
  }
  await backingUp;
  const [name] = readdirSync(join(folder, 'backups'));
  const restored = scratchFolder();
  writeFileSync(join(restored, 'umberpan.sqlite'), readFileSync(join(folder, 'backups', name)));
  const copy = await open(restored);
  const log = await readEvents(copy.db, cook);
  expect(log.damaged).toEqual([]);
  expect(log.events.length).toBeGreaterThanOrEqual(events.length);
  expect(log.events.map(({ id }) => id)).toEqual(all.slice(0, log.events.length).map(({ id }) => id));
});

it('opens the file anew without losing or mixing up anything', async () => {
  const { cook, events, folder } = await storedCook(3);
  const { db, reopen } = await open(folder);
  const device = sampleDevice(cook);
  const writing = Array.from({ length: 30 }, (_, s) =>
    appendEvents(db, cook, [{ event: device.make('stir', {}, s), tServer }]),
  );
  await Promise.all([...writing, reopen(), reopen()]);
  const setting = await sql<{ synchronous: number }>`PRAGMA synchronous`.execute(db);
  expect(setting.rows).toEqual([{ synchronous: 2 }]);
  const log = await readEvents(db, cook);
  expect([log.events.length, log.damaged]).toEqual([events.length + 30, []]);
});

it('can be read by any SQLite', async () => {
  const { file, events } = await storedCook(3);
  const other = openDatabase(file);
  onTestFinished(() => other.close());
  expect(
    other.prepare(`SELECT count(*) AS n, json_extract(content, '$.body.mode') AS mode FROM event`).all([]),
  ).toEqual([{ n: events.length, mode: 'live' }]);
});
