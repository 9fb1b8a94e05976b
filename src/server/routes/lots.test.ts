import { randomUUID } from 'node:crypto';
import { expect, it } from 'vitest';
import { put, testServer } from '../../../test/testServer.ts';
import type { NewLot } from '../../api/lot.ts';

type App = Awaited<ReturnType<typeof testServer>>;

const around = (mid: number) => ({ low: 0.9 * mid, mid, high: 1.1 * mid });
const shards: NewLot = {
  name: 'Plum shards',
  origin: 'cooked',
  alkali: { substance: 'sodiumHydroxide', gramsPerKgSucrose: 5 },
  cookId: randomUUID(),
  planId: null,
  madeAt: '2030-03-01T18:40:00.000Z',
  form: 'hard',
  expected: {
    massKg: around(0.388),
    waterShare: around(0.025),
    inverted: around(0.3),
    a430: around(8),
    ebc: around(200),
    srm: around(101.6),
    icumsa: around(9e4),
  },
  weighedKg: null,
};

const make = (app: App, lot: object = shards, key: string = randomUUID()) =>
  app.inject({ method: 'POST', url: '/api/lots', payload: lot, headers: { 'idempotency-key': key } });

const change = (app: App, id: string, payload: object, ifMatch?: string) =>
  put(app, `/api/lots/${id}`, payload, ifMatch);

it('keeps a lot and gives it back as it was, with its version as entity tag', async () => {
  const app = await testServer();
  const made = await make(app);
  expect(made.statusCode).toBe(201);
  expect(made.headers['etag']).toBe('"1"');
  const got = await app.inject(String(made.headers['location']));
  expect(got.json()).toEqual(made.json());
  expect(got.json()).toMatchObject({ version: 1, lot: shards });
  expect((await app.inject('/api/lots')).json()).toEqual({ lots: [made.json()] });
});

it('takes a lot whose cook and plan it does not know: they may come later, or be gone', async () => {
  const app = await testServer();
  expect((await make(app, { ...shards, planId: randomUUID() })).statusCode).toBe(201);
});

it('makes one lot of a repeated request, also after it was weighed', async () => {
  const app = await testServer();
  const key = randomUUID();
  expect((await make(app, shards, key)).statusCode).toBe(201);
  expect((await make(app, shards, key)).statusCode).toBe(200);
  const weighed = await change(app, key, { name: 'Plums', weighedKg: 0.391 }, '"1"');
  const again = await make(app, shards, key);
  expect(again.statusCode).toBe(200);
  expect(again.json()).toEqual(weighed.json());
  const other = await make(app, { ...shards, form: 'syrup' }, key);
  expect(other.statusCode).toBe(409);
  expect(other.json().current).toEqual(weighed.json());
  expect((await app.inject('/api/lots')).json().lots).toHaveLength(1);
});

it('changes name and weight of a version that still stands, and refuses another with both versions', async () => {
  const app = await testServer();
  const { id } = (await make(app)).json();
  const changed = await change(app, id, { name: 'Plum shards', weighedKg: 0.391 }, '"1"');
  expect(changed.statusCode).toBe(200);
  expect(changed.headers['etag']).toBe('"2"');
  expect(changed.json().lot).toEqual({ ...shards, weighedKg: 0.391 });
  const late = await change(app, id, { name: 'Plum shards', weighedKg: 0.4 }, '"1"');
  expect(late.statusCode).toBe(412);
  expect(late.json()).toMatchObject({ yourVersion: 1, current: { version: 2, lot: { weighedKg: 0.391 } } });
  expect((await app.inject(`/api/lots/${id}`)).json()).toEqual(changed.json());
});

it('lets one of several changes made at once through', async () => {
  const app = await testServer();
  const { id } = (await make(app)).json();
  const answers = await Promise.all(
    [0.1, 0.2, 0.3].map((weighedKg) => change(app, id, { name: 'A', weighedKg }, '"1"')),
  );
  expect(answers.map(({ statusCode }) => statusCode).toSorted()).toEqual([200, 412, 412]);
});

it.each([undefined, '*', '1', 'W/"1"'])('wants to know the version changed: %o', async (ifMatch) => {
  const app = await testServer();
  const { id } = (await make(app)).json();
  expect((await change(app, id, { name: 'A', weighedKg: null }, ifMatch)).statusCode).toBe(428);
});

it('knows no lot that was not made', async () => {
  const app = await testServer();
  const url = `/api/lots/${randomUUID()}`;
  expect((await app.inject(url)).statusCode).toBe(404);
  expect((await change(app, url.split('/').at(-1) ?? '', { name: 'A', weighedKg: null }, '"1"')).statusCode).toBe(404);
});

