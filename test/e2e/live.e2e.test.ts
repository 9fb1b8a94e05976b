// Real cooks at the Stove in real browsers: by hand and by thermometer, on two devices, and with the server gone.
import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { describe, expect, it, onTestFinished } from 'vitest';
import type { LogEvent } from '../../src/core/log/event.ts';
import { foldCook } from '../../src/core/log/fold.ts';
import { scratchFolder } from '../testServer.ts';
import { type BuiltServer, startBuiltServer } from './builtServer.ts';
import { onLan } from './lan.ts';
import { objections } from './objections.ts';
import { noBrowser, pages, says } from './openPage.ts';
import { logOf, startCook } from './startCook.ts';

const phone = { width: 360, height: 780 };
const done = '.card .done';

const press = async (page: Page, name: string | RegExp) => {
  // Longer than the guard against double taps.
  await page.waitForTimeout(300);
  await page.getByRole('button', { name }).first().click();
};

/** What the log comes to, without what differs from one run to the next: names and times. */
function outcome(events: readonly LogEvent[]) {
  const { deeds, readings, answers, stepIndex, struckOut } = foldCook(events);
  const bare = (entries: readonly { readonly kind: string; readonly body: unknown }[]) =>
    entries.map(({ kind, body }) => ({ kind, body }));
  return {
    deeds: bare(deeds),
    readings: bare(readings),
    answers: bare(answers),
    stepIndex,
    struckOut: bare(struckOut),
  };
}

const logShown = (page: Page) => page.locator('.log-book li > span:nth-child(2)').allInnerTexts();

