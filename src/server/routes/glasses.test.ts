import { randomUUID } from 'node:crypto';
import { expect, it } from 'vitest';
import { put, testServer } from '../../../test/testServer.ts';
import type { NewGlass } from '../../api/glass.ts';
import type { NewTasting } from '../../api/tasting.ts';
import { descriptors } from '../../core/lot/taste.ts';

type App = Awaited<ReturnType<typeof testServer>>;

const told = { alkali: null, fermentable: null, pricePerKg: null };
const abbey: NewGlass = {
  name: 'Abbey, winter',
  rest: { volumeL: 20, gravity: 1.06, a430PerCm: 0.48, attenuation: 0.75, sodiumMgPerL: 28, calciumMgPerL: 50 },
  doses: [
    { sugar: { kind: 'lot', lotId: randomUUID(), ...told }, massKg: 0.3, added: 'late' },
    {
      sugar: { kind: 'bought', name: 'syrup', solids: 0.8, specific430AsIs: 0.03, inverted: 1, ...told },
      massKg: 0.2,
      added: 'kettle',
    },
  ],
  kettleLossL: 1,
  pathCm: 7,
  boughtPricePerKg: null,
  bottledOn: '2027-12-20',
};

const tasting: NewTasting = {
  tastedAt: '2028-01-03T19:00:00.000Z',
  weeks: 2,
  strengths: Object.fromEntries(descriptors.map((name) => [name, null])) as NewTasting['strengths'],
  liking: 8,
  note: '',
};

const make = (app: App, glass: object = abbey, key: string = randomUUID()) =>
  app.inject({ method: 'POST', url: '/api/glasses', payload: glass, headers: { 'idempotency-key': key } });
const change = (app: App, id: string, payload: object, ifMatch?: string) =>
  put(app, `/api/glasses/${id}`, payload, ifMatch);

it('keeps a glass and gives it back as it was, whether the server knows its lots or not', async () => {
  const app = await testServer();
  const made = await make(app);
  expect(made.statusCode).toBe(201);
  expect(made.headers['etag']).toBe('"1"');
  const got = await app.inject(String(made.headers['location']));
  expect(got.json()).toEqual(made.json());
  expect(got.json()).toMatchObject({ version: 1, glass: abbey });
  expect((await app.inject('/api/glasses')).json()).toEqual({ glasses: [made.json()] });
});

it('makes one glass of a repeated request, and keeps it from another under its id', async () => {
  const app = await testServer();
  const key = randomUUID();
  expect((await make(app, abbey, key)).statusCode).toBe(201);
  expect((await make(app, abbey, key)).statusCode).toBe(200);
  const other = await make(app, { ...abbey, name: 'Other' }, key);
  expect(other.statusCode).toBe(409);
  expect(other.json().current.glass).toEqual(abbey);
});

it('changes a version that still stands, and refuses another with both versions', async () => {
  const app = await testServer();
  const { id } = (await make(app)).json();
  const changed = await change(app, id, { ...abbey, pathCm: 9 }, '"1"');
  expect([changed.statusCode, changed.headers['etag']]).toEqual([200, '"2"']);
  const late = await change(app, id, { ...abbey, pathCm: 5 }, '"1"');
  expect(late.statusCode).toBe(412);
  expect(late.json()).toMatchObject({ yourVersion: 1, current: { version: 2, glass: { pathCm: 9 } } });
  expect((await change(app, id, abbey)).statusCode).toBe(428);
  expect((await change(app, randomUUID(), abbey, '"1"')).statusCode).toBe(404);
});

it('takes a glass away with its tastings, tells what was taken, and can be told it all again', async () => {
  const app = await testServer();
  const [{ id }, other] = [(await make(app)).json(), (await make(app, { ...abbey, name: 'Other' })).json()];
  await change(app, id, { ...abbey, pathCm: 9 }, '"1"');
  const taste = (glass: string, payload: object = tasting, key: string = randomUUID()) =>
    app.inject({
      method: 'POST',
      url: `/api/glasses/${glass}/tastings`,
      payload,
      headers: { 'idempotency-key': key },
    });
  const kept = [(await taste(id)).json(), (await taste(id, { ...tasting, liking: 3 })).json()];
  const others = (await taste(other.id)).json();
  const remove = (ifMatch?: string) =>
    app.inject({ method: 'DELETE', url: `/api/glasses/${id}`, ...(ifMatch && { headers: { 'if-match': ifMatch } }) });

  expect((await remove()).statusCode).toBe(428);
  const late = await remove('"1"');
  expect(late.statusCode).toBe(412);
  expect(late.json()).toMatchObject({ yourVersion: 1, current: { version: 2 } });
  const taken = await remove('"2"');
  expect(taken.statusCode).toBe(200);
  expect(taken.json()).toMatchObject({ glass: { id, glass: { pathCm: 9 } } });
  expect(new Set(taken.json().tastings)).toEqual(new Set(kept));
  expect((await remove('"2"')).statusCode).toBe(404);
  expect((await app.inject('/api/glasses')).json()).toEqual({ glasses: [other] });
  expect((await app.inject(`/api/glasses/${id}/tastings`)).statusCode).toBe(404);
  expect((await app.inject(`/api/glasses/${other.id}/tastings`)).json()).toEqual({ tastings: [others] });

  expect((await make(app, taken.json().glass.glass, id)).statusCode).toBe(201);
  for (const each of taken.json().tastings) expect((await taste(id, each.tasting, each.id)).statusCode).toBe(201);
  const again = (await app.inject(`/api/glasses/${id}/tastings`)).json().tastings;
  expect(again.map((each: { id: string }) => each.id).toSorted()).toEqual(kept.map((each) => each.id).toSorted());
});

