import { createHash, randomUUID } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { sampleCook } from '../../../test/sampleCook.ts';
import { scratchFolder } from '../../../test/testServer.ts';
import { defaultKit } from '../../core/pan/kit.ts';
import { defaultRequest } from '../../core/planning/request.ts';
import { beginCook } from './cooks.ts';
import { appendEvents } from './events.ts';
import { createKit } from './kits.ts';
import { createPlan } from './plans.ts';
import { restoreWorkspace } from './restore.ts';
import { openStore } from './store.ts';
import { workspaceText } from './workspace.ts';

const now = new Date('2031-05-09T18:30:00Z');

/** A kit, its plan and a cook of odd text, as a workspace's file. */
async function written(): Promise<string> {
  const store = await openStore(scratchFolder());
  const kitId = randomUUID();
  await createKit(store.db, kitId, { ...defaultKit, name: 'Hall “B”, päivä \u{1f36e} \\u0000' }, now);
  await createPlan(store.db, randomUUID(), { kitId, request: defaultRequest }, now);
  for (const cook of [sampleCook(), sampleCook(3)]) {
    await beginCook(store.db, cook.begun, now.toISOString());
    const incoming = cook.events.map((event) => ({ event, tServer: now.toISOString() }));
    expect((await appendEvents(store.db, cook.cook, incoming)).outcome).toBe('stored');
  }
  const text = await textOf(store);
  await store.close();
  return text;
}

async function textOf(store: Awaited<ReturnType<typeof openStore>>): Promise<string> {
  let text = '';
  for await (const piece of workspaceText(store.db)) text += piece;
  return text;
}

function hashedAnew(text: string): string {
  const rows = text.split('\n').slice(1, -2);
  const hash = createHash('sha256');
  for (const row of rows) hash.update(`${row.replace(/,$/, '')}\n`);
  return text.replace(/"sha256":"[^"]+"/, `"sha256":"${hash.digest('hex')}"`);
}

function kept(text: string): string {
  const file = join(scratchFolder(), 'workspace.json');
  writeFileSync(file, text);
  return file;
}

it('is byte for byte the same after it was taken in and written out again; taking it in twice changes nothing', async () => {
  const text = await written();
  expect(JSON.parse(text)).toMatchObject({ format: 'umberpan-workspace', count: text.split('\n').length - 3 });
  const file = kept(text);
  const folder = join(scratchFolder(), 'new');
  mkdirSync(folder);
  expect(await restoreWorkspace(file, folder)).toMatchObject({ kind: 'restored' });
  const store = await openStore(folder);
  expect(await textOf(store)).toBe(text);
  await store.close();
  expect(await restoreWorkspace(file, folder)).toEqual({ kind: 'same' });
  expect(readFileSync(file, 'utf8')).toBe(text);
});

it('an empty workspace goes round, too', async () => {
  const store = await openStore(scratchFolder());
  const text = await textOf(store);
  await store.close();
  expect(JSON.parse(text)).toMatchObject({ rows: [], count: 0 });
  const folder = scratchFolder();
  expect(await restoreWorkspace(kept(text), folder)).toEqual({ kind: 'restored', rows: 0 });
});

it.each([
  [
    'a letter of an event changed',
    (text: string) => text.replace('Europe/Brussels', 'Europe/Bruxelle'),
    /not as it was written/,
  ],
  ['a letter of a kit changed', (text: string) => text.replace('Hall', 'Ball'), /was changed/],
  ['cut off', (text: string) => text.slice(0, -400), /line \d+|cut off/],
  ['a line left out', (text: string) => text.split('\n').toSpliced(1, 1).join('\n'), /line \d+|cut off/],
  ['no workspace', () => '{"format":"something"}\n', /line 1: this is not the file of a workspace/],
  [
    'written by a later one',
    (text: string) => text.replace(/"tables":"[^"]+"/, '"tables":"9999-later"'),
    /line 1: a later/,
  ],
  ['a table that nobody knows', (text: string) => text.replace('["kit",', '["device",'), /line 2: this is no row/],
  ['a line that is no row', (text: string) => text.replace(/\["kit",.*/, '{"kit":1},'), /line 2: this is no row/],
  ['an event without its time', (text: string) => text.replace(/"received":"[^"]+",/, ''), /not as it was written/],
  [
    'a kit that nobody could have kept, hashed as if somebody had',
    (text: string) => hashedAnew(text.replace(/\\"ratedPowerW\\":\d+/, '\\"ratedPowerW\\":-1')),
    /line 2: this row of kit can't be taken in: kit.stove.ratedPowerW is -1/,
  ],
])('is refused whole when %s', async (_, change, reason) => {
  const folder = scratchFolder();
  const broken = kept(change(await written()));
  await expect(restoreWorkspace(broken, folder)).rejects.toThrow(reason);
  expect(existsSync(join(folder, 'umberpan.sqlite'))).toBe(false);
  const store = await openStore(folder);
  expect(JSON.parse(await textOf(store))).toMatchObject({ count: 0 });
  await store.close();
});

it('is not mixed with what is there', async () => {
  const folder = scratchFolder();
  await restoreWorkspace(kept(await written()), folder);
  await expect(restoreWorkspace(kept(await written()), folder)).rejects.toThrow(/has other things in it/);
});
