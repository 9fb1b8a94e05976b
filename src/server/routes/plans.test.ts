import { randomUUID } from 'node:crypto';
import { expect, it } from 'vitest';
import { testServer } from '../../../test/testServer.ts';
import { defaultKit } from '../../core/pan/kit.ts';
import { defaultRequest } from '../../core/planning/request.ts';

type App = Awaited<ReturnType<typeof testServer>>;

const make = (app: App, payload: object = { kitId: null, request: defaultRequest }, key: string = randomUUID()) =>
  app.inject({ method: 'POST', url: '/api/plans', payload, headers: { 'idempotency-key': key } });

it('keeps a plan and gives it back as it was asked for', async () => {
  const app = await testServer();
  const kit = (await app.inject({ method: 'POST', url: '/api/kits', payload: defaultKit })).json();
  const made = await make(app, { kitId: kit.id, request: defaultRequest });
  expect(made.statusCode).toBe(201);
  expect((await app.inject(String(made.headers['location']))).json()).toEqual(made.json());
  expect(made.json()).toMatchObject({ kitId: kit.id, request: defaultRequest });
});

it('makes one plan of a repeated request, also after its kit is gone', async () => {
  const app = await testServer();
  const kit = (await app.inject({ method: 'POST', url: '/api/kits', payload: defaultKit })).json();
  const key = randomUUID();
  const plan = { kitId: null, request: defaultRequest };
  expect((await make(app, plan, key)).statusCode).toBe(201);
  expect((await make(app, plan, key)).statusCode).toBe(200);
  expect((await make(app, { ...plan, kitId: kit.id }, randomUUID())).statusCode).toBe(201);
  expect((await make(app, { ...plan, request: { ...defaultRequest, massKg: 1 } }, key)).statusCode).toBe(409);
  expect((await app.inject('/api/plans')).json().plans).toHaveLength(2);
});

it('keeps a plan whose kit is removed, without the kit', async () => {
  const app = await testServer();
  const kit = (await app.inject({ method: 'POST', url: '/api/kits', payload: defaultKit })).json();
  const plan = (await make(app, { kitId: kit.id, request: defaultRequest })).json();
  await app.inject({ method: 'DELETE', url: `/api/kits/${kit.id}` });
  expect((await app.inject(`/api/plans/${plan.id}`)).json()).toEqual({ ...plan, kitId: null });
});

it('lists plans newest first, a page at a time, each once', async () => {
  const app = await testServer();
  const made: string[] = [];
  for (let count = 0; count < 7; count++) made.push((await make(app)).json().id);
  const listed: string[] = [];
  for (let more = true; more; ) {
    const before = listed.length > 0 ? `&before=${listed.at(-1)}` : '';
    const { plans } = (await app.inject(`/api/plans?limit=3${before}`)).json();
    listed.push(...plans.map(({ id }: { id: string }) => id));
    more = plans.length === 3;
  }
  expect(listed.toSorted()).toEqual(made.toSorted());
  const times = (await app.inject('/api/plans')).json().plans.map(({ created }: { created: string }) => created);
  expect(times).toEqual(times.toSorted().toReversed());
});

it('removes a plan, once', async () => {
  const app = await testServer();
  const url = `/api/plans/${(await make(app)).json().id}`;
  expect((await app.inject({ method: 'DELETE', url })).statusCode).toBe(204);
  expect((await app.inject({ method: 'DELETE', url })).statusCode).toBe(404);
});

it.each([
  ['request.massKg', { kitId: null, request: { ...defaultRequest, massKg: 50 } }, /is 50; .*0.1 to 5/],
  ['request.route', { kitId: null, request: { ...defaultRequest, route: 'bitter' } }, /pale, bright, deep/],
  ['kitId', { kitId: 'mine', request: defaultRequest }, /is "mine"; allowed: a UUID/],
  ['kitId', { kitId: randomUUID(), request: defaultRequest }, /there is no such kit/],
])('names the field that is not as allowed: %s', async (field, plan, message) => {
  const app = await testServer();
  const answer = await make(app, plan);
  expect(answer.statusCode).toBe(400);
  expect(answer.json().errors).toEqual([{ field, message: expect.stringMatching(message) }]);
});

it('keeps no plan that breaks a limit of safety in any kit, and names the limit and the field', async () => {
  const app = await testServer();
  const answer = await make(app, { kitId: null, request: { ...defaultRequest, alkaliGPerKg: 11 } });
  expect(answer.statusCode).toBe(422);
  expect(answer.json().errors).toEqual([
    { field: 'request.alkaliGPerKg', message: expect.stringMatching(/11 g\/kg .*allowed is 8.*LIM-ALKALI-DOSE/) },
  ]);
  expect((await app.inject('/api/plans')).json().plans).toEqual([]);
});
