// The demo goes in whole and comes out whole, and touches nothing else.
import { expect, it } from 'vitest';
import { testServer } from '../../../test/testServer.ts';
import type { LotRecord } from '../../api/lot.ts';
import { knownOf } from '../../core/lot/known.ts';
import { defaultKit } from '../../core/pan/kit.ts';
import { type DemoKind, demoId } from './club.ts';

const nothing = { isIn: false, cooks: [], lots: [], glasses: [] };
const ids = (kind: DemoKind, numbers: readonly number[]) => numbers.map((number) => demoId(kind, number));

type App = Awaited<ReturnType<typeof testServer>>;

async function all(app: App) {
  const { body } = await app.inject('/api/workspace');
  return body;
}
async function records(app: App, name: string) {
  return (await app.inject(`/api/${name}`)).json()[name] as { id: string }[];
}

it('puts in kits, plans, cooks, lots and glasses that fit together, and takes them out again without a trace', {
  timeout: 60_000,
}, async () => {
  const app = await testServer();
  await app.inject({ method: 'POST', url: '/api/kits', payload: { ...defaultKit, name: 'My own' } });
  const before = await all(app);
  expect((await app.inject('/api/demo')).json()).toEqual(nothing);

  const put = await app.inject({ method: 'PUT', url: '/api/demo' });
  expect(put.statusCode).toBe(200);
  expect(put.json()).toEqual({
    isIn: true,
    cooks: ids('cook', [1, 2, 3, 4]),
    lots: ids('lot', [0, 1, 2, 3]),
    glasses: ids('glass', [0, 1, 2, 3]),
  });
  const counts = await Promise.all(
    ['kits', 'plans', 'cooks', 'lots', 'glasses'].map(async (name) => (await records(app, name)).length),
  );
  expect(counts).toEqual([3, 4, 5, 4, 4]);

  const lots = (await records(app, 'lots')) as LotRecord[];
  for (const { lot, notes } of lots) {
    const cook = await app.inject(`/api/cooks/${lot.cookId}`);
    expect(cook.json()).toMatchObject({ state: { mode: 'live', ended: { body: { how: 'done' } } } });
    const { a430 } = knownOf(
      lot,
      notes.map(({ note }) => note),
    ).figures;
    expect(a430.high / a430.low).toBeLessThan(lot.expected.a430.high / lot.expected.a430.low);
  }

  const withDemo = await all(app);
  await app.inject({ method: 'PUT', url: '/api/demo' });
  expect(await all(app)).toBe(withDemo);

  // What was noted of it since goes too.
  const [note] = lots[0].notes;
  await app.inject({ method: 'POST', url: `/api/lots/${lots[0].id}/notes`, payload: note.note });
  expect(await all(app)).not.toBe(withDemo);
  const out = await app.inject({ method: 'DELETE', url: '/api/demo' });
  expect(out.statusCode).toBe(204);
  expect(await all(app)).toBe(before);
  expect((await app.inject('/api/demo')).json()).toEqual(nothing);
});
