import { randomBytes, randomUUID } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Migration } from 'kysely';
import { sql } from 'kysely';
import { expect, it, onTestFinished } from 'vitest';
import { scratchFolder } from '../../../test/testServer.ts';
import { defaultKit } from '../../core/pan/kit.ts';
import { createKit, findKit, listKits } from './kits.ts';
import { migrations } from './migrations/all.ts';
import { openDatabase } from './sqlite.ts';
import { openStore } from './store.ts';

async function open(folder: string, with_: Record<string, Migration> = migrations) {
  const store = await openStore(folder, with_);
  let open = true;
  const close = async () => {
    if (open) await store.close();
    open = false;
  };
  onTestFinished(close);
  return { ...store, close };
}

const addColour: Migration = {
  up: async (db) => void (await sql`ALTER TABLE kit ADD COLUMN colour TEXT`.execute(db)),
};
const failHalfWay: Migration = {
  async up(db) {
    await sql`CREATE TABLE half (id INTEGER) STRICT`.execute(db);
    await sql`SELECT * FROM nowhere`.execute(db);
  },
};

it('gives back what it kept after it was closed and opened again', async () => {
  const folder = scratchFolder();
  const first = await open(folder);
  const id = randomUUID();
  const { record } = await createKit(first.db, id, defaultKit, new Date());
  await first.close();
  expect(await findKit((await open(folder)).db, id)).toEqual(record);
});

it('writes so that a commit is on the disk when it is acknowledged, and checks references', async () => {
  const { db } = await open(scratchFolder());
  const setting = async (name: string) =>
    Object.values((await sql<object>`PRAGMA ${sql.raw(name)}`.execute(db)).rows[0] ?? {})[0];
  expect(await setting('journal_mode')).toBe('wal');
  expect(await setting('synchronous')).toBe(2);
  expect(await setting('foreign_keys')).toBe(1);
  expect(await setting('trusted_schema')).toBe(0);
  expect(await setting('user_version')).toBe(Object.keys(migrations).length);
  expect(await setting('application_id')).toBe(Buffer.from('UMBP').readUInt32BE());
  await expect(sql`INSERT INTO plan VALUES ('p', 'n', 'no such kit', '{}', '2030-01-01')`.execute(db)).rejects.toThrow(
    /FOREIGN KEY/,
  );
  await expect(sql`INSERT INTO kit VALUES ('k', 'n', '{}', 'one', '', '')`.execute(db)).rejects.toThrow(/INTEGER/);
});

it.skipIf(process.platform === 'win32')('lets nobody else read the data', async () => {
  const folder = join(scratchFolder(), 'data');
  await open(folder);
  expect(statSync(folder).mode & 0o077).toBe(0);
  expect(statSync(join(folder, 'umberpan.sqlite')).mode & 0o077).toBe(0);
});

it('makes a backup that can be opened before the tables change, and none when they do not', async () => {
  const folder = scratchFolder();
  const first = await open(folder);
  await createKit(first.db, randomUUID(), defaultKit, new Date());
  await first.close();
  await (await open(folder)).close();
  expect(existsSync(join(folder, 'backups'))).toBe(false);

  await (await open(folder, { ...migrations, '9000-colour': addColour })).close();
  const [backup, ...others] = readdirSync(join(folder, 'backups'));
  expect(backup).toMatch(/-before-9000-colour\.sqlite$/);
  expect(others).toEqual([]);
  const copy = openDatabase(join(folder, 'backups', backup ?? ''));
  onTestFinished(() => copy.close());
  expect(copy.prepare('SELECT name FROM kit').all([])).toEqual([{ name: defaultKit.name }]);
  expect(copy.prepare('SELECT * FROM kit').all([])[0]).not.toHaveProperty('colour');
});

it('keeps the newest ten backups', async () => {
  const folder = scratchFolder();
  const growing: Record<string, Migration> = { ...migrations };
  await (await open(folder, growing)).close();
  for (let count = 0; count < 12; count++) {
    growing[`9${count.toString().padStart(3, '0')}-nothing`] = { up: async () => {} };
    await (await open(folder, growing)).close();
  }
  const backups = readdirSync(join(folder, 'backups')).toSorted();
  expect(backups).toHaveLength(10);
  expect(backups.at(-1)).toMatch(/before-9011-nothing/);
  expect(backups[0]).toMatch(/before-9002-nothing/);
});

it('leaves the tables as they were when a change to them fails half-way', async () => {
  const folder = scratchFolder();
  const first = await open(folder);
  await createKit(first.db, randomUUID(), defaultKit, new Date());
  await first.close();
  const broken = { ...migrations, '9000-colour': addColour, '9001-broken': failHalfWay };
  await expect(openStore(folder, broken)).rejects.toThrow(/is as it was: no such table: nowhere/);
  const { db } = await open(folder);
  expect(await listKits(db)).toHaveLength(1);
  const { rows } = await sql<{ name: string }>`SELECT name FROM sqlite_schema WHERE name = 'half'`.execute(db);
  expect(rows).toEqual([]);
  expect((await sql<object>`SELECT * FROM kit`.execute(db)).rows[0]).not.toHaveProperty('colour');
});

it('is marked with its version also when the start that brought it up to date was cut off before that', async () => {
  const folder = scratchFolder();
  const newer = { ...migrations, '9000-colour': addColour };
  const first = await open(folder, newer);
  await sql`PRAGMA user_version = 1`.execute(first.db);
  await first.close();
  await (await open(folder, newer)).close();
  await expect(openStore(folder)).rejects.toThrow(/written by a newer Umberpan/);
});

it('does not open a file of a newer Umberpan', async () => {
  const folder = scratchFolder();
  await (await open(folder, { ...migrations, '9000-colour': addColour })).close();
  await expect(openStore(folder)).rejects.toThrow(/written by a newer Umberpan/);
});

it("does not touch another program's database", async () => {
  const folder = scratchFolder();
  const file = join(folder, 'umberpan.sqlite');
  const other = openDatabase(file);
  other.exec('CREATE TABLE theirs (id INTEGER)');
  other.close();
  await expect(openStore(folder)).rejects.toThrow(/another program's database/);
  const after = openDatabase(file);
  onTestFinished(() => after.close());
  expect(after.prepare('SELECT name FROM sqlite_schema').all([])).toEqual([{ name: 'theirs' }]);
});

it.each([
  ['is no database at all', () => randomBytes(8192)],
  ['was cut off', (whole: Buffer) => whole.subarray(0, 4096)],
])('leaves a file that %s untouched, and says so', async (_, damage) => {
  const folder = scratchFolder();
  await (await open(folder)).close();
  const file = join(folder, 'umberpan.sqlite');
  const damaged = damage(readFileSync(file));
  writeFileSync(file, damaged);
  await expect(openStore(folder)).rejects.toThrow(/is damaged and was left untouched/);
  expect(readFileSync(file).equals(damaged)).toBe(true);
});

it('belongs to one owner at a time; a second is told where the first listens', async () => {
  const folder = scratchFolder();
  const first = await open(folder);
  first.tellAddress('http://127.0.0.1:8327/');
  await expect(openStore(folder)).rejects.toThrow(
    new RegExp(`already runs .* listens at http://127.0.0.1:8327/ \\(process ${process.pid}\\)`),
  );
  await first.close();
  await open(folder);
});
