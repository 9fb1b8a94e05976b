// Every route of the OpenAPI document, asked by every role, by a device that was never let in, and by the host itself.
import { expect, it } from 'vitest';
import { onNetwork, pair } from '../../../test/paired.ts';
import { testServer } from '../../../test/testServer.ts';
import { deviceRoles } from '../../api/device.ts';

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
      return { method: method.toUpperCase(), url: path.replaceAll(/\{\w+\}/g, noSuchId), may, area };
    }),
  );
  return { app, routes };
}

/** What is let in is refused a moment later for its body, so that no act is done for the asking. */
const noBody = { payload: 'x', headers: { 'content-type': 'text/x-of-no-kind' } };

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
