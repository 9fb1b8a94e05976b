import { createHash, randomUUID } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { sampleCook } from '../../../test/sampleCook.ts';
import { scratchFolder } from '../../../test/testServer.ts';
import type { NewGlass } from '../../api/glass.ts';
import type { KeptLot } from '../../api/lot.ts';
import type { NewNote } from '../../api/lotNote.ts';
import { descriptors, type Strengths } from '../../core/lot/taste.ts';
import { defaultKit } from '../../core/pan/kit.ts';
import { defaultRequest } from '../../core/planning/request.ts';
import { beginCook } from './cooks.ts';
import { allDevices, keepDevice } from './devices.ts';
import { appendEvents } from './events.ts';
import { createGlass, listGlasses } from './glasses.ts';
import { createKit } from './kits.ts';
import { createNote } from './lotNotes.ts';
import { createLot, findLot, shelveLot } from './lots.ts';
import { createPlan } from './plans.ts';
import { restoreWorkspace } from './restore.ts';
import { openStore } from './store.ts';
import { createTasting, listTastings } from './tastings.ts';
import { workspaceText } from './workspace.ts';

const now = new Date('2031-05-09T18:30:00Z');

const at = now.toISOString();
const strengths = { ...Object.fromEntries(descriptors.map((name) => [name, null])), toffee: 3, bitter: 0 } as Strengths;
const flat = { low: 0.1, mid: 0.25, high: 0.4 };
const lot: KeptLot = {
  name: 'Shards “<b>”, jää \u2028',
  origin: 'cooked',
  alkali: { substance: 'sodiumHydroxide', gramsPerKgSucrose: 5 },
  cookId: null,
  planId: null,
  madeAt: at,
  form: 'hard',
  expected: { massKg: flat, waterShare: flat, inverted: flat, a430: flat, ebc: flat, srm: flat, icumsa: flat },
  weighedKg: 0.391,
};
const notes: readonly NewNote[] = [
  {
    kind: 'measured',
    at,
    reading: { method: 'refractometer', brix: 25.6, temperatureC: 22, compensated: false, sugarG: 10, waterG: 20 },
  },
  { kind: 'tasted', at, strengths, texture: 'dry snap', note: 'snaps\n“clean”', blind: true },
  { kind: 'stocked', at, how: 'took', kg: 0.12, why: 'Abbey' },
];
const glassWith = (lotId: string): NewGlass => ({
  name: 'Abbey \u{1f37a}',
  rest: { volumeL: 20, gravity: 1.06, a430PerCm: 0.4, attenuation: 0.75, sodiumMgPerL: 0, calciumMgPerL: 0 },
  doses: [
    { sugar: { kind: 'lot', lotId, alkali: null, fermentable: null, pricePerKg: null }, massKg: 0.3, added: 'kettle' },
  ],
  kettleLossL: 0,
  pathCm: 7,
  boughtPricePerKg: null,
  bottledOn: '2031-06-01',
});
/** What a device was let in with. It must not leave the store. */
const tokenHash = 'f00d'.repeat(16);

/** A workspace's file with something of everything, of odd text, from a store that has let a device in. */
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
  await writeShelf(store);
  const text = await textOf(store);
  await store.close();
  return text;
}

/** A lot with a note of each kind, one that was taken off the shelf, a glass with a tasting; and a device beside them. */
async function writeShelf({ db }: Awaited<ReturnType<typeof openStore>>): Promise<void> {
  const [lotId, offId, glassId] = [randomUUID(), randomUUID(), randomUUID()];
  await createLot(db, lotId, lot, now);
  for (const note of notes) await createNote(db, { id: randomUUID(), lotId, note }, now);
  await createLot(db, offId, { ...lot, origin: 'told', alkali: null, weighedKg: null, form: 'syrup' }, now);
  await shelveLot(db, offId, now);
  await createGlass(db, glassId, glassWith(lotId), now);
  const tasting = { tastedAt: at, weeks: 3.5, strengths, liking: 8, note: 'a “second” pint?' };
  await createTasting(db, { id: randomUUID(), glassId, tasting }, now);
  const device = { id: randomUUID(), name: 'Pocket phone', role: 'keeper', tokenHash } as const;
  await keepDevice(db, { ...device, paired: at, lastSeen: at, expires: null, cook: null });
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

it('holds something of all that a person keeps, and nothing of who was let in', async () => {
  const text = await written();
  const tables = (JSON.parse(text) as { rows: [string, object][] }).rows.map(([table]) => table);
  const count = (table: string) => tables.filter((each) => each === table).length;
  expect(['kit', 'plan', 'cook', 'lot', 'lot_note', 'glass', 'tasting'].map(count)).toEqual([1, 1, 2, 2, 3, 1, 1]);
  expect([...new Set(tables)]).toHaveLength(8);
  expect(count('event')).toBeGreaterThan(0);
  expect(text).not.toMatch(/Pocket phone|f00df00d/);
});

it('gives lots, notes, glasses and tastings back as they were kept', async () => {
  const folder = scratchFolder();
  await restoreWorkspace(kept(await written()), folder);
  const store = await openStore(folder);
  const [off, on] = (await store.db.selectFrom('lot').selectAll().execute()).toSorted((a) => (a.removed ? -1 : 1));
  expect(off?.removed).toBe(at);
  const found = await findLot(store.db, on?.id ?? '');
  expect(found).toMatchObject({ lot, removed: null });
  expect(found?.notes.map(({ note }) => note)).toEqual(expect.arrayContaining([...notes]));
  const [glass] = await listGlasses(store.db, 10);
  expect(glass?.glass).toEqual(glassWith(on?.id ?? ''));
  expect(await listTastings(store.db, glass?.id ?? '')).toMatchObject([{ tasting: { liking: 8, strengths } }]);
  expect(await allDevices(store.db)).toEqual([]);
  await store.close();
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
  ['a letter of a lot changed', (text: string) => text.replace('Shards', 'Chards'), /was changed/],
  [
    'a tasting that nobody could have kept, hashed as if somebody had',
    (text: string) => hashedAnew(text.replace(/\\"liking\\":8/, '\\"liking\\":11')),
    /this row of tasting can't be taken in: tasting.liking is 11/,
  ],
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
