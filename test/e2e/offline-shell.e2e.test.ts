// The app's own files stay in the browser: after a first visit the page opens without its server.
import { cpSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { beforeEach, describe, expect, it } from 'vitest';
import { listeningServer } from '../liveServer.ts';
import { scratchFolder } from '../testServer.ts';
import { onLan } from './lan.ts';
import { noBrowser, pages, planned } from './openPage.ts';

const built = fileURLToPath(new URL('../../dist/web/', import.meta.url));

describe.skipIf(noBrowser)('without its server', () => {
  const open = pages();
  beforeEach(({ skip }) => skip(onLan, 'over plain http no browser has a service worker'));
  type Opened = Awaited<ReturnType<typeof open>>;

  const shellKept = ({ page }: Opened) =>
    page.waitForFunction(async () => {
      await navigator.serviceWorker.ready;
      return navigator.serviceWorker.controller !== null;
    });

  it('the page opens again, plans, and complains of nothing but the server', async () => {
    const opened = await open({ ownServer: true });
    const { page, server, complaints } = opened;
    await shellKept(opened);
    await server.end('SIGKILL');
    await page.reload();
    await planned(page);
    expect(await page.title()).toContain('Umberpan');
    await page.getByRole('link', { name: 'Stove' }).click();
    await page.getByRole('heading', { level: 1 }).waitFor();
    const others = complaints.filter((text) => !/ERR_CONNECTION_REFUSED/.test(text));
    expect(others).toEqual([]);
  });

  it('a place that was never seen opens too', async () => {
    const opened = await open({ ownServer: true });
    await shellKept(opened);
    await opened.server.end('SIGKILL');
    await opened.page.goto(`${opened.server.address}care`);
    await opened.page.getByRole('heading', { level: 1 }).waitFor();
  });

  it('the API is never answered from the browser', async () => {
    const opened = await open({ ownServer: true });
    await shellKept(opened);
    const ask = () => opened.page.evaluate(async () => (await fetch('/api/health')).ok);
    expect(await ask()).toBe(true);
    await opened.server.end('SIGKILL');
    await expect(ask()).rejects.toThrow(/Failed to fetch/);
  });

  it('a browser that could install the page finds nothing amiss in its manifest', async () => {
    const { page } = await open();
    const session = await page.context().newCDPSession(page);
    const { errors, manifest } = await session.send('Page.getAppManifest');
    expect(errors).toEqual([]);
    expect(manifest).toMatchObject({ name: 'Umberpan', display: expect.stringMatching(/standalone$/i) });
    const { installabilityErrors } = await session.send('Page.getInstallabilityErrors');
    // A page of a test has a profile that is not kept, as a private window.
    expect(installabilityErrors.map(({ errorId }) => errorId)).toEqual(['in-incognito']);
  });

  it('a new version waits while a cook is open in any tab, and takes over when asked after it', async () => {
    const folder = scratchFolder();
    cpSync(built, folder, { recursive: true });
    const { address } = await listeningServer(scratchFolder(), { pages: folder });
    const opened = await open();
    const { page } = opened;
    await page.goto(address);
    await shellKept(opened);

    const rewrite = (file: string, from: RegExp, to: string) =>
      writeFileSync(join(folder, file), readFileSync(join(folder, file), 'utf8').replace(from, to));
    rewrite('index.html', /<title>.*?<\/title>/, '<title>a later one</title>');
    rewrite('service-worker.js', /"version":"\w+"/, '"version":"later"');
    await page.evaluate(async () => {
      void navigator.locks.request('umberpan.cook.1', () => new Promise((end) => Object.assign(window, { end })));
      await (await navigator.serviceWorker.ready).update();
    });
    const waits = () => page.evaluate(async () => (await navigator.serviceWorker.ready).waiting !== null);
    const ask = () =>
      page.evaluate(async () => (await navigator.serviceWorker.ready).waiting?.postMessage('take over'));
    const shells = () => page.evaluate(async () => (await caches.keys()).length);
    const served = () => page.evaluate(async () => /a later one/.test(await (await fetch('/index.html')).text()));
    await expect.poll(waits).toBe(true);
    await ask();
    await page.waitForTimeout(500);
    expect([await waits(), await shells(), await served()]).toEqual([true, 2, false]);
    await page.evaluate(() => (window as unknown as { end(): void }).end());
    await ask();
    await expect.poll(waits).toBe(false);
    await expect.poll(served).toBe(true);
    await expect.poll(shells).toBe(1);
  });
});
