// A phone on the home network, over plain http by a name of the network: let in by a code, cooking beside the host, and a guest who looks on.
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it, onTestFinished } from 'vitest';
import { findChromium } from '../../scripts/setup/chromium.mjs';
import { sampleCook } from '../sampleCook.ts';
import { scratchFolder } from '../testServer.ts';
import { startBuiltServer } from './builtServer.ts';
import { fromNetwork, lanBrowserFlags, lanServerFlags, passTo } from './lan.ts';
import { objections } from './objections.ts';
import { says } from './openPage.ts';

const executablePath = findChromium();
const phone = { width: 360, height: 780 };

describe.skipIf(!executablePath)('a phone on the home network', () => {
  let browser: Browser;
  beforeAll(async () => {
    const args = ['--no-sandbox', '--disable-gpu', '--disable-quic', '--disable-background-networking'];
    browser = await chromium.launch({ ...(executablePath && { executablePath }), args: [...args, ...lanBrowserFlags] });
  });
  afterAll(() => browser?.close());

  async function lan() {
    const server = await startBuiltServer(scratchFolder(), 0, lanServerFlags);
    onTestFinished(async () => void (await server.end('SIGTERM')));
    return { host: server.address, network: fromNetwork(server.address) };
  }

  async function open(address: string, viewport = { width: 1280, height: 900 }) {
    const context = await browser.newContext({ viewport, locale: 'en-GB' });
    onTestFinished(() => context.close());
    const page = await context.newPage();
    const complaints: string[] = [];
    page.on('console', (message) => {
      if (['error', 'warning'].includes(message.type())) complaints.push(message.text());
    });
    page.on('pageerror', (error) => complaints.push(error.message));
    await page.goto(address);
    return { page, complaints };
  }

  /** @param inMs from now on, by a clock that is believed */
  async function begin(host: string, inMs = 0): Promise<string> {
    const { cook, begun } = sampleCook();
    const body = JSON.stringify({ ...begun, tDevice: new Date(Date.now() + inMs).toISOString(), clockOffsetMs: 0 });
    const headers = { 'content-type': 'application/json' };
    expect((await fetch(`${host}api/cooks`, { method: 'POST', headers, body })).status).toBe(201);
    return cook;
  }

  async function codeFor(host: Page, role: string): Promise<string> {
    await host.getByLabel('It may').selectOption(role);
    await host.getByRole('button', { name: 'Make a code' }).click();
    await says(host, '.code', role === 'reader' ? /as guest/ : new RegExp(`as ${role}`));
    return ((await host.locator('.code-letters').textContent()) ?? '').replace(/\s/g, '');
  }

  const accessible = async (page: Page) => {
    expect(await objections(page)).toEqual([]);
  };

  it('is let in by a code, follows a cook live and is let out at once; a guest sees the same, and nothing to tap', async () => {
    const { host, network } = await lan();
    const cook = await begin(host);
    const stranger = await open(network, phone);
    await says(stranger.page, '.standing-line', /not let in/);
    expect(await stranger.page.evaluate(() => isSecureContext)).toBe(false);

    const keeper = await open(`${host}devices`);
    const code = await codeFor(keeper.page, 'cook');
    expect(await keeper.page.locator('.qr-code').getAttribute('aria-label')).toContain(`pair#${code}`);
    await accessible(keeper.page);

    // The code does not stay in the address.
    const { page, complaints } = await open(`${network}pair#${code}`, phone);
    await page.getByRole('button', { name: 'Pair' }).waitFor();
    await expect.poll(() => page.url()).toBe(`${network}pair`);
    await accessible(page);
    await page.getByLabel('Name of this device').fill('Phone at the stove');
    await page.getByRole('button', { name: 'Pair' }).click();
    await says(page, 'h1', /^Paired/);
    const words = await page.locator('.check-words').textContent();
    await says(keeper.page, '.device-list', new RegExp(`Phone at the stove.*${words}`, 's'));
    await says(
      keeper.page,
      '[aria-labelledby=invite]',
      /“Phone at the stove” is let in as cook, and the code is used up/,
    );
    expect(await keeper.page.locator('.code').count()).toBe(0);

    // The stream of the cook shows the device's pass.
    await page.getByRole('link', { name: /To the cook/ }).click();
    await says(page, '[data-role=link]', /All is on the server/);

    const guestCode = await codeFor(keeper.page, 'reader');
    const guest = await open(`${network}pair#${guestCode}`, phone);
    await guest.page.getByRole('button', { name: 'Pair' }).click();
    await guest.page.getByRole('link', { name: /To the cook/ }).click();

    const reading = { method: 'POST', headers: { 'content-type': 'text/plain' }, body: '21.4' };
    await fetch(`${host}api/readings?unit=C&cook=${cook}`, reading);
    for (const each of [page, guest.page]) await says(each, '.glance-detail', /Thermometer: 21\.4 °C/);
    await says(guest.page, '.standing-line', /guest until/);
    const taps = ['Foam!', 'Done', /^Stirred/, /^Keep/, 'Put right', 'Seen'];
    for (const name of taps) expect(await guest.page.getByRole('button', { name }).count()).toBe(0);
    expect(await page.getByRole('button', { name: /^Keep/ }).count()).toBe(1);
    for (const each of [keeper, { complaints }, guest]) expect(each.complaints).toEqual([]);

    await keeper.page.getByRole('button', { name: 'Let Phone at the stove out' }).click();
    await page.locator('[data-role=link][data-state="not let in"]').waitFor();
    await says(page, '.standing-line', /not let in/);

    // What is done now stays on the phone, until a code that another tab is opened with lets it in again.
    await page.locator('.card .done').click();
    await says(page, '[data-role=link]', /not let in: 1 entry kept here/);
    await accessible(page);
    const again = await codeFor(keeper.page, 'cook');
    const tab = await page.context().newPage();
    await tab.goto(`${network}pair#${again}`);
    await tab.getByRole('button', { name: 'Pair' }).click();
    await says(tab, 'h1', /^Paired/);
    await says(page, '[data-role=link]', /All is on the server/);
    expect(await page.locator('.standing-line').count()).toBe(0);
    const log = await fetch(`${host}api/cooks/${cook}/events`);
    const { events } = (await log.json()) as { events: { kind: string }[] };
    expect(events.map(({ kind }) => kind)).toEqual(['begun', 'reading', 'heat']);
  }, 90_000);

  it('that is not let in is told so in every place, with the way to be let in, and never that the server is away', async () => {
    const { host, network } = await lan();
    const cook = await begin(host);
    const { page } = await open(network, phone);
    const places = [
      '',
      'stove/cook',
      `stove/cook/${cook}`,
      'book',
      `book/${cook}`,
      'shelf',
      `shelf/${cook}`,
      'glass',
      'kit',
    ];
    for (const place of places) {
      await page.goto(network + place);
      await says(page, '#main', /This device is not let in/);
      expect(await page.locator('#main').getByRole('link', { name: 'Pair it' }).first().getAttribute('href')).toBe(
        '/pair',
      );
      const text = await page.locator('body').textContent();
      expect(text, place).not.toMatch(/not reached|server away|no such lot|no cook at this address/i);
    }
    // It can begin a cook of its own, which waits for the same.
    await page.goto(`${network}stove/cook`);
    await page.locator('.checks input').first().waitFor();
    for (const box of await page.locator('.checks input').all()) await box.check();
    await page.getByRole('button', { name: 'Start the cook' }).click();
    await says(page, '[data-role=link]', /This device is not let in: 1 entry kept here/);
    await page.getByRole('link', { name: 'Pair it' }).first().click();
    await page.getByLabel('Code').fill(await codeFor((await open(`${host}devices`)).page, 'cook'));
    await page.getByRole('button', { name: 'Pair' }).click();
    await says(page, 'h1', /^Paired/);
    const cooks = async () => ((await (await fetch(`${host}api/cooks`)).json()) as { cooks: object[] }).cooks.length;
    await expect.poll(cooks).toBe(2);
  }, 90_000);

  it('of a guest sees the one cook that was shared, live and in the Book, and is told so elsewhere; a thermometer is woken from the list', async () => {
    const { host, network } = await lan();
    const [shared, other] = [await begin(host), await begin(host)];
    const keeper = await open(`${host}devices?share=${shared}`);
    expect(await keeper.page.getByLabel('It may').inputValue()).toBe('reader');
    expect(await keeper.page.getByLabel('For how long').inputValue()).toBe('6');
    await keeper.page.getByRole('button', { name: 'Make a code' }).click();
    await says(keeper.page, '.code', /as guest/);
    const code = ((await keeper.page.locator('.code-letters').textContent()) ?? '').replace(/\s/g, '');

    const { page, complaints } = await open(`${network}pair#${code}`, phone);
    await page.getByLabel('Name of this device').fill('Visitor');
    await page.getByRole('button', { name: 'Pair' }).click();
    await says(page, '#this-device + p', /only looks on at one cook/);
    await page.getByRole('link', { name: /^To the cook/ }).click();
    await says(page, '[data-role=link]', /All is on the server/);
    expect(page.url()).toContain(shared);
    await says(page, '.standing-line', /guest until .*: one cook was shared with you/);
    await accessible(page);
    expect(complaints).toEqual([]);
    await page.goto(`${network}book/${shared}`);
    await says(page, 'h1', /\S/);
    await page.getByRole('heading', { name: 'Pass on' }).waitFor();
    await page.goto(`${network}shelf`);
    await says(page, '#main', /One cook was shared with this device, and this was not/);
    await page.locator('.standing-line').getByRole('link', { name: 'To it' }).click();
    await page.getByRole('link', { name: /^To the cook/ }).waitFor();
    await page.goto(`${network}stove/cook/${other}`);
    await says(page, '#main', /There is no cook at this address/);

    // It sleeps until the keeper says which cook it sends to.
    const token = await passTo(host, 'probe');
    await keeper.page.getByLabel('The probe sends to').selectOption({ label: 'Nothing: it sleeps' });
    const send = async () => {
      const headers = { authorization: `Bearer ${token}`, 'content-type': 'text/plain' };
      return (await fetch(`${host}api/readings?unit=C`, { method: 'POST', headers, body: '21.4' })).status;
    };
    await expect.poll(send).toBe(409);
    await keeper.page.getByLabel('The probe sends to').selectOption(shared);
    await expect.poll(send).toBe(201);
    await accessible(keeper.page);
    expect(keeper.complaints).toEqual([]);
  }, 90_000);

  it('begins a cook by a clock that runs an hour ahead: it is drawn as one that begins now', async () => {
    const { host } = await lan();
    const cook = await begin(host, 3_600_000);
    const { page, complaints } = await open(`${host}stove/cook/${cook}`);
    const reading = { method: 'POST', headers: { 'content-type': 'text/plain' }, body: '21.4' };
    await fetch(`${host}api/readings?unit=C&cook=${cook}`, reading);
    await says(page, '.glance-detail', /Thermometer: 21\.4 °C/);
    await page.locator('.filling .readings').waitFor({ state: 'attached' });
    await page.waitForTimeout(2000);
    expect(complaints).toEqual([]);
  }, 60_000);
});
