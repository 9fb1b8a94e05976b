import { randomUUID } from 'node:crypto';
import { expect, it, vi } from 'vitest';
import { begunBody, sampleDevice, sha256 } from '../../../test/sampleCook.ts';
import { scratchFolder, testServer } from '../../../test/testServer.ts';
import type { BookEntry } from '../../api/book.ts';
import { writeCookFile } from '../../core/log/cookFile.ts';
import type { LogEvent } from '../../core/log/event.ts';
import { buildServer } from '../server.ts';
import { openStore } from '../store/store.ts';

type App = Awaited<ReturnType<typeof testServer>>;

/** The file of a small cook: half an hour, a reading a minute unless told. */
function cookFile(
  mode: 'live' | 'rehearsal' = 'live',
  readingsAMinute = 1,
): { readonly id: string; readonly file: string } {
  const id = randomUUID();
  const device = sampleDevice(id);
  const rehearsal = mode === 'rehearsal' ? { seed: 1, speed: 1 } : null;
  const events: LogEvent[] = [device.make('begun', { ...begunBody, mode, rehearsal }, 0)];
  events.push(device.make('heat', { notch: 6 }, 5));
  for (let count = 1; count <= 30 * readingsAMinute; count++) {
    const minute = count / readingsAMinute;
    const valueC = Math.min(140, 21 + 6 * minute);
    events.push(
      device.make('reading', { probe: 'pan', valueC, quality: 'fresh', unit: 'Cel', raw: valueC }, 60 * minute),
    );
    if (minute === 22) events.push(device.make('step', { index: 1 }, 60 * minute + 5));
  }
  events.push(device.make('poured', {}, 1810), device.make('ended', { how: 'done' }, 1860));
  return { id, file: writeCookFile(id, events, sha256) };
}

const takeIn = (app: App, payload: string) =>
  app.inject({
    method: 'POST',
    url: '/api/cooks/import',
    payload,
    headers: { 'content-type': 'application/x-ndjson' },
  });

async function book(app: App): Promise<readonly BookEntry[]> {
  return (await app.inject('/api/book')).json().entries;
}

async function bookMade(app: App): Promise<readonly BookEntry[]> {
  for (;;) {
    const entries = await book(app);
    if (entries.every(({ due }) => !due)) return entries;
    await new Promise((resolve) => setTimeout(resolve, 30));
  }
}

vi.setConfig({ testTimeout: 30_000 });

it('tells of each cook what it landed at, once its log was gone through, and rehearsals as such', async () => {
  const app = await testServer();
  const real = cookFile();
  const rehearsed = cookFile('rehearsal');
  for (const { file } of [real, rehearsed]) expect((await takeIn(app, file)).statusCode).toBe(200);
  const entries = await bookMade(app);
  expect(entries.map(({ cook }) => cook.mode).toSorted()).toEqual(['live', 'rehearsal']);
  const { summary } = entries.find(({ cook }) => cook.id === real.id) as BookEntry;
  expect(summary?.poured).toBe(true);
  expect(summary?.landed?.ebc.low).toBeLessThan(summary?.landed?.ebc.high ?? 0);
  expect(summary?.steps.map(({ kind }) => kind)).toEqual(['invert', 'brown']);
  const { celsius = [], colours = [] } = summary?.line ?? {};
  expect(colours).toHaveLength(Math.ceil(celsius.length / 4));
  expect(summary?.facts.find(({ what }) => what === 'Colour')?.value).toBeCloseTo(summary?.landed?.ebc.mid ?? 0, 2);
});

it('goes to the end of a log that is read in several turns', async () => {
  const app = await testServer();
  const [long, other] = [cookFile('live', 40), cookFile()];
  for (const { file } of [other, long]) expect((await takeIn(app, file)).statusCode).toBe(200);
  const entries = await bookMade(app);
  const [few, many] = [other, long].map(({ id }) => entries.find(({ cook }) => cook.id === id)?.summary);
  expect(many).toMatchObject({ poured: true, endS: few?.endS });
  expect(many?.steps.map(({ kind }) => kind)).toEqual(['invert', 'brown']);
});

it('makes the very same summary from the log again, and another when something is added to the log', async () => {
  const folder = scratchFolder();
  const store = await openStore(folder);
  const app = await buildServer({ store, pages: scratchFolder() });
  const { id, file } = cookFile();
  await takeIn(app, file);
  const [before] = await bookMade(app);
  await store.db.deleteFrom('cook_summary').execute();
  const [gone] = await book(app);
  expect(gone).toMatchObject({ summary: null, due: true });
  expect(await bookMade(app)).toEqual([before]);

  const test = sampleDevice(id).make('spoonTest', { a430: 9, behaviour: null, taste: [] }, 1500);
  await app.inject({ method: 'POST', url: `/api/cooks/${id}/events`, payload: test });
  const [after] = await bookMade(app);
  expect(after.cook.lastSeq).toBeGreaterThan(before.cook.lastSeq);
  expect(after.summary?.landed).not.toEqual(before.summary?.landed);
  await app.close();
  await store.close();
});

it('does not go through a cook that is under way', async () => {
  const app = await testServer();
  const cook = randomUUID();
  const payload = sampleDevice(cook).make('begun', begunBody, 0);
  await app.inject({ method: 'POST', url: '/api/cooks', payload });
  expect(await book(app)).toMatchObject([{ cook: { id: cook, ended: null }, summary: null, due: false }]);
});

it('says what is allowed when asked for too many', async () => {
  const app = await testServer();
  const answer = await app.inject('/api/book?limit=1001');
  expect(answer.statusCode).toBe(400);
  expect(answer.json().detail).toMatch(/limit.*1 to 1000/);
});
