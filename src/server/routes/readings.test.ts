import { randomUUID } from 'node:crypto';
import { expect, it } from 'vitest';
import { sampleCook, sampleDevice } from '../../../test/sampleCook.ts';
import { testServer } from '../../../test/testServer.ts';

type App = Awaited<ReturnType<typeof testServer>>;

async function withCook(app: App) {
  const { cook, begun } = sampleCook();
  await app.inject({ method: 'POST', url: '/api/cooks', payload: begun });
  return cook;
}

async function lastReading(app: App, cook: string) {
  const { events } = (await app.inject(`/api/cooks/${cook}/events`)).json();
  return events.at(-1);
}

const text = (app: App, query: string, payload: string) =>
  app.inject({ method: 'POST', url: `/api/readings?${query}`, payload, headers: { 'content-type': 'text/plain' } });

it.each([
  ['Cel', 121.4, 121.4, 121.4],
  ['[degF]', 250, 121.11111111111111, 250],
  ['K', 394.15, 121, 394.15],
  ['F', '250', 121.11111111111111, 250],
  ['°C', '121,5', 121.5, 121.5],
])('a number in %s is taken, and kept as it was sent: %s', async (unit, value, valueC, raw) => {
  const app = await testServer();
  const cook = await withCook(app);
  const answer = await app.inject({
    method: 'POST',
    url: '/api/readings',
    payload: { cook, probe: 'pan', value, unit },
  });
  expect(answer.statusCode).toBe(201);
  const { kind, body } = await lastReading(app, cook);
  expect(kind).toBe('reading');
  expect(body).toMatchObject({ probe: 'pan', quality: 'fresh', raw });
  expect(body.valueC).toBeCloseTo(valueC, 9);
});

it.each([-127, 999, '--', '', 'nan', null])(
  '%j is no temperature: the reading is lost, and what was sent is kept',
  async (value) => {
    const app = await testServer();
    const cook = await withCook(app);
    const answer = await app.inject({ method: 'POST', url: '/api/readings', payload: { cook, value, unit: 'Cel' } });
    expect(answer.statusCode).toBe(201);
    expect((await lastReading(app, cook)).body).toMatchObject({ valueC: null, quality: 'lost', raw: value });
  },
);

it('a plain number goes to the cook that is running', async () => {
  const app = await testServer();
  const cook = await withCook(app);
  expect((await text(app, 'unit=F', '250\n')).statusCode).toBe(201);
  expect((await lastReading(app, cook)).body).toMatchObject({ probe: 'probe', unit: '[degF]', raw: 250 });
});

it('asks which cook, when none or several are running', async () => {
  const app = await testServer();
  expect((await text(app, 'unit=C', '120')).statusCode).toBe(409);
  const first = await withCook(app);
  await withCook(app);
  expect((await text(app, 'unit=C', '120')).json().detail).toContain('2 cooks are running');
  const ended = sampleDevice(first).make('ended', { how: 'done' }, 1);
  await app.inject({ method: 'POST', url: `/api/cooks/${first}/events`, payload: ended });
  expect((await text(app, 'unit=C', '120')).statusCode).toBe(201);
});

it.each([
  ['no unit', 400, ''],
  ['a unit that is none of temperature', 400, 'unit=kg'],
  ['an id that is none', 400, 'unit=C&cook=mine'],
  ['a cook that is not there', 404, `unit=C&cook=${randomUUID()}`],
])('refuses %s', async (_, status, query) => {
  const app = await testServer();
  await withCook(app);
  expect((await text(app, query, '120')).statusCode).toBe(status);
});

it('refuses a form, and a page of another site', async () => {
  const app = await testServer();
  const cook = await withCook(app);
  const url = '/api/readings?unit=C';
  const form = { 'content-type': 'application/x-www-form-urlencoded' };
  expect((await app.inject({ method: 'POST', url, payload: '120', headers: form })).statusCode).toBe(415);
  const foreign = { 'content-type': 'text/plain', origin: 'http://evil.test' };
  expect((await app.inject({ method: 'POST', url, payload: '120', headers: foreign })).statusCode).toBe(403);
  expect((await app.inject(`/api/cooks/${cook}/events`)).json().events).toHaveLength(1);
});