it('lists glasses a page at a time, each once', async () => {
  const app = await testServer();
  for (let i = 0; i < 7; i++) await make(app, { ...abbey, name: `Beer ${i}` });
  const listed: { id: string }[] = [];
  for (let more = true; more; ) {
    const before = listed.length > 0 ? `&before=${listed.at(-1)?.id}` : '';
    const { glasses } = (await app.inject(`/api/glasses?limit=3${before}`)).json();
    listed.push(...glasses);
    more = glasses.length === 3;
  }
  expect(new Set(listed.map(({ id }) => id)).size).toBe(7);
});

const [ofLot, bought] = abbey.doses;
it.each([
  ['name', { ...abbey, name: ' ' }, /1 to 80 characters/],
  ['rest.gravity', { ...abbey, rest: { ...abbey.rest, gravity: 1.2 } }, /is 1.2; .*1 to 1.14/],
  ['doses.0.massKg', { ...abbey, doses: [{ ...ofLot, massKg: -1 }] }, /is -1; .*0 to 2000/],
  ['doses.0.sugar.solids', { ...abbey, doses: [{ ...bought, sugar: { ...bought?.sugar, solids: 0.2 } }] }, /0.5 to 1/],
  ['doses.0.sugar.kind', { ...abbey, doses: [{ ...ofLot, sugar: { kind: 'found' } }] }, /a lot or a bought sugar/],
  ['doses', { ...abbey, doses: Array(13).fill(ofLot) }, /up to 12/],
  ['bottledOn', { ...abbey, bottledOn: '2027-02-30' }, /a day/],
  ['stars', { ...abbey, stars: 5 }, /is not known/],
])('names the field that is not as allowed: %s', async (field, glass, message) => {
  const app = await testServer();
  const answer = await make(app, glass);
  expect(answer.statusCode).toBe(400);
  expect(answer.json().errors).toEqual([{ field, message: expect.stringMatching(message) }]);
});

it('gives the days to taste it as a calendar, whose events are changed and not doubled by the next version', async () => {
  const app = await testServer();
  const { id } = (await make(app)).json();
  const answer = await app.inject(`/api/glasses/${id}/reminders.ics`);
  expect(answer.headers['content-type']).toBe('text/calendar; charset=utf-8');
  expect(answer.headers['content-disposition']).toContain('attachment');
  const days = (text: string) => [...text.matchAll(/DTSTART;VALUE=DATE:(\d+)/g)].map(([, day]) => day);
  expect(days(answer.body)).toEqual(['20280103', '20280131', '20280313']);
  expect(answer.body).toContain('SUMMARY:Taste Abbey\\, winter: 2 weeks in the bottle');
  await change(app, id, { ...abbey, bottledOn: '2027-12-21' }, '"1"');
  const later = (await app.inject(`/api/glasses/${id}/reminders.ics`)).body;
  const uids = (text: string) => text.match(/UID:.*/g);
  expect(uids(later)).toEqual(uids(answer.body));
  expect(days(later)[0]).toBe('20280104');
  expect([answer.body, later].map((text) => text.match(/SEQUENCE:\d/)?.[0])).toEqual(['SEQUENCE:0', 'SEQUENCE:1']);
});

it('has no calendar before the bottling, and none for no glass', async () => {
  const app = await testServer();
  const { id } = (await make(app, { ...abbey, bottledOn: null })).json();
  expect((await app.inject(`/api/glasses/${id}/reminders.ics`)).statusCode).toBe(404);
  expect((await app.inject(`/api/glasses/${randomUUID()}/reminders.ics`)).statusCode).toBe(404);
});
