import { randomUUID } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { begunBody, sampleBodies, sampleCook, sampleDevice } from '../../../test/sampleCook.ts';
import { testServer } from '../../../test/testServer.ts';
import { foldCook } from '../../core/log/fold.ts';

type App = Awaited<ReturnType<typeof testServer>>;

const post = (app: App, url: string, payload: object, headers: Record<string, string> = {}) =>
  app.inject({ method: 'POST', url, payload, headers });

async function begunCook(app: App) {
  const sample = sampleCook();
  const begun = await post(app, '/api/cooks', sample.begun);
  expect(begun.statusCode).toBe(201);
  return { ...sample, url: `/api/cooks/${sample.cook}`, rest: sample.events.slice(1) };
}

describe('a cook', () => {
  it('begins with its first event, and is listed with what it is', async () => {
    const app = await testServer();
    const { cook, begun, url } = await begunCook(app);
    const again = await post(app, '/api/cooks', begun);
    expect(again.statusCode).toBe(201);
    expect(again.headers['location']).toBe(url);
    const { cooks } = (await app.inject('/api/cooks')).json();
    expect(cooks).toMatchObject([{ id: cook, name: 'First batch', mode: 'live', ended: null, lastSeq: 1 }]);
  });

  it('begins once', async () => {
    const app = await testServer();
    const { cook, begun } = await begunCook(app);
    const other = sampleDevice(cook).make('begun', begunBody, 1);
    expect((await post(app, '/api/cooks', other)).statusCode).toBe(409);
    expect((await post(app, '/api/cooks', { ...begun, tMono: 1 })).statusCode).toBe(409);
    expect((await app.inject(`/api/cooks/${cook}`)).json().lastSeq).toBe(1);
  });

  it('is what its events come to', async () => {
    const app = await testServer();
    const { events, rest, url } = await begunCook(app);
    expect((await post(app, `${url}/events`, rest)).statusCode).toBe(201);
    const snapshot = (await app.inject(url)).json();
    const { arrival, ...state } = foldCook(events);
    expect(snapshot).toMatchObject({ state, lastSeq: events.length, damaged: [], cook: { ended: 'done' } });
    expect(snapshot.state.arrival).toEqual({ ...arrival, lastSeq: events.length });
  });

  it('runs again when its end is struck out', async () => {
    const app = await testServer();
    const { cook, url } = await begunCook(app);
    const device = sampleDevice(cook);
    const ended = device.make('ended', { how: 'abandoned' }, 60);
    await post(app, `${url}/events`, ended);
    expect((await app.inject(url)).json().cook.ended).toBe('abandoned');
    await post(app, `${url}/events`, device.make('correction', { corrects: ended.id, kind: 'ended', body: null }, 61));
    expect((await app.inject(url)).json().cook.ended).toBeNull();
  });

  it('that is not there is not found, under any of its addresses', async () => {
    const app = await testServer();
    const url = `/api/cooks/${randomUUID()}`;
    for (const part of ['', '/events', '/file', '/live']) expect((await app.inject(url + part)).statusCode).toBe(404);
    expect((await post(app, `${url}/events`, sampleCook().events[1])).statusCode).toBe(404);
  });
});

