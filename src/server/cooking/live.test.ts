import { describe, expect, it } from 'vitest';
import { follow, listeningServer } from '../../../test/liveServer.ts';
import { begunBody, sampleBodies, sampleCook, sampleDevice } from '../../../test/sampleCook.ts';
import { scratchFolder } from '../../../test/testServer.ts';
import type { LogEvent } from '../../core/log/event.ts';

type Server = Awaited<ReturnType<typeof listeningServer>>;

const post = (address: string, path: string, body: object) =>
  fetch(`${address}${path}`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(body),
  });

async function begin({ address }: Server) {
  const sample = sampleCook();
  expect((await post(address, '/api/cooks', sample.begun)).status).toBe(201);
  return { ...sample, path: `/api/cooks/${sample.cook}`, rest: sample.events.slice(1) };
}

describe('a screen that follows a cook', () => {
  it('gets where it stands, then each event once, in order, and beats with the newest place', async () => {
    const server = await listeningServer(scratchFolder());
    const { path, rest, events } = await begin(server);
    await post(server.address, `${path}/events`, rest.slice(0, 5));
    const screen = await follow(`${server.address}${path}/live`);
    await screen.until(() => screen.messages.length > 0);
    expect(screen.messages[0]).toMatchObject({ event: 'snapshot', id: '6', data: { lastSeq: 6 } });
    for (const event of rest.slice(5)) await post(server.address, `${path}/events`, event);
    await screen.until(() => screen.logged().length === rest.length - 5);
    expect(screen.logged()).toMatchObject(rest.slice(5));
    expect(screen.all('logged').map(({ id }) => id)).toEqual(rest.slice(5).map((_, place) => String(place + 7)));
    const beats = screen.all('beat').length;
    await screen.until(() => screen.all('beat').length > beats);
    expect(screen.all('beat').at(-1)).toMatchObject({
      id: undefined,
      data: { lastSeq: events.length, storage: { state: 'well', waiting: 0 } },
    });
  });

  it('keeps our headers, and is not kept, compressed or held up on its way', async () => {
    const server = await listeningServer(scratchFolder());
    const { path } = await begin(server);
    const { answer } = await follow(`${server.address}${path}/live`);
    expect(Object.fromEntries(answer.headers)).toMatchObject({
      'content-type': 'text/event-stream; charset=utf-8',
      'cache-control': 'no-store',
      'x-content-type-options': 'nosniff',
      'content-security-policy': expect.stringContaining("default-src 'none'"),
    });
    expect(answer.headers.has('content-encoding')).toBe(false);
  });

  it('hears nothing of other cooks', async () => {
    const server = await listeningServer(scratchFolder());
    const [one, other] = [await begin(server), await begin(server)];
    const screen = await follow(`${server.address}${one.path}/live`);
    await post(server.address, `${other.path}/events`, other.rest);
    await post(server.address, `${one.path}/events`, one.rest[0]);
    await screen.until(() => screen.logged().length > 0);
    expect(screen.logged()).toMatchObject([one.rest[0]]);
  });

  it('has no hole and nothing twice, leaving and coming back in the middle of writing, over restarts of the server', async () => {
    const folder = scratchFolder();
    let server = await listeningServer(folder);
    const { cook, path } = await begin(server);
    const device = sampleDevice(cook);
    const sent: LogEvent[] = [];
    const seqs: number[] = [];
    let since = 1;
    for (let visit = 0; visit < 12; visit++) {
      if (visit % 4 === 3) {
        await server.stop();
        server = await listeningServer(folder);
      }
      const writing = (async () => {
        for (let count = 0; count < 15; count++) {
          const event = device.make('reading', sampleBodies.reading, sent.length);
          sent.push(event);
          await post(server.address, `${path}/events`, event);
        }
      })();
      const screen = await follow(`${server.address}${path}/live`, since);
      await screen.until(() => screen.logged().length >= 3);
      await screen.leave();
      expect(screen.all('snapshot')).toEqual([]);
      seqs.push(...screen.logged().map(({ seq }) => seq));
      since = seqs.at(-1) ?? since;
      await writing;
    }
    const last = await follow(`${server.address}${path}/live?since=${since}`);
    await last.until(() => last.all('beat').length > 0);
    seqs.push(...last.logged().map(({ seq }) => seq));
    expect(seqs).toEqual(sent.map((_, place) => place + 2));
  }, 20_000);

  it('gets everything anew when it has seen more than there is', async () => {
    const server = await listeningServer(scratchFolder());
    const { path } = await begin(server);
    const screen = await follow(`${server.address}${path}/live`, 900);
    await screen.until(() => screen.messages.length > 0);
    expect(screen.messages[0]).toMatchObject({ event: 'snapshot', data: { lastSeq: 1 } });
  });

  it('does not keep a closing server waiting: it never leaves by itself, and is cut off', async () => {
    const server = await listeningServer(scratchFolder());
    const { path } = await begin(server);
    const screens = await Promise.all(Array.from({ length: 5 }, () => follow(`${server.address}${path}/live`)));
    await server.stop();
    await Promise.all(screens.map(({ ended }) => ended));
  });

  it('is told to come back later when there are too many, and has a place again when one left', async () => {
    const server = await listeningServer(scratchFolder());
    const { path } = await begin(server);
    const url = `${server.address}${path}/live`;
    const screens = await Promise.all(Array.from({ length: 50 }, () => follow(url)));
    const refused = await fetch(url);
    expect([refused.status, refused.headers.get('retry-after')]).toEqual([429, '5']);
    await screens[0].leave();
    await expect.poll(async () => (await follow(url)).answer.status).toBe(200);
  });
});

it('a cook of three hours is served whole after a start', async () => {
  const folder = scratchFolder();
  const first = await listeningServer(folder);
  const { cook, begun } = sampleCook();
  await post(first.address, '/api/cooks', begun);
  const device = sampleDevice(cook);
  for (let at = 0; at < 10_800; at += 500) {
    const readings = Array.from({ length: 500 }, (_, s) => device.make('reading', sampleBodies.reading, at + s));
    expect((await post(first.address, `/api/cooks/${cook}/events`, readings)).status).toBe(201);
  }
  await first.stop();
  const second = await listeningServer(folder);
  const screen = await follow(`${second.address}/api/cooks/${cook}/live`);
  await screen.until(() => screen.all('snapshot').length > 0, 20_000);
  expect(screen.all('snapshot')[0].data).toMatchObject({ state: { readings: { length: 11_000 } } });
}, 60_000);

it('the time comes with when the question came and when the answer went', async () => {
  const server = await listeningServer(scratchFolder());
  const before = Date.now();
  const { received, sent } = await (await fetch(`${server.address}/api/time`)).json();
  expect(Date.parse(received)).toBeGreaterThanOrEqual(before);
  expect(Date.parse(sent)).toBeGreaterThanOrEqual(Date.parse(received));
  expect(Date.parse(sent)).toBeLessThanOrEqual(Date.now());
});

it('a rehearsal is told from a live cook in the list', async () => {
  const server = await listeningServer(scratchFolder());
  const { cook } = sampleCook();
  const body = { ...begunBody, mode: 'rehearsal', rehearsal: { seed: 7, speed: 10 } } as const;
  await post(server.address, '/api/cooks', sampleDevice(cook).make('begun', body, 0));
  const { cooks } = await (await fetch(`${server.address}/api/cooks`)).json();
  expect(cooks).toMatchObject([{ mode: 'rehearsal' }]);
});
