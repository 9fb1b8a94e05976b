import { randomUUID } from 'node:crypto';
import { expect, it } from 'vitest';
import { put, testServer } from '../../../test/testServer.ts';
import { defaultKit } from '../../core/pan/kit.ts';

type App = Awaited<ReturnType<typeof testServer>>;

const make = (app: App, payload: object = defaultKit, headers: Record<string, string> = {}) =>
  app.inject({ method: 'POST', url: '/api/kits', payload, headers });

const change = (app: App, id: string, name: string, ifMatch?: string) =>
  put(app, `/api/kits/${id}`, { ...defaultKit, name }, ifMatch);

it('keeps a kit and gives it back as it was, with its version as entity tag', async () => {
  const app = await testServer();
  const made = await make(app);
  expect(made.statusCode).toBe(201);
  expect(made.headers['etag']).toBe('"1"');
  const got = await app.inject(String(made.headers['location']));
  expect(got.json()).toEqual(made.json());
  expect(got.json()).toMatchObject({ version: 1, kit: defaultKit });
  expect((await app.inject('/api/kits')).json()).toEqual({ kits: [made.json()] });
});

it('makes one kit of a request that is repeated under the id that the client chose', async () => {
  const app = await testServer();
  const key = { 'idempotency-key': randomUUID() };
  const first = await make(app, defaultKit, key);
  const second = await make(app, defaultKit, key);
  expect([first.statusCode, second.statusCode]).toEqual([201, 200]);
  expect(first.json().id).toBe(key['idempotency-key']);
  expect(second.json()).toEqual(first.json());
  const other = await make(app, { ...defaultKit, name: 'Another' }, key);
  expect(other.statusCode).toBe(409);
  expect(other.json().current).toEqual(first.json());
});

it('changes a kit that is still at the version changed, and refuses one that is not, with both versions', async () => {
  const app = await testServer();
  const { id } = (await make(app)).json();
  const changed = await change(app, id, 'Back kitchen', '"1"');
  expect(changed.statusCode).toBe(200);
  expect(changed.headers['etag']).toBe('"2"');
  const late = await change(app, id, 'Front kitchen', '"1"');
  expect(late.statusCode).toBe(412);
  expect(late.json()).toMatchObject({ yourVersion: 1, current: { version: 2, kit: { name: 'Back kitchen' } } });
  expect((await app.inject(`/api/kits/${id}`)).json()).toEqual(changed.json());
});

it('lets one of two changes made at once through', async () => {
  const app = await testServer();
  const { id } = (await make(app)).json();
  const answers = await Promise.all(['A', 'B', 'C', 'D'].map((name) => change(app, id, name, '"1"')));
  expect(answers.map(({ statusCode }) => statusCode).toSorted()).toEqual([200, 412, 412, 412]);
});

it.each([undefined, '', '*', '1', '"0"', 'W/"1"', '"1", "2"'])(
  'wants to know the version changed: %o',
  async (ifMatch) => {
    const app = await testServer();
    const { id } = (await make(app)).json();
    expect((await change(app, id, 'Back kitchen', ifMatch)).statusCode).toBe(428);
  },
);

it('removes a kit, once', async () => {
  const app = await testServer();
  const url = `/api/kits/${(await make(app)).json().id}`;
  expect((await app.inject({ method: 'DELETE', url })).statusCode).toBe(204);
  expect((await app.inject(url)).statusCode).toBe(404);
  expect((await app.inject({ method: 'DELETE', url })).statusCode).toBe(404);
  expect((await change(app, url.split('/').at(-1) ?? '', 'x', '"1"')).statusCode).toBe(404);
});

it.each([
  ['stove.ratedPowerW', { ...defaultKit, stove: { ...defaultKit.stove, ratedPowerW: 9000 } }, /is 9000; .*300 to 6000/],
  [
    'stove.ratedPowerW',
    { ...defaultKit, stove: { ...defaultKit.stove, ratedPowerW: '1800' } },
    /is "1800"; .*a number/,
  ],
  ['pan.material', { ...defaultKit, pan: { ...defaultKit.pan, material: 'gold' } }, /is "gold"; .*stainless, enamel/],
  ['roomC', { ...defaultKit, roomC: undefined }, /is missing; .*0 to 45/],
  ['colour', { ...defaultKit, colour: 'red' }, /is not known; known here: name, stove/],
  ['name', { ...defaultKit, name: ' ' }, /is " *"; .*1 to 80 characters/],
  ['name', { ...defaultKit, name: 'two\nlines' }, /one line/],
])('names the field that is not as allowed, what was sent and what is allowed: %s', async (field, kit, message) => {
  const app = await testServer();
  const answer = await make(app, kit);
  expect(answer.statusCode).toBe(400);
  expect(answer.headers['content-type']).toContain('application/problem+json');
  expect(answer.json().errors).toEqual([{ field, message: expect.stringMatching(message) }]);
  expect(answer.json().errors[0].message).toContain(field);
});

it('names a bad id', async () => {
  const app = await testServer();
  const answer = await app.inject('/api/kits/7');
  expect(answer.statusCode).toBe(400);
  expect(answer.json().errors).toEqual([{ field: 'id', message: 'id is "7"; allowed: a UUID' }]);
});
