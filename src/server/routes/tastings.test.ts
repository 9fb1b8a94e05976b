import { randomUUID } from 'node:crypto';
import { expect, it } from 'vitest';
import { testServer } from '../../../test/testServer.ts';
import type { NewTasting } from '../../api/tasting.ts';
import { descriptors } from '../../core/lot/taste.ts';

type App = Awaited<ReturnType<typeof testServer>>;

const none = Object.fromEntries(descriptors.map((name) => [name, null])) as NewTasting['strengths'];
const first: NewTasting = {
  tastedAt: '2028-01-03T19:00:00.000Z',
  weeks: 2,
  strengths: { ...none, 'dried fruit': 4, burnt: 0 },
  liking: 8,
  note: 'Plums; a bit thin.',
};

async function withGlass(app: App): Promise<string> {
  const rest = { volumeL: 20, gravity: 1.06, a430PerCm: 0.4, attenuation: 0.75, sodiumMgPerL: 0, calciumMgPerL: 0 };
  const glass = { name: 'A', rest, doses: [], kettleLossL: 0, pathCm: 7, boughtPricePerKg: null, bottledOn: null };
  return (await app.inject({ method: 'POST', url: '/api/glasses', payload: glass })).json().id;
}
const taste = (app: App, glass: string, tasting: object = first, key: string = randomUUID()) =>
  app.inject({
    method: 'POST',
    url: `/api/glasses/${glass}/tastings`,
    payload: tasting,
    headers: { 'idempotency-key': key },
  });
const listed = async (app: App, glass: string) => (await app.inject(`/api/glasses/${glass}/tastings`)).json().tastings;

it('keeps tastings of a glass, the latest first, and those of another apart', async () => {
  const app = await testServer();
  const [one, other] = [await withGlass(app), await withGlass(app)];
  const made = await taste(app, one);
  expect(made.statusCode).toBe(201);
  expect(made.json()).toMatchObject({ glassId: one, tasting: first });
  await taste(app, one, { ...first, tastedAt: '2028-03-13T19:00:00.000Z', weeks: 12 });
  await taste(app, other);
  expect((await listed(app, one)).map(({ tasting }: { tasting: NewTasting }) => tasting.weeks)).toEqual([12, 2]);
  expect(await listed(app, other)).toHaveLength(1);
});

it('keeps a repeated tasting once, and no other under its id, nor in another glass', async () => {
  const app = await testServer();
  const [one, other] = [await withGlass(app), await withGlass(app)];
  const key = randomUUID();
  const answers = [
    await taste(app, one, first, key),
    await taste(app, one, first, key),
    await taste(app, one, { ...first, liking: 2 }, key),
    await taste(app, other, first, key),
  ];
  expect(answers.map(({ statusCode }) => statusCode)).toEqual([201, 200, 409, 409]);
  expect(await listed(app, one)).toHaveLength(1);
});

it('takes a tasting away, and takes it again under the same id', async () => {
  const app = await testServer();
  const glass = await withGlass(app);
  const { id } = (await taste(app, glass)).json();
  const remove = (of: string) => app.inject({ method: 'DELETE', url: `/api/glasses/${of}/tastings/${id}` });
  expect((await remove(randomUUID())).statusCode).toBe(404);
  expect((await remove(glass)).statusCode).toBe(204);
  expect((await remove(glass)).statusCode).toBe(404);
  expect(await listed(app, glass)).toEqual([]);
  expect((await taste(app, glass, first, id)).statusCode).toBe(201);
});

it('knows no tasting of a glass that is not kept', async () => {
  const app = await testServer();
  expect((await taste(app, randomUUID())).statusCode).toBe(404);
  expect((await app.inject(`/api/glasses/${randomUUID()}/tastings`)).statusCode).toBe(404);
});

it.each([
  ['strengths.cherry', { ...first, strengths: { ...none, cherry: 6 } }, /whole number from 0 to 5/],
  ['strengths.velvet', { ...first, strengths: { ...none, velvet: 1 } }, /is not known/],
  ['liking', { ...first, liking: 7.5 }, /whole number from 0 to 10/],
  ['tastedAt', { ...first, tastedAt: '2028-01-03' }, /RFC 3339/],
  ['note', { ...first, note: 'x'.repeat(2001) }, /up to 2000 characters/],
])('names the field that is not as allowed: %s', async (field, tasting, message) => {
  const app = await testServer();
  const answer = await taste(app, await withGlass(app), tasting);
  expect(answer.statusCode).toBe(400);
  expect(answer.json().errors).toEqual([{ field, message: expect.stringMatching(message) }]);
});
