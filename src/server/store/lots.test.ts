import { randomUUID } from 'node:crypto';
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it, onTestFinished } from 'vitest';
import { scratchFolder } from '../../../test/testServer.ts';
import { lotRecordSchema } from '../../api/lot.ts';
import { defaultKit } from '../../core/pan/kit.ts';
import { createKit, findKit } from './kits.ts';
import { listLots } from './lots.ts';
import { migrations } from './migrations/all.ts';
import { openStore } from './store.ts';

it('opens a store from before lots with everything in it, after a backup', async () => {
  const folder = scratchFolder();
  const before = Object.fromEntries(Object.entries(migrations).filter(([name]) => name < '0003'));
  const old = await openStore(folder, before);
  const id = randomUUID();
  const { record } = await createKit(old.db, id, defaultKit, new Date());
  await old.close();
  const now = await openStore(folder);
  onTestFinished(() => now.close());
  expect(await findKit(now.db, id)).toEqual(record);
  expect(await listLots(now.db, 10)).toEqual([]);
  expect(readdirSync(join(folder, 'backups'))).toEqual([expect.stringMatching(/before-0003-lots\.sqlite$/)]);
});

it('fills in for an earlier lot what it did not say: its cook tells whether it is real', async () => {
  const folder = scratchFolder();
  const old = await openStore(folder, Object.fromEntries(Object.entries(migrations).filter(([name]) => name < '0005')));
  const time = '2030-01-01T10:00:00.000Z';
  const flat = { low: 1, mid: 1, high: 1 };
  const expected = { massKg: flat, waterShare: flat, inverted: flat, a430: flat, ebc: flat, srm: flat, icumsa: flat };
  const said = { name: 'A', cookId: null, planId: null, madeAt: time, form: 'hard', expected, weighedKg: null };
  const cook = randomUUID();
  const rehearsal = { id: cook, name: 'R', mode: 'rehearsal', begun: time, ended: null } as const;
  await old.db.insertInto('cook').values(rehearsal).execute();
  for (const of of [cook, null]) {
    const body = JSON.stringify({ ...said, cookId: of });
    const row = {
      id: randomUUID(),
      name: 'A',
      cook: of,
      plan: null,
      body,
      made: time,
      version: 1,
      created: time,
      updated: time,
    };
    await old.db
      .insertInto('lot')
      .values(row as never)
      .execute();
  }
  await old.close();
  const now = await openStore(folder);
  onTestFinished(() => now.close());
  const lots = await listLots(now.db, 10);
  expect(lots.map(({ lot }) => [lot.cookId === null, lot.origin, lot.alkali]).toSorted()).toEqual([
    [false, 'rehearsed', null],
    [true, 'cooked', null],
  ]);
  expect(lots.every((lot) => lotRecordSchema.safeParse(lot).success)).toBe(true);
});
