// Every route of the OpenAPI document, asked by every role, by a device that was never let in, and by the host itself.
import { expect, it } from 'vitest';
import { onNetwork, pair, type TestServer } from '../../../test/paired.ts';
import { sampleCook, sampleDevice } from '../../../test/sampleCook.ts';
import { testServer } from '../../../test/testServer.ts';
import { deviceRoles } from '../../api/device.ts';
import type { LogEvent } from '../../core/log/event.ts';

/** Who may look and who may change: k keeper, c cook, r reader, p probe, * anybody. */
const expected: Readonly<Record<string, readonly [look: string, change: string]>> = {
  authority: ['*', 'k'],
  book: ['kcr', 'kc'],
  cooks: ['kcr', 'kc'],
  demo: ['kcr', 'k'],
  devices: ['k', 'k'],
  glasses: ['kcr', 'kc'],
  health: ['*', 'k'],
  inputs: ['kc', 'k'],
  invitations: ['k', 'k'],
  kits: ['kcr', 'kc'],
  lots: ['kcr', 'kc'],
  pairing: ['k', '*'],
  plans: ['kcr', 'kc'],
  problems: ['*', 'k'],
  readings: ['k', 'kcp'],
  schemas: ['*', 'k'],
  standing: ['*', 'k'],
  time: ['kcrp', 'k'],
  workspace: ['k', 'k'],
};

const noSuchId = '00000000-0000-4000-8000-000000000000';

async function everyRoute() {
  const app = await testServer({ names: ['pan.test'] });
  const { paths } = (await app.inject('/api/openapi.json')).json() as { paths: Record<string, object> };
  const routes = Object.entries(paths).flatMap(([path, methods]) =>
    Object.keys(methods).map((method) => {
      const area = path.split('/')[2] ?? '';
      const [look, change] = expected[area] ?? ['nobody named it', 'nobody named it'];
      const may = method === 'get' ? look : change;
      return { method: method.toUpperCase(), path, url: path.replaceAll(/\{\w+\}/g, noSuchId), may, area };
    }),
  );
  return { app, routes };
}

/** What is let in is refused a moment later for its body, so that no act is done for the asking. */
const noBody = { payload: 'x', headers: { 'content-type': 'text/x-of-no-kind' } };

async function begin(app: TestServer, mode: 'live' | 'rehearsal' = 'live') {
  const { cook, begun } = sampleCook();
  const rehearsal = mode === 'live' ? null : { seed: 1, speed: 1 };
  const payload = { ...begun, body: { ...begun.body, mode, rehearsal } };
  expect((await app.inject({ method: 'POST', url: '/api/cooks', payload })).statusCode).toBe(201);
  return cook;
}

async function end(app: TestServer, cook: string) {
  const payload = sampleDevice(cook).make('ended', { how: 'done' }, 1);
  expect((await app.inject({ method: 'POST', url: `/api/cooks/${cook}/events`, payload })).statusCode).toBe(201);
}

type Asked = { readonly method: string; readonly url: string };
const asking = ({ method, url }: Asked) => ({
  method: method as 'GET',
  url,
  ...(method !== 'GET' && method !== 'DELETE' && noBody),
});

it('the table names every area of the API', async () => {
  const { routes } = await everyRoute();
  expect(routes.length).toBeGreaterThan(30);
  expect([...new Set(routes.map(({ area }) => area))].filter((area) => !expected[area])).toEqual([]);
});

// Probes first and keepers last: they may let the others out.
it.each([...deviceRoles].reverse())(
  'a %s may do what the table says, and nothing else',
  async (role) => {
    const { app, routes } = await everyRoute();
    const device = await pair(app, role);
    const wrong: string[] = [];
    for (const route of routes) {
      const { url, ...asked } = asking(route);
      const answer = await device.ask(url, asked);
      const refused = answer.statusCode === 403 && answer.json().type === '/api/problems#not-allowed';
      const allowed = route.may === '*' || route.may.includes(role[0] ?? '');
      if (refused === allowed) wrong.push(`${route.method} ${url}: ${answer.statusCode}`);
    }
    expect(wrong).toEqual([]);
  },
  60_000,
);

/** What a guest sees who was let in for one cook; beside it only what anybody may look at. */
const ofOneCook = ['/api/cooks/{id}', '/api/cooks/{id}/events', '/api/cooks/{id}/file', '/api/cooks/{id}/live'];

it('a guest who was let in for one cook sees that cook, and nothing else', async () => {
  const { app, routes } = await everyRoute();
  const [shared, other] = [await begin(app), await begin(app)];
  const guest = await pair(app, 'reader', { cook: shared, hours: 6 });
  const wrong: string[] = [];
  for (const route of routes) {
    for (const id of [shared, other, noSuchId]) {
      const { url: _, ...asked } = asking(route);
      const url = route.path.replaceAll(/\{\w+\}/g, id);
      // A stream would not end.
      if (id === shared && url.endsWith('/live')) continue;
      const { statusCode } = await guest.ask(url, asked);
      const look = route.method === 'GET' && ofOneCook.includes(route.path) && id === shared;
      const allowed = route.may === '*' || route.area === 'time' || look;
      if ((statusCode === 403) === allowed) wrong.push(`${route.method} ${url}: ${statusCode}`);
    }
  }
  expect(wrong).toEqual([]);
  // A keeper shares another: from then on it is that one.
  const bind = (cook: string | null) =>
    app.inject({ method: 'PUT', url: `/api/devices/${guest.device.id}/cook`, payload: { cook } });
  expect((await bind(other)).statusCode).toBe(200);
  const sees = async (cook: string) => (await guest.ask(`/api/cooks/${cook}`)).statusCode;
  expect([await sees(shared), await sees(other)]).toEqual([403, 200]);
  await bind(null);
  expect([await sees(shared), (await guest.ask('/api/cooks')).statusCode]).toEqual([200, 200]);
}, 60_000);

