// What a page of another site, open in a browser at home, can do to the server: nothing. An open server beside it shows that the browser did send it all.
import { createServer, type IncomingMessage } from 'node:http';
import type { AddressInfo } from 'node:net';
import { type Browser, chromium } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it, onTestFinished } from 'vitest';
import { findChromium } from '../../scripts/setup/chromium.mjs';
import { sampleCook } from '../sampleCook.ts';
import { scratchFolder } from '../testServer.ts';
import { type BuiltServer, startBuiltServer } from './builtServer.ts';

const executablePath = findChromium();
/** A name that its owner lets stand for this machine: as by rebinding, and for a page of another site. */
const evil = 'evil.test';

/** Answers everything, as careless servers do, and remembers what it was asked. */
async function openServer() {
  const asked: Pick<IncomingMessage, 'method' | 'url' | 'headers'>[] = [];
  const server = createServer(({ method, url, headers }, answer) => {
    asked.push({ method, url, headers });
    answer.setHeader('content-type', 'text/html').end('<!doctype html><title>A game</title>');
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  onTestFinished(() => void server.close());
  const { port } = server.address() as AddressInfo;
  return { asked, port };
}

/** In the page: every way in which a browser lets a page ask another site, one after the other; gives what the page could read. */
async function attack({ target, cook }: { readonly target: string; readonly cook: string }): Promise<string[]> {
  const event = JSON.stringify({ kind: 'heat' });
  const post = (type: string, mode: RequestMode) => ({
    method: 'POST',
    mode,
    headers: { 'content-type': type },
    body: event,
  });
  const readings = `${target}/api/readings?unit=C&cook=${cook}`;
  const read: string[] = [];
  const tell = async (asking: Promise<Response>) => {
    const text = await asking.then((answer) => answer.text()).catch(() => '');
    if (text) read.push(text);
  };
  await tell(fetch(readings, { ...post('text/plain', 'no-cors'), body: '131' }));
  await tell(fetch(`${target}/api/kits`, post('text/plain', 'no-cors')));
  await tell(fetch(`${target}/api/kits`, post('application/json', 'cors')));
  await tell(fetch(`${target}/api/cooks/${cook}/events`, { mode: 'no-cors' }));
  await tell(fetch(`${target}/api/cooks`, { mode: 'cors' }));
  await tell(fetch(`${target}/api/kits`, { method: 'DELETE', mode: 'cors' }));
  // What a browser holds back may tell of no end.
  const done = (element: EventTarget, ...ends: string[]) =>
    new Promise((resolve) => {
      for (const end of ends) element.addEventListener(end, resolve);
      setTimeout(resolve, 5000);
    });
  const image = document.createElement('img');
  const seen = done(image, 'load', 'error');
  image.src = `${target}/api/kits`;
  document.body.append(image);
  const frame = document.createElement('iframe');
  frame.name = 'hidden';
  document.body.append(frame);
  const form = document.createElement('form');
  Object.assign(form, { method: 'post', action: readings, target: 'hidden', enctype: 'text/plain' });
  form.innerHTML = '<input name="131" value="">';
  document.body.append(form);
  const sent = done(frame, 'load');
  form.submit();
  await Promise.all([seen, sent]);
  const stream = new EventSource(`${target}/api/cooks/${cook}/live`);
  await done(stream, 'open', 'error');
  if (stream.readyState === EventSource.OPEN) read.push('a stream');
  stream.close();
  return read;
}

/** All that is kept. */
async function kept({ address }: BuiltServer): Promise<string> {
  return (await fetch(`${address}api/workspace`)).text();
}

describe.skipIf(!executablePath)('a page of another site', () => {
  let browser: Browser;
  beforeAll(async () => {
    const args = ['--no-sandbox', '--disable-gpu', '--disable-quic', `--host-resolver-rules=MAP ${evil} 127.0.0.1`];
    browser = await chromium.launch({ ...(executablePath && { executablePath }), args });
  });
  afterAll(() => browser?.close());

  async function setUp() {
    const server = await startBuiltServer(scratchFolder());
    onTestFinished(async () => void (await server.end('SIGTERM')));
    const { cook, begun } = sampleCook();
    const headers = { 'content-type': 'application/json' };
    await fetch(`${server.address}api/cooks`, { method: 'POST', headers, body: JSON.stringify(begun) });
    const page = await browser.newPage();
    onTestFinished(() => page.close());
    return { server, cook, page };
  }

  it('reads nothing and changes nothing, whatever it sends', async () => {
    const { server, cook, page } = await setUp();
    const { asked, port } = await openServer();
    await page.goto(`http://${evil}:${port}/`);
    await page.evaluate(attack, { target: `http://127.0.0.1:${port}`, cook });
    const ways = asked.filter(({ headers }) => headers.host?.startsWith('127.0.0.1'));
    const sent = ways.map(({ method, headers }) => `${method} ${headers['content-type'] ?? headers['sec-fetch-dest']}`);
    expect(new Set(sent)).toEqual(new Set(['POST text/plain', 'OPTIONS empty', 'GET empty', 'GET image']));

    const before = await kept(server);
    expect(await page.evaluate(attack, { target: server.address.replace(/\/$/, ''), cook })).toEqual([]);
    expect(await kept(server)).toBe(before);
  });

  it('of a name that was bound to this machine gets neither the app nor its data, and shows it in no frame', async () => {
    const { server, cook, page } = await setUp();
    const { port } = new URL(server.address);
    const bound = `http://${evil}:${port}`;
    expect((await page.goto(`${bound}/`))?.status()).toBe(421);
    expect(await page.locator('#app').count()).toBe(0);
    const before = await kept(server);
    const read = await page.evaluate(attack, { target: bound, cook });
    expect(read.filter((text) => !/host-refused/.test(text))).toEqual([]);
    expect(await kept(server)).toBe(before);

    const { port: game } = await openServer();
    await page.goto(`http://${evil}:${game}/`);
    await page.evaluate((address) => {
      document.body.innerHTML = `<iframe src="${address}"></iframe>`;
    }, server.address);
    await expect.poll(() => page.frames().at(-1)?.url()).toMatch(/^chrome-error:/);
  });
});
