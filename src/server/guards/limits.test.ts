// Requests that are too large, too deep, too slow or no requests at all, over real sockets; and what browsers of other sites can send.
import { connect } from 'node:net';
import { Readable } from 'node:stream';
import { type BrotliCompress, createBrotliCompress, createDeflate, createGzip, type Gzip } from 'node:zlib';
import { expect, it } from 'vitest';
import { listeningServer } from '../../../test/liveServer.ts';
import { scratchFolder, testServer } from '../../../test/testServer.ts';
import { defaultKit } from '../../core/pan/kit.ts';

/** Sends pieces of text over a socket, one each `everyMs`, and gives all that comes back until the other end closes. */
function speak(address: string, pieces: readonly string[], everyMs = 0): Promise<string> {
  const { hostname, port } = new URL(address);
  return new Promise((resolve) => {
    let heard = '';
    const socket = connect(Number(port), hostname);
    const finish = () => resolve(heard);
    socket
      .on('data', (text) => (heard += text))
      .on('close', finish)
      .on('error', finish);
    let at = 0;
    const next = () => {
      if (socket.destroyed || at >= pieces.length) return;
      socket.write(pieces[at++] ?? '');
      setTimeout(next, everyMs);
    };
    socket.once('connect', next);
  });
}

const head = (address: string, ...lines: string[]) =>
  `${['POST /api/kits HTTP/1.1', `host: ${new URL(address).host}`, 'connection: close', ...lines].join('\r\n')}\r\n\r\n`;

it.each([
  ['two Host headers', 'GET /api/kits HTTP/1.1\r\nhost: HOST\r\nhost: evil.test\r\nconnection: close\r\n\r\n', 421],
  ['the same Host twice', 'GET /api/kits HTTP/1.1\r\nhost: HOST\r\nHost: HOST\r\nconnection: close\r\n\r\n', 421],
  ['an empty Host', 'GET /api/kits HTTP/1.1\r\nhost:\r\nconnection: close\r\n\r\n', 421],
  ['no Host', 'GET /api/kits HTTP/1.1\r\nconnection: close\r\n\r\n', 400],
  ['HTTP/1.0 without a Host', 'GET /api/kits HTTP/1.0\r\n\r\n', 421],
  [
    'a whole address and a Host of another',
    'GET http://evil.test/api/kits HTTP/1.1\r\nhost: evil.test\r\nconnection: close\r\n\r\n',
    421,
  ],
  ['a head of 20 kB', `GET /api/kits HTTP/1.1\r\nhost: HOST\r\nx: ${'y'.repeat(20_000)}\r\n\r\n`, 431],
  ['what is not HTTP', '\x16\x03\x01 hello\r\n\r\n', 400],
])('answers %s with a problem document or less', async (_, text, status) => {
  const { address } = await listeningServer(scratchFolder());
  const answer = await speak(address, [text.replaceAll('HOST', new URL(address).host)]);
  expect(answer).toMatch(new RegExp(`^HTTP/1.1 ${status} `));
  expect(answer).not.toContain('"kits"');
});

/** Twenty bodies that come a byte at a time, and have not come when they are cut off. */
const slowly = (address: string) => {
  const request = head(address, 'content-type: application/json', 'content-length: 1000');
  return Array.from({ length: 20 }, () => speak(address, [request, ...'{'.repeat(100)], 100));
};

it('serves others while bodies come a byte at a time', async () => {
  const { address, stop } = await listeningServer(scratchFolder());
  const order: string[] = [];
  const slow = slowly(address).map((one) => one.then(() => order.push('slow')));
  for (let n = 0; n < 5; n++) expect((await fetch(`${address}/api/health`)).status).toBe(200);
  order.push('served');
  await stop();
  await Promise.all(slow);
  expect(order[0]).toBe('served');
});

it('cuts off a body that comes a byte at a time, and keeps nothing of it', async () => {
  const { address } = await listeningServer(scratchFolder(), { requestMs: 1500 });
  const before = process.memoryUsage.rss();
  const answers = await Promise.all(slowly(address));
  for (const answer of answers) expect(answer).toMatch(/^HTTP\/1.1 408 .*application\/problem\+json.*too-slow/s);
  expect(process.memoryUsage.rss() - before).toBeLessThan(50e6);
}, 30_000);

/** Blanks, a megabyte at a time, so that the test itself never holds what they come to. */
async function bomb(megabytes: number, packer: Gzip | BrotliCompress): Promise<Buffer> {
  const pieces = Readable.from(Array.from({ length: megabytes }, () => Buffer.alloc(1e6, ' ')));
  const packed: Buffer[] = [];
  for await (const piece of pieces.pipe(packer)) packed.push(piece);
  return Buffer.concat(packed);
}