describe.skipIf(noBrowser)('a real cook', () => {
  const open = pages();

  it('is not begun before everything is ticked; then it goes by what is typed, undone and put right', async () => {
    const { page, server, complaints } = await open({ at: 'stove/cook', viewport: phone });
    await page.locator('.checks input').first().waitFor();
    expect(await page.getByRole('button', { name: 'Start the cook' }).isDisabled()).toBe(true);
    const cook = await startCook(page);
    await says(page, '[data-role=mode]', /Live, no reading yet/);
    await page.waitForTimeout(300);
    await page.locator(done).click();
    await says(page, '.beside', /Noted: Dial \d/);

    // A thermometer read by hand; the missing digit of a slip is asked for.
    await press(page, /^Keep \d+ °C$/);
    await says(page, '[data-role=mode]', /Live, read by hand/);
    await page.getByLabel('It shows, °C', { exact: true }).fill('131');
    await press(page, /^Keep 131 °C$/);
    await says(page, '.slip', /Really 131 °C\?/);
    await press(page, 'Look again');

    await press(page, 'Foam!');
    await says(page, '.alarm-strip', /Foam rising/);
    await press(page, 'It is quiet again');

    await press(page, /^Dial \d one up/);
    await says(page, '.beside', /Noted: Dial/);
    const before = await logShown(page);
    await press(page, 'Undo');
    await page.waitForFunction((count) => document.querySelectorAll('.log-book li').length < count, before.length);

    await page.locator('.log-book li', { hasText: 'Read 2' }).getByRole('button', { name: 'Put right' }).click();
    await page.getByRole('button', { name: 'Thermometer, °C: +1' }).click();
    await press(page, 'It was this');
    await says(page, '.log-book', /put right/);

    await says(page, '[data-role=link]', /All is on the server/);
    const events = await logOf(server, cook);
    const state = foldCook(events);
    expect(state.mode).toBe('live');
    expect(state.struckOut.map(({ kind }) => kind)).toEqual(['heat']);
    expect(state.readings).toHaveLength(1);
    expect(state.readings[0]?.before).toHaveLength(1);
    expect(state.answers.map(({ body }) => body)).toEqual([{ rising: true }, { rising: false }]);
    await page.getByText('Something else was done').click();
    await page.getByText('Measure the pan').click();
    await page.setViewportSize({ width: 320, height: 640 });
    // The picture is drawn again for the new width.
    const tooWide = () =>
      page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
    await expect.poll(tooWide).toBe(0);
    expect(await objections(page)).toEqual([]);
    expect(complaints).toEqual([]);
  }, 90_000);

  it('shows what a thermometer sends, as the line on the page says', async () => {
    const { page, server } = await open({ at: 'stove/cook' });
    const cook = await startCook(page);
    await page.getByText('A thermometer that sends by itself').click();
    const line = await page.locator('.thermometer code').textContent();
    const [, type, value, address] = /-H '([^']+)' -d (\S+) '([^']+)'/.exec(line ?? '') ?? [];
    const { origin, pathname, search } = new URL(address ?? '');
    expect([value, origin]).toEqual(['131.5', new URL(page.url()).origin]);
    const headers = { 'content-type': type?.split(': ')[1] ?? '' };
    const answer = await fetch(new URL(pathname + search, server.address), { method: 'POST', headers, body: '21.4' });
    expect(answer.status).toBe(201);
    await says(page, '.glance-detail', /Thermometer: 21\.4 °C/);
    await says(page, '[data-role=mode]', /Live, with a thermometer/);
    expect(foldCook(await logOf(server, cook)).readings).toHaveLength(1);
  }, 60_000);

  it('is followed and written on two devices; an alarm seen on one is silent on the other', async () => {
    const { page, server } = await open({ at: 'stove/cook' });
    const cook = await startCook(page);
    const other = await open({ at: `stove/cook/${cook}`, viewport: phone, on: server });
    const second = other.page;
    await second.locator(done).waitFor();
    await page.waitForTimeout(300);
    await page.locator(done).click();
    await says(second, '.log-book', /Dial \d/);
    await press(second, /^Stirred/);
    await says(page, '.log-book', /Stirred/);
    await press(page, 'Foam!');
    for (const each of [page, second]) await says(each, '.alarm-strip[data-phase=new]', /Foam rising/);
    await press(second, 'Seen: Foam rising');
    await page.locator('.alarm-strip[data-phase=seen]').waitFor();
    expect(await logShown(second)).toEqual(await logShown(page));

    // In every other place the alarm is heard and seen too.
    await second.getByRole('link', { name: 'First aid' }).click();
    await says(second, '.watch .alarm-strip', /Foam rising/);
    await press(second, 'It is quiet again');
    await second.getByRole('link', { name: 'Back to the cook' }).click();
    await says(second, '.log-book', /Quiet again/);
  }, 90_000);

  it('can be poured, set, weighed and made a lot', async () => {
    const { page, server, complaints } = await open({ at: 'stove/cook', viewport: phone, fakeClock: true });
    const cook = await startCook(page);
    await page.clock.runFor(1000);
    await page.locator(done).click();
    for (let minute = 0; minute < 15; minute++) await page.clock.runFor(60_000);
    await page.clock.resume();
    const next = page.locator('.deeds .deed', { hasText: /^(Begin|Pour)/ });
    for (let pouring = false; !pouring; ) {
      const noted = (await logShown(page)).length;
      pouring = (await next.textContent())?.startsWith('Pour') ?? false;
      await page.waitForTimeout(300);
      await next.click();
      if (!pouring) await expect.poll(async () => (await logShown(page)).length).toBeGreaterThan(noted);
    }
    await page.getByRole('heading', { name: 'Set and break' }).waitFor();
    await says(page, '.setting', /Cooling/);
    await page.getByLabel(/name/i).fill('Sloe shards');
    await press(page, 'Make the lot');
    await says(page, '.setting', /Sloe shards/);
    const lots = async () => {
      const answer = await fetch(`${server.address}api/lots`);
      return ((await answer.json()) as { lots: { lot: { name: string; cookId: string } }[] }).lots.map(
        ({ lot }) => lot,
      );
    };
    await expect.poll(lots).toContainEqual(expect.objectContaining({ name: 'Sloe shards', cookId: cook }));
    await expect.poll(async () => foldCook(await logOf(server, cook)).ended?.body).toEqual({ how: 'done' });
    expect(complaints).toEqual([]);
  }, 90_000);
});

