import { chromium } from 'playwright-core';
import { expect, it, onTestFinished } from 'vitest';
import { findChromium } from '../../scripts/setup/chromium.mjs';
import { scratchFolder } from '../testServer.ts';
import { startBuiltServer } from './builtServer.ts';
import { fromNetwork, lanBrowserFlags, onLan } from './lan.ts';

const executablePath = findChromium();

it.skipIf(!executablePath)('the built server shows its page in Chromium without an error in the console', async () => {
  const server = await startBuiltServer(scratchFolder());
  const browser = await chromium.launch({
    ...(executablePath && { executablePath }),
    args: [
      ...['--no-sandbox', '--disable-gpu', '--disable-quic', '--disable-background-networking'],
      ...lanBrowserFlags,
    ],
  });
  onTestFinished(async () => {
    await browser.close();
    await server.end('SIGTERM');
  });
  const page = await browser.newPage();
  const complaints: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('requestfailed', (request) => complaints.push(`${request.url()} failed`));

  // On the network this is a stranger, to whom the page opens too.
  await page.goto(onLan ? fromNetwork(server.address) : server.address);
  await page.locator('#app > *').first().waitFor();
  expect(await page.title()).toContain('Umberpan');
  const health = await page.evaluate(async () => (await fetch('/api/health')).json());
  expect(health.status).toBe('up');
  expect(complaints.filter((text) => !(onLan && /401/.test(text)))).toEqual([]);
});
