import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it, onTestFinished } from 'vitest';
import { listeningServer } from '../../../test/liveServer.ts';
import { sampleCook } from '../../../test/sampleCook.ts';
import { scratchFolder } from '../../../test/testServer.ts';
import { readEvents } from '../store/events.ts';
import { openStore } from '../store/store.ts';

it('a cook is backed up when it begins and when it ends, and each copy opens and is whole', async () => {
  const folder = scratchFolder();
  const { address, stop } = await listeningServer(folder);
  const { cook, begun, events } = sampleCook();
  const post = (path: string, body: object) =>
    fetch(address + path, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(body),
    });
  await post('/api/cooks', begun);
  await post(`/api/cooks/${cook}/events`, events.slice(1));
  await stop();

  const copies = readdirSync(join(folder, 'backups')).toSorted();
  expect(copies.map((name) => name.replace(/^.*Z-/, ''))).toEqual(['cook-begun.sqlite', 'cook-ended.sqlite']);
  for (const [name, least] of [
    [copies[0], 1],
    [copies[1], events.length],
  ] as const) {
    const restored = scratchFolder();
    writeFileSync(join(restored, 'umberpan.sqlite'), readFileSync(join(folder, 'backups', name)));
    const store = await openStore(restored);
    onTestFinished(() => store.close());
    const log = await readEvents(store.db, cook);
    expect(log.damaged).toEqual([]);
    expect(log.events.length).toBeGreaterThanOrEqual(least);
  }
});
