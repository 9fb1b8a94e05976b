import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { sql } from 'kysely';
import { expect, it, onTestFinished } from 'vitest';
import { sampleBodies, sampleCook, sampleDevice } from '../../../test/sampleCook.ts';
import { scratchFolder } from '../../../test/testServer.ts';
import { backupsIn, newestBackupMs } from './backup.ts';
import { beginCook } from './cooks.ts';
import { appendEvents } from './events.ts';
import { proveCopy } from './proveCopy.ts';
import { openStore } from './store.ts';

const tServer = '2031-05-09T18:30:00.000Z';
const startMs = Date.parse(tServer);
const at = (hours: number) => new Date(startMs + hours * 3_600_000);

async function stored(readings = 40) {
  const folder = scratchFolder();
  const store = await openStore(folder);
  onTestFinished(() => store.close());
  const sample = sampleCook(readings);
  await beginCook(store.db, sample.begun, tServer);
  const incoming = sample.events.slice(1).map((event) => ({ event, tServer }));
  await appendEvents(store.db, sample.cook, incoming);
  return { ...sample, ...store, folder, backups: join(folder, 'backups') };
}

it('a copy is proved by the hash of each of its events: 100 of 100 that were changed are found', async () => {
  const { events, backUp, backups } = await stored(90);
  await backUp('test', at(0));
  const [file] = backupsIn(backups);
  expect(await proveCopy(file)).toEqual([]);
  const whole = readFileSync(file);
  let found = 0;
  for (let round = 0; round < 100; round++) {
    const place = 1 + ((round * 37) % (events.length - 1));
    const id = Buffer.from(`"id":"${events[place].id}"`);
    const damaged = Buffer.from(whole);
    for (let copy = whole.indexOf(id); copy >= 0; copy = whole.indexOf(id, copy + 1)) damaged[copy + 10] ^= 1 + round;
    expect(damaged.equals(whole)).toBe(false);
    writeFileSync(file, damaged);
    expect(await proveCopy(file)).toEqual([place + 1]);
    found += 1;
  }
  console.log(`${found} of 100 changed events found`);
}, 60_000);

it('a copy that lost events, or is cut off, does not pass', async () => {
  const { backUp, backups } = await stored();
  await backUp('test', at(0));
  const [file] = backupsIn(backups);
  const whole = readFileSync(file);
  writeFileSync(file, whole.subarray(0, whole.length - 3 * 4096));
  await expect(proveCopy(file)).rejects.toThrow();
  expect(existsSync(file)).toBe(true);
});

it('copies of a store with a damaged event are kept apart, and push out no whole one', async () => {
  const { db, backUp, backups } = await stored(5);
  for (let hour = 0; hour < 3; hour++) await backUp('whole', at(hour));
  await sql`UPDATE event SET content = replace(content, 'plums', 'prunes')`.execute(db);
  for (let hour = 3; hour < 15; hour++) await backUp('later', at(hour));
  const names = readdirSync(backups).toSorted();
  expect(names.filter((name) => name.endsWith('-whole.sqlite'))).toHaveLength(3);
  expect(names.filter((name) => name.endsWith('-later-damaged.sqlite'))).toHaveLength(10);
  expect(backupsIn(backups)[0]).toMatch(/T203000\.000Z-whole\.sqlite$/);
  expect(newestBackupMs(backups)).toBe(at(14).getTime());
});

it('the newest ten are kept, and a half-made one is never counted', async () => {
  const { backUp, backups } = await stored(3);
  for (let hour = 0; hour < 12; hour++) await backUp('test', at(hour));
  writeFileSync(join(backups, '2031-05-10T120000.000Z-test.sqlite.part'), 'half');
  expect(backupsIn(backups)).toHaveLength(10);
  expect(newestBackupMs(backups)).toBe(at(11).getTime());
  expect(newestBackupMs(scratchFolder())).toBeUndefined();
  await backUp('test', at(13));
  expect(readdirSync(backups).filter((name) => name.includes('.part'))).toEqual([]);
});

it('what is written while a copy is proved does not wait for the proof', async () => {
  const { cook, db, backUp } = await stored(3000);
  const device = sampleDevice(cook);
  let done = false;
  const backingUp = backUp('test', at(0)).then(() => {
    done = true;
  });
  let written = 0;
  while (!done) {
    await appendEvents(db, cook, [{ event: device.make('reading', sampleBodies.reading, written), tServer }]);
    written += 1;
    await new Promise((resolve) => setImmediate(resolve));
  }
  await backingUp;
  expect(written).toBeGreaterThan(5);
}, 30_000);
