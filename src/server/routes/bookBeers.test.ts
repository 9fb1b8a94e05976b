import { randomUUID } from 'node:crypto';
import { expect, it } from 'vitest';
import { testServer } from '../../../test/testServer.ts';
import { type TastedBeerRecord, tastedBeerSchema } from '../../api/tastedBeer.ts';
import { descriptors } from '../../core/lot/taste.ts';

type App = Awaited<ReturnType<typeof testServer>>;

const flat = { low: 1, mid: 1, high: 1 };
const expected = { massKg: flat, waterShare: flat, inverted: flat, a430: flat, ebc: flat, srm: flat, icumsa: flat };
const told = { alkali: null, fermentable: null, pricePerKg: null };

async function post(app: App, url: string, payload: object): Promise<string> {
  const answer = await app.inject({ method: 'POST', url, payload });
  expect(answer.statusCode).toBe(201);
  return answer.json().id;
}
const lot = (app: App, cookId: string | null, origin = 'cooked') =>
  post(app, '/api/lots', {
    name: 'Shards',
    origin,
    cookId,
    planId: null,
    madeAt: '2030-03-01T18:40:00.000Z',
    form: 'hard',
    expected,
    weighedKg: null,
  });
function glass(app: App, name: string, doses: readonly (readonly [lotId: string, massKg: number])[]) {
  return post(app, '/api/glasses', {
    name,
    rest: { volumeL: 20, gravity: 1.06, a430PerCm: 0.4, attenuation: 0.75, sodiumMgPerL: 0, calciumMgPerL: 0 },
    doses: doses.map(([lotId, massKg]) => ({ sugar: { kind: 'lot', lotId, ...told }, massKg, added: 'kettle' })),
    kettleLossL: 0,
    pathCm: 7,
    boughtPricePerKg: null,
    bottledOn: null,
  });
}
const taste = (app: App, glassId: string, day: number, liking: number | null) =>
  post(app, `/api/glasses/${glassId}/tastings`, {
    tastedAt: `2030-06-${String(day).padStart(2, '0')}T19:00:00.000Z`,
    weeks: null,
    strengths: Object.fromEntries(descriptors.map((name) => [name, null])),
    liking,
    note: '',
  });
const beers = async (app: App): Promise<readonly TastedBeerRecord[]> =>
  (await app.inject('/api/book/beers')).json().beers;

it('tells of each beer that was liked or not how much, and from which cooks its sugar came, the last tasted first', async () => {
  const app = await testServer();
  const [march, may] = [randomUUID(), randomUUID()];
  const [first, second, written] = [await lot(app, march), await lot(app, may), await lot(app, null, 'told')];
  const early = await glass(app, 'Early', [[first, 0.3]]);
  const blended = await glass(app, 'Blended', [
    [first, 0.1],
    [second, 0.2],
    [written, 0.1],
  ]);
  await glass(app, 'Never tasted', [[first, 0.3]]);
  const silent = await glass(app, 'Tasted without a word', [[first, 0.3]]);
  for (const [id, day, liking] of [
    [early, 1, 6],
    [early, 3, 8],
    [blended, 2, 0],
    [blended, 20, null],
    [silent, 9, null],
  ] as const) {
    await taste(app, id, day, liking);
  }
  const told = await beers(app);
  expect(told).toEqual([
    { glassId: early, name: 'Early', likings: [8, 6], cooks: [{ cookId: march, share: 1 }] },
    {
      glassId: blended,
      name: 'Blended',
      likings: [0],
      cooks: [
        { cookId: march, share: 0.25 },
        { cookId: may, share: 0.5 },
      ],
    },
  ]);
  expect(told.every((beer) => tastedBeerSchema.safeParse(beer).success)).toBe(true);
});

it('a lot that was taken off the shelf tells its cook all the same, and one of a rehearsal none', async () => {
  const app = await testServer();
  const cook = randomUUID();
  const [gone, rehearsed] = [await lot(app, cook), await lot(app, randomUUID(), 'rehearsed')];
  await app.inject({ method: 'DELETE', url: `/api/lots/${gone}` });
  await taste(app, await glass(app, 'Of the gone', [[gone, 0.3]]), 2, 7);
  await taste(app, await glass(app, 'Of nothing', [[rehearsed, 0.3]]), 1, 9);
  expect((await beers(app)).map(({ cooks }) => cooks)).toEqual([[{ cookId: cook, share: 1 }], []]);
});

it('has nothing to tell before the first tasting', async () => {
  expect(await beers(await testServer())).toEqual([]);
});
