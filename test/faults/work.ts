// What a process does when it is killed or hindered: `work.ts <what> <folder>`. It says each thing only after it is on the disk.
import { join } from 'node:path';
import { sql } from 'kysely';
import { buildServer } from '../../src/server/server.ts';
import { backupsIn } from '../../src/server/store/backup.ts';
import { runningCooks } from '../../src/server/store/cooks.ts';
import { appendEvents } from '../../src/server/store/events.ts';
import { openStore, type Store } from '../../src/server/store/store.ts';
import { sampleBodies, sampleDevice } from '../sampleCook.ts';
import { laterMigrations } from './laterMigrations.ts';

const say = (line: string) => process.stdout.write(`${line}\n`);

const works: Readonly<Record<string, (folder: string) => Promise<void>>> = {
  async migrate(folder) {
    say(`ready ${process.pid}`);
    await openStore(folder, laterMigrations);
    say('migrated');
    await forever();
  },

  /** Writes, and makes one backup after the other. */
  async backUp(folder) {
    const store = await openStore(folder);
    const write = await writer(store);
    say(`ready ${process.pid}`);
    for (let turn = 0; ; turn++) {
      const written = await write();
      say(written);
      await store.backUp('turn', new Date(Date.now() + turn));
      say(`backup ${backupsIn(join(folder, 'backups'))[0]} ${written}`);
    }
  },

  /** Writes, and moves what was written from the log to the file. */
  async checkpoint(folder) {
    const store = await openStore(folder);
    const write = await writer(store);
    say(`ready ${process.pid}`);
    for (;;) {
      for (let turn = 0; turn < 5; turn++) say(await write());
      await sql`PRAGMA wal_checkpoint(TRUNCATE)`.execute(store.db);
    }
  },

  async serve(folder) {
    const store = await openStore(folder);
    const app = await buildServer({ store, pages: folder, retryMs: 200 });
    const address = await app.listen({ host: '127.0.0.1', port: 0 });
    say(`ready ${process.pid}`);
    say(address);
    process.once('SIGTERM', async () => {
      await app.close();
      await store.close();
    });
  },
};

/** Adds a reading to the cook that is there; gives its id once it is written. */
async function writer({ db }: Store): Promise<() => Promise<string>> {
  const [{ id: cook }] = await runningCooks(db);
  const device = sampleDevice(cook);
  let second = 0;
  return async () => {
    const event = device.make('reading', sampleBodies.reading, second++);
    await appendEvents(db, cook, [{ event, tServer: new Date().toISOString() }]);
    return event.id;
  };
}

function forever(): Promise<void> {
  return new Promise(() => setInterval(() => {}, 1000));
}

const [what = '', folder = ''] = process.argv.slice(2);
await works[what](folder);