it('lists lots by when they were poured, a page at a time, each once', async () => {
  const app = await testServer();
  const days = ['04', '02', '07', '01', '07', '05', '03'];
  for (const day of days) await make(app, { ...shards, madeAt: `2030-03-${day}T12:00:00.000Z` });
  const listed: { id: string; lot: NewLot }[] = [];
  for (let more = true; more; ) {
    const before = listed.length > 0 ? `&before=${listed.at(-1)?.id}` : '';
    const { lots } = (await app.inject(`/api/lots?limit=3${before}`)).json();
    listed.push(...lots);
    more = lots.length === 3;
  }
  expect(new Set(listed.map(({ id }) => id)).size).toBe(7);
  expect(listed.map(({ lot }) => lot.madeAt.slice(8, 10))).toEqual(days.toSorted().toReversed());
});

const { expected } = shards;
it.each([
  ['name', { ...shards, name: ' ' }, /1 to 80 characters/],
  ['weighedKg', { ...shards, weighedKg: 0 }, /is 0; .*0.001 to 20/],
  ['form', { ...shards, form: 'powder' }, /hard, syrup/],
  ['madeAt', { ...shards, madeAt: 'yesterday' }, /RFC 3339/],
  ['cookId', { ...shards, cookId: 'mine' }, /a UUID/],
  ['expected.inverted.high', { ...shards, expected: { ...expected, inverted: around(1) } }, /0 to 1/],
  ['expected.ebc', { ...shards, expected: { ...expected, ebc: { low: 9, mid: 8, high: 10 } } }, /not in order/],
  ['taste', { ...shards, taste: 'plum' }, /is not known/],
])('names the field that is not as allowed: %s', async (field, lot, message) => {
  const app = await testServer();
  const answer = await make(app, lot);
  expect(answer.statusCode).toBe(400);
  expect(answer.json().errors).toEqual([{ field, message: expect.stringMatching(message) }]);
});

it('takes no change of what was believed at the pour', async () => {
  const app = await testServer();
  const { id } = (await make(app)).json();
  const answer = await change(app, id, { name: 'A', weighedKg: null, expected }, '"1"');
  expect(answer.statusCode).toBe(400);
  expect(answer.json().errors[0].field).toBe('expected');
});

it('is told of the alkali later, and fills in what an older client leaves out', async () => {
  const app = await testServer();
  const { alkali: _, origin: __, ...older } = shards;
  const { id, lot } = (await make(app, older)).json();
  expect(lot).toMatchObject({ alkali: null, origin: 'cooked' });
  const lime = { substance: 'calciumHydroxide', gramsPerKgSucrose: 4 };
  const changed = await change(app, id, { name: 'A', weighedKg: null, alkali: lime }, '"1"');
  expect(changed.json().lot.alkali).toEqual(lime);
  const renamed = await change(app, id, { name: 'B', weighedKg: null }, '"2"');
  expect(renamed.json().lot).toMatchObject({ name: 'B', alkali: lime });
});

it('takes a lot off the shelf and puts it back; its address tells all the while', async () => {
  const app = await testServer();
  const { id } = (await make(app)).json();
  const url = `/api/lots/${id}`;
  const off = () => app.inject({ method: 'DELETE', url });
  expect((await off()).statusCode).toBe(204);
  expect((await app.inject('/api/lots')).json()).toEqual({ lots: [] });
  const { removed } = (await app.inject(url)).json();
  expect(removed).toMatch(/Z$/);
  expect((await off()).statusCode).toBe(204);
  expect((await app.inject(url)).json().removed).toBe(removed);
  const back = await app.inject({ method: 'POST', url: `${url}/restore` });
  expect(back.json()).toMatchObject({ id, version: 1, removed: null, lot: shards });
  expect((await app.inject('/api/lots')).json().lots).toHaveLength(1);
  const nobody = `/api/lots/${randomUUID()}`;
  expect((await app.inject({ method: 'DELETE', url: nobody })).statusCode).toBe(404);
  expect((await app.inject({ method: 'POST', url: `${nobody}/restore` })).statusCode).toBe(404);
});

it('names a page size that is not as allowed', async () => {
  const app = await testServer();
  const answer = await app.inject('/api/lots?limit=abc');
  expect(answer.statusCode).toBe(400);
  expect(answer.json().errors).toEqual([
    { field: 'limit', message: expect.stringMatching(/is "abc"; allowed: a whole number from 1 to 500/) },
  ]);
});
