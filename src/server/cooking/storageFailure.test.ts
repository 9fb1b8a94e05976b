import { sql } from 'kysely';
import { expect, it } from 'vitest';
import { follow, listeningServer } from '../../../test/liveServer.ts';
import { sampleCook, sampleDevice } from '../../../test/sampleCook.ts';
import { scratchFolder } from '../../../test/testServer.ts';
import { createRing } from './ring.ts';

const note = 'x'.repeat(2000);

async function fullDisk(retryMs: number) {
  const folder = scratchFolder();
  const server = await listeningServer(folder, { retryMs });
  const { cook, begun } = sampleCook();
  const device = sampleDevice(cook);
  const post = (path: string, body: object) =>
    fetch(`${server.address}${path}`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(body),
    });
  await post('/api/cooks', begun);
  // As the file of a full disk: it has room for a few pages more and then no longer grows.
  const { rows } = await sql<{ page_count: number }>`PRAGMA page_count`.execute(server.store.db);
  await sql.raw(`PRAGMA max_page_count = ${rows[0].page_count + 5}`).execute(server.store.db);
  const url = `/api/cooks/${cook}/events`;
  const add = (second: number) => {
    const event = device.make('note', { text: note }, second);
    return post(url, event).then((answer) => ({ answer, event }));
  };
  const stored = async () => {
    const { events } = await (await fetch(`${server.address}${url}?since=1`)).json();
    return (events as { id: string }[]).map(({ id }) => id);
  };
  return { ...server, folder, cook, url, post, add, stored };
}

it('on a full disk the server goes on: what is not written is not acknowledged, shown, and written when there is room', async () => {
  const { address, cook, url, post, add, stored } = await fullDisk(400);
  const screen = await follow(`${address}/api/cooks/${cook}/live`);
  const acknowledged: string[] = [];
  let refused: Awaited<ReturnType<typeof add>> | undefined;
  for (let second = 1; second < 40 && !refused; second++) {
    const tried = await add(second);
    if (tried.answer.status === 201) acknowledged.push(tried.event.id);
    else refused = tried;
  }
  expect(refused?.answer.status).toBe(503);
  expect(refused?.answer.headers.get('retry-after')).toBe('5');
  expect(await refused?.answer.json()).toMatchObject({
    type: '/api/problems#store-failed',
    detail: expect.stringContaining('the disk is full'),
  });
  const again = await add(50);
  expect(again.answer.status).toBe(503);
  expect(await stored()).toEqual(acknowledged);

  const waiting = [refused?.event.id, again.event.id];
  await screen.until(() => screen.all('pending').length === 2);
  expect(screen.all('storage')[0].data).toMatchObject({ state: 'failing', reason: 'the disk is full' });
  expect(screen.all('pending').map(({ data }) => (data as { id: string }).id)).toEqual(waiting);

  // The next try is over a fresh connection, for which the disk has room.
  await screen.until(() => screen.all('storage').some(({ data }) => (data as { state: string }).state === 'well'));
  expect(await stored()).toEqual([...acknowledged, ...waiting]);
  expect(screen.logged().map(({ id }) => id)).toEqual([...acknowledged, ...waiting]);
  expect((await post(url, again.event)).status).toBe(201);
  expect((await stored()).length).toBe(acknowledged.length + 2);
});

it('what is held is written when the server is stopped before the next try', async () => {
  const { add, stop, folder, cook } = await fullDisk(60_000);
  const ids: string[] = [];
  for (let second = 1; second <= 12; second++) ids.push((await add(second)).event.id);
  await stop();
  const next = await listeningServer(folder);
  const { events } = await (await fetch(`${next.address}/api/cooks/${cook}/events?since=1`)).json();
  expect((events as { id: string }[]).map(({ id }) => id)).toEqual(ids);
});

it('what is held is bounded: the oldest is given up first, and counted', () => {
  const device = sampleDevice('00000000-0000-4000-8000-000000000001');
  const incoming = Array.from({ length: 30 }, (_, s) => ({
    event: device.make('stir', {}, s),
    tServer: '2031-05-09T18:30:00.000Z',
  }));
  const ring = createRing({ events: 10, characters: 1e6 });
  expect(ring.hold(incoming.slice(0, 8))).toHaveLength(8);
  expect(ring.hold(incoming)).toHaveLength(22);
  expect([ring.size, ring.dropped]).toEqual([10, 20]);
  expect(ring.oldest(3)).toEqual(incoming.slice(20, 23));
  ring.release(incoming.slice(20, 23));
  expect([ring.size, ring.oldest(1)]).toEqual([7, [incoming[23]]]);
  const narrow = createRing({ events: 100, characters: 1000 });
  narrow.hold(incoming);
  expect(narrow.size).toBeLessThan(4);
  expect(narrow.size + narrow.dropped).toBe(30);
});

it('four hours of readings each second can be held', () => {
  const device = sampleDevice('00000000-0000-4000-8000-000000000001');
  const reading = { probe: 'pan', valueC: 121.4, quality: 'fresh', unit: 'Cel', raw: 121.4 } as const;
  const ring = createRing();
  for (let s = 0; s < 14_400; s++) {
    ring.hold([{ event: device.make('reading', reading, s), tServer: '2031-05-09T18:30:00.000Z' }]);
  }
  expect([ring.size, ring.dropped]).toEqual([14_400, 0]);
});
