// The browser's side of a cook's log with the browser's own storage, locks, tabs and streams.
import { fileURLToPath } from 'node:url';
import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import { build } from 'vite';
import { afterAll, beforeAll, describe, expect, it, onTestFinished } from 'vitest';
import { findChromium } from '../../scripts/setup/chromium.mjs';
import { buildServer } from '../../src/server/server.ts';
import { readEvents } from '../../src/server/store/events.ts';
import { openStore } from '../../src/server/store/store.ts';
import { begunBody } from '../sampleCook.ts';
import { scratchFolder } from '../testServer.ts';
import type { CookLogPage } from './cookLogPage/main.ts';

type InPage = Window & CookLogPage;
const executablePath = findChromium();
const name = 'pan.test';

/** A server that can be stopped and started again at the same address. */
async function startServer(pages: string) {
  const folder = scratchFolder();
  const start = async (port: number) => {
    const store = await openStore(folder);
    const app = await buildServer({ store, pages, names: [name] });
    const address = await app.listen({ host: '127.0.0.1', port });
    return { store, app, port: Number(new URL(address).port) };
  };
  let running: Awaited<ReturnType<typeof start>> | undefined = await start(0);
  const { port } = running;
  const stop = async () => {
    await running?.app.close();
    await running?.store.close();
    running = undefined;
  };
  onTestFinished(stop);
  return {
    port,
    stop,
    async startAgain() {
      running = await start(port);
    },
    /** What a device that is let in shows with each request. */
    async pass() {
      const post = async (path: string, body: object) => {
        const headers = { 'content-type': 'application/json' };
        const address = `http://127.0.0.1:${port}/api/${path}`;
        return (await fetch(address, { method: 'POST', headers, body: JSON.stringify(body) })).json();
      };
      const { code } = await post('invitations', { role: 'cook', hours: null });
      return (await post('pairing', { code, name: 'A phone' })).token as string;
    },
    events: async (cook: string) => (running ? (await readEvents(running.store.db, cook)).events : []),
  };
}

const begin = (page: Page) =>
  page.evaluate(async (begun) => {
    const here = window as unknown as InPage;
    here.log = await here.beginCook(begun);
    return here.log.cook;
  }, begunBody);
const openLog = (page: Page, cook: string) =>
  page.evaluate(async (id) => {
    const here = window as unknown as InPage;
    here.log = await here.openCookLog(id);
  }, cook);
const note = (page: Page, count: number) =>
  page.evaluate(async (notes) => {
    const { log } = window as unknown as InPage;
    for (let one = 1; one <= notes; one++) await log.add('note', { text: `note ${one}` });
  }, count);
const link = (page: Page) => page.evaluate(() => (window as unknown as InPage).log.link());
const writer = (page: Page) => page.evaluate(() => (window as unknown as InPage).log.writer());
const eventCount = (page: Page) => page.evaluate(() => (window as unknown as InPage).log.events().length);

describe.skipIf(!executablePath)('a cook in a browser', () => {
  let browser: Browser;
  let pages: string;

  beforeAll(async () => {
    pages = fileURLToPath(new URL('../../node_modules/.cache/cook-log-page', import.meta.url));
    await build({
      configFile: false,
      root: fileURLToPath(new URL('cookLogPage', import.meta.url)),
      logLevel: 'error',
      build: { outDir: pages, emptyOutDir: true, modulePreload: { polyfill: false } },
    });
    const args = ['--no-sandbox', '--disable-gpu', '--disable-quic', `--host-resolver-rules=MAP ${name} 127.0.0.1`];
    browser = await chromium.launch({ ...(executablePath && { executablePath }), args });
  });
  afterAll(() => browser?.close());

  describe.each([
    ['localhost', true],
    [name, false],
  ])('at http://%s', (host, isSecure) => {
    async function visit() {
      const server = await startServer(pages);
      const context = await browser.newContext();
      onTestFinished(() => context.close());
      const address = `http://${host}:${server.port}/`;
      const tab = async (profile: BrowserContext = context) => {
        const page = await profile.newPage();
        await page.goto(address);
        expect(await page.evaluate(() => isSecureContext)).toBe(isSecure);
        // At a name of the network this is a device like any other.
        if (host === name)
          await page.evaluate((pass) => (window as unknown as InPage).holdPass(pass), await server.pass());
        return page;
      };
      return { server, context, tab, page: await tab() };
    }

    it('has 50 acts, done without the server and over a page that was closed, there once and in order', async () => {
      const { server, page, tab } = await visit();
      // Opened while the server was there: over plain http nothing else could open it.
      const next = await tab();
      await server.stop();
      const cook = await begin(page);
      await note(page, 25);
      expect(await link(page)).toMatchObject({ state: 'on its own', waiting: 26, storage: 'ok' });
      await page.close();
      await openLog(next, cook);
      await expect.poll(() => writer(next)).toBe('here');
      expect(await next.evaluate(() => (window as unknown as InPage).cooksHere())).toMatchObject([
        { id: cook, ended: null },
      ]);
      await note(next, 25);
      await server.startAgain();
      await expect.poll(async () => (await link(next)).state).toBe('live');
      await expect.poll(async () => (await link(next)).waiting).toBe(0);
      const events = await server.events(cook);
      expect(events.map(({ kind }) => kind)).toEqual(['begun', ...Array.from({ length: 50 }, () => 'note')]);
      expect(events.map(({ deviceSeq }) => deviceSeq)).toEqual(events.map((_, place) => place + 1));
      // One machine, one clock: what the device takes its own to be off by lies within the error that it states.
      const { clockOffsetMs, clockErrMs } = events.at(-1) ?? {};
      expect(Math.abs(clockOffsetMs ?? 0)).toBeLessThanOrEqual(clockErrMs ?? 0);
    });

    it('is written by one tab at a time, and read by the others', async () => {
      const { page, tab } = await visit();
      const cook = await begin(page);
      const other = await tab();
      await openLog(other, cook);
      expect([await writer(page), await writer(other)]).toEqual(['here', 'elsewhere']);
      await note(page, 3);
      await expect.poll(() => eventCount(other)).toBe(4);
      await expect(note(other, 1)).rejects.toThrow(/another tab/);
      await other.evaluate(() => (window as unknown as InPage).log.takeOver());
      await expect.poll(async () => [await writer(page), await writer(other)]).toEqual(['elsewhere', 'here']);
      await note(other, 2);
      await expect.poll(() => eventCount(page)).toBe(6);
      await other.close();
      await expect.poll(() => writer(page)).toBe('here');
    });

    it('is seen live by another device, which is live again after the server was away', async () => {
      const { server, page, tab } = await visit();
      const cook = await begin(page);
      const elsewhere = await browser.newContext();
      onTestFinished(() => elsewhere.close());
      const other = await tab(elsewhere);
      await expect.poll(() => server.events(cook).then(({ length }) => length)).toBe(1);
      await openLog(other, cook);
      await expect.poll(async () => (await link(other)).state).toBe('live');
      await server.stop();
      await expect.poll(async () => (await link(other)).state).toBe('on its own');
      await note(page, 2);
      await note(other, 1);
      await server.startAgain();
      await expect.poll(async () => [await eventCount(page), await eventCount(other)]).toEqual([4, 4]);
      await expect.poll(async () => [(await link(page)).state, (await link(other)).state]).toEqual(['live', 'live']);
    });
  });
});