describe('events', () => {
  it('are given back in the order in which they came in, as JSON and as lines', async () => {
    const app = await testServer();
    const { rest, url } = await begunCook(app);
    const mixed = rest.toReversed();
    await post(app, `${url}/events`, mixed);
    const { events, lastSeq, more } = (await app.inject(`${url}/events?since=1`)).json();
    expect(events).toMatchObject(mixed);
    expect({ lastSeq, more }).toEqual({ lastSeq: rest.length + 1, more: false });
    const lines = await app.inject({ url: `${url}/events?since=5`, headers: { accept: 'application/x-ndjson' } });
    expect(lines.headers['content-type']).toContain('application/x-ndjson');
    expect(
      lines.body
        .trim()
        .split('\n')
        .map((line) => JSON.parse(line)),
    ).toEqual(events.slice(4));
  });

  it('sent again get the first answer, and are there once', async () => {
    const app = await testServer();
    const { rest, url } = await begunCook(app);
    const [event] = rest;
    const first = await post(app, `${url}/events`, event, { 'idempotency-key': event.id });
    const second = await post(app, `${url}/events`, event, { 'idempotency-key': event.id });
    expect([second.statusCode, second.body]).toEqual([201, first.body]);
    expect((await app.inject(`${url}/events`)).json().events).toHaveLength(2);
  });

  it('with the id of another are refused, with all that came with them', async () => {
    const app = await testServer();
    const { rest, url } = await begunCook(app);
    await post(app, `${url}/events`, rest[0]);
    const changed = { ...rest[0], body: { ...sampleBodies.reading, valueC: 99, raw: 99 } };
    const answer = await post(app, `${url}/events`, [rest[1], changed, rest[2]]);
    expect(answer.statusCode).toBe(422);
    expect(answer.json()).toMatchObject({
      type: '/api/problems#event-differs',
      detail: expect.stringContaining(rest[0].id),
    });
    expect((await post(app, `${url}/events`, [rest[4], { ...rest[4], tMono: 5 }])).statusCode).toBe(422);
    expect((await app.inject(`${url}/events`)).json().events).toHaveLength(2);
  });

  it('of 1000 retries at random, alone and in batches, are there once each', async () => {
    const app = await testServer();
    const { cook, rest, url } = await begunCook(app);
    let random = 20310509;
    const below = (limit: number) => {
      random = (random * 1103515245 + 12345) % 2 ** 31;
      return Math.floor((random / 2 ** 31) * limit);
    };
    const receipts = new Map<string, string>();
    const keep = (receipt: { id: string }) => {
      const before = receipts.get(receipt.id);
      if (before) expect(JSON.stringify(receipt)).toBe(before);
      receipts.set(receipt.id, JSON.stringify(receipt));
    };
    for (let round = 0; round < 100; round++) {
      const tries = Array.from({ length: 10 }, () => {
        const start = below(rest.length);
        return below(2) ? rest[start] : rest.slice(start, start + 1 + below(8));
      });
      const answers = await Promise.all(tries.map((payload) => post(app, `${url}/events`, payload)));
      expect(new Set(answers.map(({ statusCode }) => statusCode))).toEqual(new Set([201]));
      for (const answer of answers) for (const receipt of [answer.json()].flat()) keep(receipt);
    }
    const { events } = (await app.inject(`${url}/events`)).json();
    const ids = events.map(({ id }: { id: string }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids.length).toBe(receipts.size + 1);
    expect(events.every((event: { cook: string }) => event.cook === cook)).toBe(true);
  }, 60_000);

  it.each([
    ['another key', 'idempotency-key', (event: object) => event, { 'idempotency-key': randomUUID() }],
    ['another cook', 'cook', (event: object) => ({ ...event, cook: randomUUID() }), {}],
    ['another cook in a batch', '1.cook', (event: object) => [event, { ...event, cook: randomUUID() }], {}],
    ['a field that is not known', 'mood', (event: object) => ({ ...event, mood: 'calm' }), {}],
    [
      'a wrong event in a batch',
      '1.body.valueC',
      (event: object) => [event, { ...event, body: { ...sampleBodies.reading, valueC: 900 } }],
      {},
    ],
    ['no events', '', () => [], {}],
  ])('with %s are refused by name', async (_, field, change, headers) => {
    const app = await testServer();
    const { rest, url } = await begunCook(app);
    const answer = await post(app, `${url}/events`, change(rest[0]), headers as Record<string, string>);
    expect(answer.statusCode).toBe(400);
    expect(answer.json().errors.map((error: { field: string }) => error.field)).toEqual([field]);
    expect((await app.inject(`${url}/events`)).json().events).toHaveLength(1);
  });

  it('do not begin a cook again', async () => {
    const app = await testServer();
    const { begun, url } = await begunCook(app);
    expect((await post(app, `${url}/events`, begun)).json().errors).toMatchObject([{ field: 'kind' }]);
  });

  it('500 readings go in at once', async () => {
    const app = await testServer();
    const { cook, url } = await begunCook(app);
    const device = sampleDevice(cook);
    const readings = Array.from({ length: 500 }, (_, s) => device.make('reading', sampleBodies.reading, s));
    expect((await post(app, `${url}/events`, readings)).statusCode).toBe(201);
  });

  it('are described for other programs', async () => {
    const app = await testServer();
    expect((await app.inject('/api/schemas/event')).json()).toMatchObject({ $id: 'urn:umberpan:event:1' });
  });
});