it.each([
  ['gzip', createGzip],
  ['deflate', createDeflate],
  ['br', createBrotliCompress],
] as const)(
  'a body packed by %s is small on the wire, and is refused once it is too large unpacked',
  async (encoding, packer) => {
    const { address } = await listeningServer(scratchFolder());
    const body = await bomb(100, packer());
    expect(body.length).toBeLessThan(200_000);
    const before = process.memoryUsage.rss();
    const headers = { 'content-type': 'application/json', 'content-encoding': encoding };
    const answer = await fetch(`${address}/api/kits`, { method: 'POST', headers, body: new Uint8Array(body) });
    expect(answer.status).toBe(413);
    expect(process.memoryUsage.rss() - before).toBeLessThan(50e6);
    expect(await (await fetch(`${address}/api/kits`)).json()).toEqual({ kits: [] });
  },
);

it('cuts off a head that never ends', async () => {
  const { address } = await listeningServer(scratchFolder());
  const lines = Array.from({ length: 2000 }, (_, n) => `x-${n}: ${'y'.repeat(40)}\r\n`);
  const answer = await speak(address, ['GET / HTTP/1.1\r\n', ...lines]);
  expect(answer).toMatch(/^HTTP\/1.1 431 /);
});

const deep = (levels: number) => `${'{"a":'.repeat(levels)}1${'}'.repeat(levels)}`;
it.each([
  ['40 levels deep', `{"name": ${deep(40)}}`, 413],
  ['20,000 levels deep', deep(20_000), 413],
  ['30,000 fields wide', JSON.stringify({ name: Array.from({ length: 30_000 }, () => 0) }), 413],
  ['with a text of 200 kB', JSON.stringify({ name: 'x'.repeat(200_000) }), 413],
  ['that would change the prototype', '{"name": {"__proto__": {"polluted": true}}}', 400],
  ['that would change the constructor', '{"constructor": {"prototype": {"polluted": true}}}', 400],
  ['with half a letter', '{"name": "\\ud800"}', 400],
  ['with numbers beyond all bounds', '{"name": "x", "roomC": 1e999}', 400],
])('refuses a document %s', async (_, payload, status) => {
  const app = await testServer();
  const headers = { 'content-type': 'application/json' };
  const answer = await app.inject({ method: 'POST', url: '/api/kits', headers, payload });
  expect(answer.statusCode).toBe(status);
  expect(({} as { polluted?: boolean }).polluted).toBeUndefined();
  expect((await app.inject('/api/kits')).json()).toEqual({ kits: [] });
});

const foreign = { origin: 'http://evil.test' };
const kit = JSON.stringify(defaultKit);
it.each([
  [
    'a post of plain text without leave',
    { method: 'POST', headers: { ...foreign, 'content-type': 'text/plain' }, payload: kit },
    403,
  ],
  [
    'a question before a post',
    { method: 'OPTIONS', headers: { ...foreign, 'access-control-request-method': 'POST' } },
    404,
  ],
  [
    'a form',
    { method: 'POST', headers: { ...foreign, 'content-type': 'application/x-www-form-urlencoded' }, payload: 'name=x' },
    403,
  ],
  [
    'a form from nowhere',
    { method: 'POST', headers: { 'content-type': 'multipart/form-data; boundary=x' }, payload: '--x--' },
    415,
  ],
  ['a page of a name that was bound to this address', { method: 'GET', headers: { host: 'evil.test:80' } }, 421],
  [
    'a page that forges its own name',
    {
      method: 'POST',
      headers: { host: 'evil.test:80', origin: 'http://evil.test:80', 'content-type': 'application/json' },
      payload: kit,
    },
    421,
  ],
] as const)('%s from a page of another site changes nothing', async (_, asked, status) => {
  const app = await testServer();
  const answer = await app.inject({ url: '/api/kits', ...asked });
  expect(answer.statusCode).toBe(status);
  expect(answer.headers).not.toHaveProperty('access-control-allow-origin');
  expect((await app.inject('/api/kits')).json()).toEqual({ kits: [] });
});

it('nothing changes by looking: no GET of the API writes', async () => {
  const { store, app, address } = await listeningServer(scratchFolder());
  const headers = { host: new URL(address).host };
  const { paths } = (await app.inject({ url: '/api/openapi.json', headers })).json() as {
    paths: Record<string, object>;
  };
  const before = store.changes();
  for (const [path, methods] of Object.entries(paths)) {
    const url = path.replaceAll(/\{\w+\}/g, '00000000-0000-4000-8000-000000000000');
    if ('get' in methods) await app.inject({ url, headers });
  }
  expect(store.changes()).toBe(before);
});
