import { randomUUID } from 'node:crypto';
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it, onTestFinished } from 'vitest';
import { scratchFolder } from '../../../test/testServer.ts';
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
