import { randomUUID } from 'node:crypto';
import { expect, it } from 'vitest';
import { testServer } from '../../../test/testServer.ts';
import type { NewLot } from '../../api/lot.ts';
import type { NewNote } from '../../api/lotNote.ts';
import { descriptors } from '../../core/lot/taste.ts';

type App = Awaited<ReturnType<typeof testServer>>;

const flat = { low: 1, mid: 1, high: 1 };
const lot: NewLot = {
  name: 'Plum shards',
  cookId: null,
  planId: null,
  madeAt: '2030-03-01T18:40:00.000Z',
  form: 'hard',
  expected: { massKg: flat, waterShare: flat, inverted: flat, a430: flat, ebc: flat, srm: flat, icumsa: flat },
  weighedKg: null,
};
const strengths = Object.fromEntries(descriptors.map((name) => [name, null])) as Record<string, number | null>;
const at = '2030-03-02T10:00:00.000Z';
const notes: readonly NewNote[] = [
  { kind: 'stocked', at, how: 'took', kg: 0.12, why: 'Abbey, winter' },
  {
    kind: 'measured',
    at: '2030-03-03T10:00:00.000Z',
    reading: { method: 'refractometer', brix: 25.6, temperatureC: 22, compensated: false, sugarG: 10, waterG: 20 },
  },
  {
    kind: 'tasted',
    at: '2030-03-04T10:00:00.000Z',
    strengths: { ...strengths, toffee: 3 } as never,
    texture: 'dry snap',
    note: '',
    blind: true,
  },
];

async function onShelf(app: App): Promise<string> {
  return (await app.inject({ method: 'POST', url: '/api/lots', payload: lot })).json().id;
}

const keep = (app: App, id: string, note: object, key: string = randomUUID()) =>
  app.inject({ method: 'POST', url: `/api/lots/${id}/notes`, payload: note, headers: { 'idempotency-key': key } });

it('keeps notes of every kind and gives them back with their lot, the earliest first', async () => {
  const app = await testServer();
  const id = await onShelf(app);
  for (const note of notes.toReversed()) expect((await keep(app, id, note)).statusCode).toBe(201);
  const { notes: kept } = (await app.inject(`/api/lots/${id}`)).json();
  expect(kept.map(({ note }: { note: NewNote }) => note)).toEqual(notes);
  expect((await app.inject('/api/lots')).json().lots[0].notes).toEqual(kept);
  expect((await app.inject(`/api/lots/${id}`)).json().version).toBe(1);
});

it('makes one note of a repeated request, and refuses another under its id', async () => {
  const app = await testServer();
  const id = await onShelf(app);
  const key = randomUUID();
  expect((await keep(app, id, notes[0] ?? {}, key)).statusCode).toBe(201);
  expect((await keep(app, id, notes[0] ?? {}, key)).statusCode).toBe(200);
  expect((await keep(app, id, notes[1] ?? {}, key)).statusCode).toBe(409);
});

it('takes a note away, and lets it be written again under its id', async () => {
  const app = await testServer();
  const id = await onShelf(app);
  const key = randomUUID();
  await keep(app, id, notes[0] ?? {}, key);
  const url = `/api/lots/${id}/notes/${key}`;
  expect((await app.inject({ method: 'DELETE', url: url.replace(id, randomUUID()) })).statusCode).toBe(404);
  expect((await app.inject({ method: 'DELETE', url })).statusCode).toBe(204);
  expect((await app.inject({ method: 'DELETE', url })).statusCode).toBe(404);
  expect((await keep(app, id, notes[0] ?? {}, key)).statusCode).toBe(201);
});

it('knows no lot that was not made', async () => {
  const app = await testServer();
  expect((await keep(app, randomUUID(), notes[0] ?? {})).statusCode).toBe(404);
});

const reading = {
  method: 'absorbance',
  sugarG: 1,
  totalMl: 100,
  fold: 1,
  wavelengthNm: 430,
  absorbance: 0.4,
  pathCm: 1,
};
it.each([
  ['kg', { kind: 'stocked', at, how: 'took', kg: -1, why: '' }, /0 to 20/],
  ['how', { kind: 'stocked', at, how: 'ate', kg: 1, why: '' }, /took, added, counted/],
  ['kind', { kind: 'eaten', at }, /measured, tasted or stocked/],
  ['reading.method', { kind: 'measured', at, reading: { ...reading, method: 'guess' } }, /refractometer, hydrometer/],
  ['reading.pathCm', { kind: 'measured', at, reading: { ...reading, pathCm: 0 } }, /0.1 to 10/],
  ['reading.wavelengthNm', { kind: 'measured', at, reading: { ...reading, wavelengthNm: 500 } }, /430, 420/],
  ['reading.brix', { kind: 'measured', at, reading: { ...reading, brix: 3 } }, /not known/],
  ['strengths.toffee', { ...notes[2], strengths: { ...strengths, toffee: 6 } }, /0 to 5/],
  ['at', { ...notes[0], at: 'today' }, /RFC 3339/],
])('names the field that is not as allowed: %s', async (field, note, message) => {
  const app = await testServer();
  const answer = await keep(app, await onShelf(app), note);
  expect(answer.statusCode).toBe(400);
  expect(answer.json().errors).toEqual([{ field, message: expect.stringMatching(message) }]);
});