describe.skipIf(noBrowser)('a server that freezes, is killed and comes back', () => {
  const open = pages();

  /** The same acts in every run; `between` happens to the server on the way. */
  async function cookThrough(
    page: Page,
    between: {
      readonly frozen: () => Promise<void>;
      readonly killed: () => Promise<void>;
      readonly back: () => Promise<void>;
    },
  ): Promise<string> {
    const cook = await startCook(page);
    /** A tap counts once the page shows it. */
    const noted = async (name: string | RegExp, says: string) => {
      const before = (await logShown(page)).filter((each) => each.startsWith(says)).length;
      await press(page, name);
      await expect
        .poll(async () => (await logShown(page)).filter((each) => each.startsWith(says)).length)
        .toBe(before + 1);
    };
    await noted('Done', 'Dial');
    await between.frozen();
    await page.getByLabel('It shows, °C', { exact: true }).fill('23');
    await noted(/^Keep 23 °C$/, 'Read 23');
    await noted(/^Stirred/, 'Stirred');
    await between.killed();
    await noted('Foam!', 'Foam rises');
    await noted('It is quiet again', 'Quiet');
    await noted(/^Begin: Climb/, 'Begun: Climb');
    await noted(/^Off the heat/, 'Off the heat');
    await between.back();
    await noted(/^Stirred/, 'Stirred');
    await says(page, '[data-role=link]', /All is on the server/);
    return cook;
  }

  it('takes nothing from the cook and doubles nothing: the log ends as in an undisturbed run', async () => {
    const nothing = async () => {};
    const calm = await open({ at: 'stove/cook', ownServer: true });
    const undisturbed = await cookThrough(calm.page, { frozen: nothing, killed: nothing, back: nothing });
    const expected = outcome(await logOf(calm.server, undisturbed));

    const data = scratchFolder();
    let server = await startBuiltServer(data);
    const { port } = new URL(server.address);
    onTestFinished(async () => void (await server.end('SIGKILL')));
    const { page } = await open({ at: 'stove/cook', on: server });
    const cook = await cookThrough(page, {
      async frozen() {
        if (!onLan) await page.evaluate(async () => void (await navigator.serviceWorker.ready));
        server.freeze();
        // A frozen server closes nothing: only its silence tells.
        await page.locator('[data-role=link][data-state="on its own"]').waitFor();
      },
      async killed() {
        await server.end('SIGKILL');
        // Over plain http no browser keeps the page: it has to stay open.
        if (!onLan) await page.reload();
        await page.locator('.glance').waitFor();
        await says(page, '[data-role=link]', /Server away: \d entries kept here/);
      },
      async back() {
        server = await startBuiltServer(data, Number(port));
        await page.locator('[data-role=link][data-state=live]').waitFor();
      },
    });
    expect(outcome(await logOf(server, cook))).toEqual(expected);
  }, 150_000);

  /** Stirring on a phone and foam on a second device, in turns, with the clocks of both made to go. */
  async function inTurns(server: BuiltServer, apartMs: number, away: () => Promise<void>) {
    const { page } = await open({ at: 'stove/cook', on: server, fakeClock: true });
    const cook = await startCook(page);
    await page.clock.runFor(1000);
    const second = await open({ at: `stove/cook/${cook}`, on: server, fakeClock: true, viewport: phone });
    const both = [page, second.page];
    const passes = async (ms: number) => void (await Promise.all(both.map((each) => each.clock.runFor(ms))));
    const counts = async (each: Page, says: string) =>
      (await logShown(each)).filter((words) => words.startsWith(says)).length;
    const noted = async (each: Page, name: string | RegExp, says: string, before: number) => {
      const isThere = () => each.getByRole('button', { name }).first().isVisible();
      await expect.poll(async () => passes(500).then(isThere)).toBe(true);
      await press(each, name);
      await expect.poll(async () => passes(500).then(() => counts(each, says))).toBe(before + 1);
    };
    await passes(1000);
    await page.locator(done).click();
    await expect.poll(() => counts(page, 'Dial')).toBe(1);
    await expect.poll(async () => passes(1000).then(() => counts(second.page, 'Dial'))).toBe(1);
    // A pan that stays on for half an hour would scorch, and that alarm stand above foam's.
    await noted(page, /^Off the heat/, 'Off the heat', 0);
    await expect.poll(async () => passes(1000).then(() => counts(second.page, 'Off the heat'))).toBe(1);
    await away();
    for (let time = 0; time < 3; time++) {
      await passes(apartMs);
      await noted(page, /^Stirred/, 'Stirred', time);
      await passes(apartMs);
      await noted(second.page, 'Foam!', 'Foam rises', time);
      await noted(second.page, 'It is quiet again', 'Quiet', time);
    }
    await passes(1000);
    return { page, second: second.page, cook, passes };
  }

  /** The link's words, with a second gone by: the page's clock goes only as it is made to, the network takes its own time. */
  const linkAfterASecond = (page: Page, passes: (ms: number) => Promise<void>) => async () => {
    await passes(1000);
    return page.locator('[data-role=link]').textContent();
  };

  async function savedLog(page: Page): Promise<string> {
    const download = page.waitForEvent('download');
    await press(page, 'Save the log as a file');
    return readFileSync(await (await download).path(), 'utf8');
  }

  it('half an hour away, two devices go on by their own twins, and the log ends as in an undisturbed run', async () => {
    const calm = await startBuiltServer(scratchFolder());
    onTestFinished(async () => void (await calm.end('SIGTERM')));
    const undisturbed = await inTurns(calm, 1000, async () => {});
    for (const each of [undisturbed.page, undisturbed.second])
      await expect
        .poll(linkAfterASecond(each, undisturbed.passes), { timeout: 30_000 })
        .toMatch(/All is on the server/);
    const expected = outcome(await logOf(calm, undisturbed.cook));

    const data = scratchFolder();
    let server = await startBuiltServer(data);
    const { port } = new URL(server.address);
    onTestFinished(async () => void (await server.end('SIGKILL')));
    const { page, second, cook, passes } = await inTurns(
      server,
      300_000,
      async () => void (await server.end('SIGKILL')),
    );
    await says(page, '.glance', /3\d min/);
    for (const each of [page, second]) await says(each, '[data-role=link]', /Server away: \d+ entries kept here/);

    // Should the server never come back, each device can carry what it holds to another one.
    const elsewhere = (await open({ ownServer: true })).server;
    for (const each of [page, second]) {
      const body = await savedLog(each);
      const headers = { 'content-type': 'application/x-ndjson' };
      const answer = await fetch(`${elsewhere.address}api/cooks/import`, { method: 'POST', headers, body });
      expect(answer.status).toBe(200);
    }
    expect(outcome(await logOf(elsewhere, cook))).toEqual(expected);

    server = await startBuiltServer(data, Number(port));
    for (const each of [page, second])
      await expect.poll(linkAfterASecond(each, passes), { timeout: 30_000 }).toMatch(/All is on the server/);
    const events = await logOf(server, cook);
    expect(outcome(events)).toEqual(expected);
    const stirs = foldCook(events).deeds.flatMap(({ kind, timeS }) => (kind === 'stir' ? [timeS] : []));
    expect((stirs.at(-1) ?? 0) - (stirs[0] ?? 0)).toBeGreaterThan(19 * 60);
    await expect.poll(async () => passes(1000).then(() => logShown(second))).toEqual(await logShown(page));
    const file = await fetch(`${server.address}api/cooks/${cook}/file`);
    expect(await savedLog(page)).toBe(await file.text());
  }, 150_000);
});
