import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { sampleCook, sampleDevice, sha256 } from '../../../test/sampleCook.ts';
import { testServer } from '../../../test/testServer.ts';
import { writeCookFile } from '../../core/log/cookFile.ts';
import type { LogEvent } from '../../core/log/event.ts';

type App = Awaited<ReturnType<typeof testServer>>;

const importFile = (app: App, payload: string) =>
  app.inject({
    method: 'POST',
    url: '/api/cooks/import',
    payload,
    headers: { 'content-type': 'application/x-ndjson' },
  });

const fileOf = async (app: App, cook: string) => (await app.inject(`/api/cooks/${cook}/file`)).body;

async function appWithCook() {
  const app = await testServer();
  const sample = sampleCook();
  await app.inject({ method: 'POST', url: '/api/cooks', payload: sample.begun });
  const payload = sample.events.slice(1).toReversed();
  await app.inject({ method: 'POST', url: `/api/cooks/${sample.cook}/events`, payload });
  return { ...sample, app, file: await fileOf(app, sample.cook) };
}

it('out, into an empty store and out again is the same, byte for byte', async () => {
  const { cook, events, app, file } = await appWithCook();
  const other = await testServer();
  expect((await importFile(other, file)).json()).toEqual({ cook, events: events.length, new: events.length });
  expect(await fileOf(other, cook)).toBe(file);
  const [here, there] = await Promise.all(
    [app, other].map(async (each) => (await each.inject(`/api/cooks/${cook}`)).json()),
  );
  expect(there.state).toEqual(here.state);
  expect(there.cook).toEqual(here.cook);
});

it('taken in twice changes nothing', async () => {
  const { cook, events, app, file } = await appWithCook();
  expect((await importFile(app, file)).json()).toEqual({ cook, events: events.length, new: 0 });
  expect(await fileOf(app, cook)).toBe(file);
});

it('adds to a cook what was not here', async () => {
  const { cook, app, events } = await appWithCook();
  const more = sampleDevice(cook).make('note', { text: 'found on the phone' }, 90);
  const { new: fresh } = (await importFile(app, writeCookFile(cook, [...events, more], sha256))).json();
  expect(fresh).toBe(1);
});

it('keeps kinds, versions and fields that this Umberpan does not know', async () => {
  const { cook, begun } = sampleCook(2);
  const device = sampleDevice(cook);
  const odd: LogEvent[] = [
    { ...device.make('stir', {}, 1), kind: 'smell', body: { of: 'plums' } },
    { ...device.make('stir', {}, 2), v: 7, body: { how: 'slowly' } },
    { ...device.make('heat', { notch: 3 }, 3), body: { notch: 3, flame: 'blue' } },
    { ...device.make('stir', {}, 4), mood: 'calm' } as LogEvent,
  ];
  const events = [begun, ...odd].map((event) => ({ ...event, tServer: '2031-05-09T18:30:00.000Z' }));
  const file = writeCookFile(cook, events, sha256);
  const app = await testServer();
  expect((await importFile(app, file)).statusCode).toBe(200);
  expect(await fileOf(app, cook)).toBe(file);
  const { state } = (await app.inject(`/api/cooks/${cook}`)).json();
  expect(state.unknown).toEqual([odd[0].id, odd[1].id]);
});

it('a file of version 1 reads, and writes the same again (test/fixtures/cook-1.ndjson)', async () => {
  const file = readFileSync(new URL('../../../test/fixtures/cook-1.ndjson', import.meta.url), 'utf8');
  const app = await testServer();
  const { cook, events } = (await importFile(app, file)).json();
  expect(events).toBe(25);
  expect(await fileOf(app, cook)).toBe(file);
  const { state } = (await app.inject(`/api/cooks/${cook}`)).json();
  expect(state).toMatchObject({ mode: 'live', stepIndex: 1, unknown: [], ended: { body: { how: 'done' } } });
  expect(state.readings).toHaveLength(4);
  expect(state.deeds.find(({ kind }: { kind: string }) => kind === 'water')).toMatchObject({
    body: { spoonfuls: 2 },
    before: [{ spoonfuls: 1 }],
  });
  expect(state.struckOut).toMatchObject([{ kind: 'heat' }]);
});

it.each([
  ['a reading out of range', 'reading', { probe: 'pan', valueC: 900, quality: 'fresh', unit: 'Cel', raw: 900 }],
  ['a body of another kind', 'heat', { waterKg: 1 }],
])('refuses %s, with the line, and writes nothing', async (_, kind, body) => {
  const { cook, begun } = sampleCook(2);
  const bad: LogEvent = { ...sampleDevice(cook).make('stir', {}, 1), kind, body };
  const app = await testServer();
  const answer = await importFile(app, writeCookFile(cook, [begun, bad], sha256));
  expect(answer.statusCode).toBe(400);
  expect(answer.json().errors).toMatchObject([{ field: 'line 3' }]);
  expect((await app.inject('/api/cooks')).json().cooks).toEqual([]);
});

it('refuses a file without a beginning, a file that was changed, and one that says something else of an event', async () => {
  const { cook, events, app, file } = await appWithCook();
  const other = await testServer();
  expect((await importFile(other, writeCookFile(cook, events.slice(1), sha256))).statusCode).toBe(400);
  expect((await importFile(other, file.replace('smells of plums', 'smells of prunes'))).json().detail).toContain(
    'was changed',
  );
  const changed = events.with(2, { ...events[2], tMono: 1 } as never);
  expect((await importFile(app, writeCookFile(cook, changed, sha256))).statusCode).toBe(422);
  expect(await fileOf(app, cook)).toBe(file);
});

it('takes only files of cooks, from this site', async () => {
  const { app, file } = await appWithCook();
  const as = (headers: Record<string, string>) =>
    app.inject({ method: 'POST', url: '/api/cooks/import', payload: file, headers });
  expect((await as({ 'content-type': 'text/plain' })).statusCode).toBe(415);
  expect((await as({ 'content-type': 'application/x-ndjson', origin: 'http://evil.test' })).statusCode).toBe(403);
});