it('a probe sends into the one cook that it was let in for, sleeps when that ended, and is woken by a keeper', async () => {
  const { app } = await everyRoute();
  const [first, second] = [await begin(app), await begin(app)];
  const probe = await pair(app, 'probe', { cook: first });
  const send = async (cook = '') => {
    const query = cook && `&cook=${cook}`;
    const asked = { method: 'POST', payload: '21.5', headers: { 'content-type': 'text/plain' } } as const;
    const answer = await probe.ask(`/api/readings?unit=C${query}`, asked);
    return [answer.statusCode, answer.json().type?.replace('/api/problems#', '')];
  };
  const readings = async (cook: string) =>
    (await app.inject(`/api/cooks/${cook}/events`)).json().events.filter(({ kind }: LogEvent) => kind === 'reading');

  expect(await send()).toEqual([201, undefined]);
  expect(await send(first)).toEqual([201, undefined]);
  expect(await send(second)).toEqual([403, 'not-allowed']);
  expect([await readings(first), await readings(second)]).toMatchObject([{ length: 2 }, { length: 0 }]);

  await end(app, first);
  expect(await send()).toEqual([409, 'asleep']);
  expect(await send(second)).toEqual([409, 'asleep']);
  expect((await probe.ask('/api/standing')).json().device).toMatchObject({ cook: null });

  const wake = (cook: string | null) =>
    app.inject({ method: 'PUT', url: `/api/devices/${probe.device.id}/cook`, payload: { cook } });
  expect((await wake('next')).json()).toMatchObject({ cook: 'next' });
  expect(await send()).toEqual([201, undefined]);
  expect(await readings(second)).toHaveLength(1);
  // It stays with that one, also when another begins.
  const third = await begin(app);
  expect(await send()).toEqual([201, undefined]);
  expect(await readings(third)).toEqual([]);
  await end(app, second);
  expect(await send()).toEqual([409, 'asleep']);
}, 60_000);

it('a probe that was let in before the cook waits for it, and passes over rehearsals', async () => {
  const { app } = await everyRoute();
  const probe = await pair(app, 'probe');
  const rehearsed = await begin(app, 'rehearsal');
  const send = () => probe.ask('/api/readings', { method: 'POST', payload: { value: 21.5, unit: 'Cel' } });
  expect((await send()).json().type).toBe('/api/problems#which-cook');
  const cook = await begin(app);
  expect((await send()).statusCode).toBe(201);
  expect((await app.inject(`/api/cooks/${rehearsed}`)).json().lastSeq).toBe(1);
  expect((await app.inject(`/api/cooks/${cook}`)).json().lastSeq).toBe(3);
});

it.each([
  ['cook', noSuchId, 400],
  ['reader', 'next', 400],
  ['reader', noSuchId, 404],
  ['probe', noSuchId, 404],
  ['probe', 'mine', 400],
])('a %s is not let in for the cook %s', async (role, cook, status) => {
  const { app } = await everyRoute();
  const answer = await app.inject({ method: 'POST', url: '/api/invitations', payload: { role, cook } });
  expect(answer.statusCode).toBe(status);
  if (status === 404 || role === 'cook') return;
  const device = await pair(app, role as 'reader');
  const bound = await app.inject({ method: 'PUT', url: `/api/devices/${device.device.id}/cook`, payload: { cook } });
  expect([bound.statusCode, bound.json().errors[0].field]).toEqual([400, 'cook']);
});

it('a device that was never let in may ask who it is, and use a code; everything else wants a token', async () => {
  const { app, routes } = await everyRoute();
  const wrong: string[] = [];
  for (const route of routes) {
    const asked = asking(route);
    const answer = await app.inject({ ...asked, headers: { ...('headers' in asked && asked.headers), ...onNetwork } });
    if ((answer.statusCode === 401) === (route.may === '*')) wrong.push(`${route.url}: ${answer.statusCode}`);
    if (answer.statusCode === 401) expect(answer.headers['www-authenticate']).toBe('Bearer');
  }
  expect(wrong).toEqual([]);
});

it('the host itself may do everything without a token', async () => {
  const { app, routes } = await everyRoute();
  for (const route of routes) expect([401, 403]).not.toContain((await app.inject(asking(route))).statusCode);
}, 60_000);

it('an address that is not there is not there for anybody, and no page of the app is kept back', async () => {
  const { app } = await everyRoute();
  const reader = await pair(app, 'reader');
  expect((await reader.ask('/api/nowhere')).statusCode).toBe(404);
  expect((await app.inject({ url: '/api/nowhere', headers: onNetwork })).statusCode).toBe(404);
});

it('a token counts where the host would need none: the role goes with the device', async () => {
  const { app } = await everyRoute();
  const { headers } = await pair(app, 'probe');
  const answer = await app.inject({ url: '/api/kits', headers: { authorization: headers.authorization } });
  expect(answer.statusCode).toBe(403);
});

it.each(['Bearer', 'Bearer x', `Bearer ${'A'.repeat(43)}`, `Basic ${'A'.repeat(43)}`, `Bearer ${'A'.repeat(500)}`])(
  'the authorization %s lets nobody in, the host neither',
  async (authorization) => {
    const app = await testServer();
    expect((await app.inject({ url: '/api/kits', headers: { authorization } })).statusCode).toBe(401);
  },
);
