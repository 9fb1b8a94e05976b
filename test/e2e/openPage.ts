// Opens pages of the built app in a real browser: one browser and one server a test file, unless a test needs a store of its own.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, onTestFinished } from 'vitest';
import { findChromium } from '../../scripts/setup/chromium.mjs';
import { scratchFolder } from '../testServer.ts';
import { type BuiltServer, startBuiltServer } from './builtServer.ts';
import { fromNetwork, lanBrowserFlags, onLan, passTo } from './lan.ts';

const executablePath = findChromium();
const flags = [
  ...['--no-sandbox', '--disable-gpu', '--disable-quic', '--disable-background-networking'],
  ...(onLan ? lanBrowserFlags : []),
];

export const noBrowser = !executablePath;

interface Opening extends BrowserContextOptions {
  /** Path of the page, without its first slash. */
  readonly at?: string;
  /** A server with a store that no other test writes to. */
  readonly ownServer?: boolean;
  /** A server that the test has started and ends itself. */
  readonly on?: BuiltServer;
  /** The page's clocks go only when the test makes them. */
  readonly fakeClock?: boolean;
}

/** Call once at the top of a describe block; gives the way to open a page, with what its console complained of. */
export function pages() {
  let browser: Browser;
  let shared: BuiltServer;
  const data = mkdtempSync(join(tmpdir(), 'umberpan-'));
  beforeAll(async () => {
    browser = await chromium.launch({ ...(executablePath && { executablePath }), args: flags });
    shared = await startBuiltServer(data);
  });
  afterAll(async () => {
    await browser?.close();
    await shared?.end('SIGTERM');
    rmSync(data, { recursive: true, force: true });
  });

  return async ({ at = '', ownServer, on, fakeClock, ...options }: Opening = {}) => {
    const server = on ?? (ownServer ? await startBuiltServer(scratchFolder()) : shared);
    const baseURL = onLan ? fromNetwork(server.address) : server.address;
    const usual = { viewport: { width: 1280, height: 900 }, locale: 'en-GB', baseURL };
    const context = await browser.newContext({ ...usual, ...options });
    if (onLan) {
      const pass = await passTo(server.address, 'keeper');
      await context.addInitScript((token) => localStorage.setItem('umberpan.pass', token), pass);
    }
    const page = await context.newPage();
    servers.set(page, server);
    if (fakeClock) await page.clock.install();
    const complaints: string[] = [];
    page.on('console', (message) => {
      if (['error', 'warning'].includes(message.type())) complaints.push(message.text());
    });
    page.on('pageerror', (error) => complaints.push(error.message));
    await page.addInitScript(() =>
      document.addEventListener('securitypolicyviolation', (event) =>
        console.error(`refused by policy: ${event.blockedURI}`),
      ),
    );
    onTestFinished(async () => {
      await context.close();
      if (ownServer) await server.end('SIGTERM');
    });
    await page.goto(`/${at}`);
    return { page, server, complaints };
  };
}

const servers = new WeakMap<Page, BuiltServer>();

/** Asks the server of a page as the machine that serves does, beside the page. @param path such as `/api/kits` */
export function askBeside(
  page: Page,
  path: string,
  { method = 'GET', body, headers = {} }: { method?: string; body?: unknown; headers?: Record<string, string> } = {},
): Promise<Response> {
  const { address = '' } = servers.get(page) ?? {};
  const sent = body === undefined ? {} : { body: JSON.stringify(body) };
  const json = body === undefined ? {} : { 'content-type': 'application/json' };
  return fetch(new URL(path, address), { method, headers: { ...json, ...headers }, ...sent });
}

export const planned = (page: Page) => page.locator('.picture .pan-line').waitFor();
export const bandsThere = (page: Page) => page.locator('.picture .band-edges').waitFor();
export const field = (page: Page, label: string) => page.getByLabel(label, { exact: true });

/** The text that is seen of an element. */
export async function seen(page: Page, selector: string): Promise<string> {
  return (await page.locator(selector).first().allInnerTexts()).join();
}

/** Waits until an element says something that fits. */
export async function says(page: Page, selector: string, pattern: RegExp): Promise<void> {
  await page.locator(selector, { hasText: pattern }).first().waitFor();
}
