// The Book in a real browser: cooks listed with what they landed at, one replayed, two laid over one another and explained, a report.
import { randomUUID } from 'node:crypto';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { writeCookFile } from '../../src/core/log/cookFile.ts';
import type { EventOf } from '../../src/core/log/event.ts';
import { descriptors } from '../../src/core/lot/taste.ts';
import { defaultKit } from '../../src/core/pan/kit.ts';
import { defaultRequest } from '../../src/core/planning/request.ts';
import { cookedLog } from '../cookedLog.ts';
import { sampleDevice, sha256 } from '../sampleCook.ts';
import { scratchFolder } from '../testServer.ts';
import { objections } from './objections.ts';
import { noBrowser, pages, planned, says } from './openPage.ts';

const short = { ...defaultRequest, massKg: 0.2, route: 'bright', invertMinutes: 5, brownMinutes: 8 } as const;

/** The file of a small cook with a reading each 20 s. */
function cookFile(name: string, mode: 'live' | 'rehearsal', change: object = {}): string {
  const cook = randomUUID();
  const cooked = cookedLog(defaultKit, 4, mode, cook, { request: { ...short, name, ...change } });
  // Rehearsals are those with surprises.
  const [{ body }] = cooked.events as [EventOf<'begun'>];
  const rehearsal = body.rehearsal && { ...body.rehearsal, surprises: true };
  const few = cooked.events
    .filter(({ kind }, place) => kind !== 'reading' || place % 2 === 0)
    .map((event) => (event.kind === 'begun' ? { ...event, body: { ...event.body, rehearsal } } : event));
  const device = sampleDevice(cook);
  const test = device.make('spoonTest', { a430: 3, behaviour: 'snaps', taste: [] }, cooked.lastS - 60);
  return writeCookFile(cook, [...few, test, device.make('ended', { how: 'done' }, cooked.lastS + 10)], sha256);
}

const flat = { low: 0.3, mid: 0.3, high: 0.3 };
const expected = { massKg: flat, waterShare: flat, inverted: flat, a430: flat, ebc: flat, srm: flat, icumsa: flat };
const lotOf = (cookId: string) => ({
  name: 'Shards',
  cookId,
  planId: null,
  madeAt: '2030-03-01T18:40:00.000Z',
  form: 'hard',
  expected,
  weighedKg: null,
});
const glassOf = (lotId: string) => ({
  name: 'Abbey',
  rest: { volumeL: 20, gravity: 1.06, a430PerCm: 0.4, attenuation: 0.75, sodiumMgPerL: 0, calciumMgPerL: 0 },
  doses: [
    { sugar: { kind: 'lot', lotId, alkali: null, fermentable: null, pricePerKg: null }, massKg: 0.3, added: 'kettle' },
  ],
  kettleLossL: 0,
  pathCm: 7,
  boughtPricePerKg: null,
  bottledOn: null,
});
const tastingOf = (liking: number) => ({
  tastedAt: '2030-06-01T19:00:00.000Z',
  weeks: null,
  strengths: Object.fromEntries(descriptors.map((name) => [name, null])),
  liking,
  note: '',
});

async function accessible(page: Page) {
  expect(await objections(page)).toEqual([]);
}

describe.skipIf(noBrowser)('the Book', () => {
  const open = pages();

  it('lists, finds, replays, lays over, explains and reports', async () => {
    const { page, server, complaints } = await open({
      at: 'book',
      ownServer: true,
      viewport: { width: 360, height: 780 },
    });
    await says(page, 'main', /Nothing has been cooked yet/);
    for (const file of [
      cookFile('Plum shards', 'live'),
      cookFile('Plum darker', 'live', { alkaliGPerKg: 7 }),
      cookFile('Trial', 'rehearsal'),
    ]) {
      const headers = { 'content-type': 'application/x-ndjson' };
      const answer = await fetch(`${server.address}api/cooks/import`, { method: 'POST', headers, body: file });
      expect(answer.status).toBe(200);
    }
    await page.reload();
    await page.locator('.cook-landed strong').nth(2).waitFor();
    expect(await page.locator('.cook-row[data-mode=rehearsal]').allInnerTexts()).toEqual([
      expect.stringMatching(/Trial[\s\S]*Rehearsal/),
    ]);
    await accessible(page);
    await page.getByLabel('Find by name or date').fill('plum');
    await expect.poll(() => page.locator('.cook-row').count()).toBe(2);

    // One replayed: the word stands on every view of it, and what the twin believed changes with the time.
    await page.getByRole('link', { name: 'Plum darker' }).click();
    await says(page, '[data-role=mode]', /^Replay$/);
    await page.locator('.moment tbody tr').nth(5).waitFor();
    const colour = page.locator('.moment tbody tr', { hasText: 'Colour' });
    const atTheEnd = await colour.textContent();
    await page.getByLabel('Time in the cook').fill('600');
    await expect.poll(() => colour.textContent()).not.toBe(atTheEnd);
    const hidden = await page.locator('.replay-now').count();
    expect(hidden).toBe(1);
    await page.getByRole('button', { name: 'Go on' }).click();
    await expect.poll(async () => Number(await page.getByLabel('Time in the cook').inputValue())).toBeGreaterThan(620);
    await page.getByRole('button', { name: 'Pause' }).click();
    await says(page, '.doses', /Brown/);
    await accessible(page);
    const width = await page.evaluate(() => document.documentElement.scrollWidth);
    expect(width).toBeLessThanOrEqual(360);

    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Report' }).click();
    const path = join(scratchFolder(), 'report.html');
    await (await download).saveAs(path);
    expect(readFileSync(path, 'utf8')).toContain('Plum darker');
    const reader = await page.context().newPage();
    await reader.context().setOffline(true);
    const asked: string[] = [];
    reader.on('request', (request) => asked.push(request.url()));
    await reader.goto(pathToFileURL(path).href);
    await says(reader, 'body', /What went in/);
    expect(await reader.locator('svg .middle').count()).toBe(1);
    // Nothing but the file itself is asked for, and it prints.
    expect(asked).toEqual([pathToFileURL(path).href]);
    const pdf = (await reader.pdf({ format: 'A4' })).toString('latin1');
    const sheets = pdf.match(/\/Type\s*\/Page\b/g)?.length ?? 0;
    expect(sheets).toBeGreaterThan(0);
    expect(sheets).toBeLessThanOrEqual(3);
    await reader.context().setOffline(false);
    await reader.close();

    // A rehearsal goes on saying which surprises it had.
    await page.getByRole('link', { name: 'Book', exact: true }).click();
    await page.locator('.cook-row').getByRole('link', { name: 'Trial' }).click();
    await says(page, '[data-role=mode]', /^Replay of a rehearsal with surprises$/);
    await says(page, 'section', /^Surprises\d+:\d\d, the (thermometer|tip) /);
    await accessible(page);

    // Two over one another, and why they differ.
    await page.getByRole('link', { name: 'Book', exact: true }).click();
    await page.getByLabel('Lay over: Plum shards').check();
    await page.getByLabel('Lay over: Plum darker').check();
    await page.getByRole('link', { name: 'Lay over one another' }).click();
    await expect.poll(() => page.locator('.over-line').count()).toBe(2);
    await says(page, '.differences', /Pure alkali given/);
    await page.getByRole('button', { name: 'Explain' }).click();
    await says(page, '.explained', /mostly alkali/);
    await accessible(page);
    expect(complaints).toEqual([]);
  }, 120_000);

  it('takes in what another passed on: a log with all of its cook, a plan out of a report; else it says why not', async () => {
    const { page, complaints } = await open({ at: 'book', ownServer: true, viewport: { width: 360, height: 780 } });
    await says(page, 'main', /Nothing has been cooked yet/);
    const folder = scratchFolder();
    const choose = async (name: string, text: string) => {
      writeFileSync(join(folder, name), text);
      await page.getByLabel('Take in a cook').setInputFiles(join(folder, name));
    };
    const log = cookFile('Plum <shards>', 'live');
    await choose('cut.ndjson', log.slice(0, -200));
    await says(page, '.take-in [role=alert]', /Nothing was taken from “cut\.ndjson”: line \d+: .*cut off/);
    await choose('table.csv', 'time_s,kind\n');
    await says(
      page,
      '.take-in [role=alert]',
      /“table\.csv”.*allowed: the log file of a cook, a report of one, or a plan/,
    );
    expect(await page.locator('.cook-row').count()).toBe(0);

    // What a phone calls it says nothing.
    await choose('download.bin', log);
    await says(page, '.take-in [role=status]', /Plum <shards>: (\d+) of its \1 events came in/);
    expect(await page.locator('.take-in [role=alert]').textContent()).toBe('');
    await choose('download.bin', log);
    await says(page, '.take-in [role=status]', /all of it was here already/);
    await accessible(page);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);

    // Its report goes from here to the next, and back as a plan.
    await page.locator('.take-in').getByRole('link', { name: 'Plum <shards>' }).click();
    await page.locator('.moment tbody tr').nth(5).waitFor();
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Report' }).click();
    await (await download).saveAs(join(folder, 'report.html'));
    await page.getByRole('link', { name: 'Book', exact: true }).click();
    await page.getByLabel('Take in a cook').setInputFiles(join(folder, 'report.html'));
    await page.getByRole('link', { name: 'Open “Plum <shards>” on the Desk' }).click();
    await says(page, '.saved', /Plum <shards>\s*200 g, hard, bright/);
    expect(new URL(page.url()).searchParams.get('plan')).toMatch(/^[0-9a-f-]{36}$/);
    await planned(page);
    expect(complaints.filter((complaint) => !/400 \(Bad Request\)/.test(complaint))).toEqual([]);
  }, 60_000);

  it('takes the whole workspace out, and puts it in elsewhere, byte by byte the same, and only over other things when told to', async () => {
    const phone = { width: 360, height: 780 };
    const { page, server } = await open({ at: 'book', ownServer: true, viewport: phone });
    const headers = { 'content-type': 'application/x-ndjson' };
    const body = cookFile('Plum shards', 'live');
    expect((await fetch(`${server.address}api/cooks/import`, { method: 'POST', headers, body })).status).toBe(200);
    const download = page.waitForEvent('download');
    await page.getByRole('link', { name: 'Take everything out' }).click();
    const folder = scratchFolder();
    const file = join(folder, 'all.json');
    await (await download).saveAs(file);
    const text = readFileSync(file, 'utf8');

    const { page: there, server: other, complaints } = await open({ at: 'book', ownServer: true, viewport: phone });
    await says(there, 'main', /Nothing has been cooked yet/);
    const choose = (path: string) => there.getByLabel('Put everything in').setInputFiles(path);
    const kept = async () => (await fetch(`${other.address}api/workspace`)).text();
    writeFileSync(join(folder, 'spoilt.json'), text.replace('Plum', 'Plom'));
    await choose(join(folder, 'spoilt.json'));
    await says(there, '.workspace [role=alert]', /“spoilt\.json” was refused: .*Nothing was written/);
    await choose(file);
    await says(there, '.workspace [role=status]', /\d+ records are in/);
    await there.locator('.cook-row', { hasText: 'Plum shards' }).waitFor();
    expect(await kept()).toBe(text);
    await choose(file);
    await says(there, '.workspace [role=status]', /All of it was here already/);

    // Over other things: asked first, and left or done as told.
    const another = cookFile('Plum darker', 'live');
    await fetch(`${other.address}api/cooks/import`, { method: 'POST', headers, body: another });
    const before = await kept();
    await choose(file);
    await says(there, '.consent', /Here are 2 cooks\. In the file are 1 cook\./);
    await accessible(there);
    expect(await there.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
    await there.getByRole('button', { name: 'Keep what is here' }).click();
    expect(await there.locator('.consent').count()).toBe(0);
    expect(await kept()).toBe(before);
    await choose(file);
    await there.getByRole('button', { name: 'Replace everything' }).click();
    await says(there, '.workspace [role=status]', /records are in/);
    expect(await kept()).toBe(text);
    await expect.poll(() => there.locator('.cook-row').count()).toBe(1);
    expect(complaints.filter((complaint) => !/400 \(Bad Request\)|409 \(Conflict\)/.test(complaint))).toEqual([]);
  }, 60_000);

  it('tells how the beers of each cook were liked, and which are liked best only when the tastings tell it', async () => {
    const { page, server, complaints } = await open({
      at: 'book',
      ownServer: true,
      viewport: { width: 360, height: 780 },
    });
    const post = async (address: string, body: object | string, type = 'application/json'): Promise<string> => {
      const headers = { 'content-type': type };
      const answer = await fetch(`${server.address}api/${address}`, {
        method: 'POST',
        headers,
        body: typeof body === 'string' ? body : JSON.stringify(body),
      });
      expect(answer.ok).toBe(true);
      return ((await answer.json()) as { id: string }).id;
    };
    const beerOf = async (cookId: string, likings: readonly number[]) => {
      const lot = await post('lots', lotOf(cookId));
      const glass = await post('glasses', glassOf(lot));
      for (const liking of likings) await post(`glasses/${glass}/tastings`, tastingOf(liking));
    };
    for (const name of ['Plum shards', 'Plum darker']) {
      await post('cooks/import', cookFile(name, 'live'), 'application/x-ndjson');
    }
    const { entries } = (await (await fetch(`${server.address}api/book`)).json()) as {
      entries: { cook: { id: string; name: string } }[];
    };
    const cook = (name: string) => entries.find(({ cook }) => cook.name === name)?.cook.id ?? '';
    await beerOf(cook('Plum shards'), [8]);
    await page.reload();
    const row = (name: string) => page.locator('.cook-row', { hasText: name });
    await row('Plum shards')
      .getByText(/Beers liked 8\.0 of 10 \(\d\.\d to \d+\.\d\); 1 beer, 1 tasting/)
      .waitFor();
    expect(await page.locator('.liked-best').count()).toBe(0);

    await beerOf(cook('Plum darker'), [5]);
    await page.reload();
    await says(page, '.liked-best', /Too few to tell/);
    expect(await page.locator('.liked-best details[open]').count()).toBe(0);

    for (const likings of [[9, 8], [8, 8], [9]]) await beerOf(cook('Plum shards'), likings);
    for (const likings of [[3, 4], [4], [3, 3]]) await beerOf(cook('Plum darker'), likings);
    await page.reload();
    await says(page, '.liked-best', /The beers of “Plum shards” are liked best: more than 9 in 10/);
    await says(page, '.liked-best details[open] tbody tr', /Plum shards.*liked better than the others/);
    await page.getByLabel('Liked best first').check();
    expect((await page.locator('.cook-row h2').allInnerTexts())[0]).toBe('Plum shards');
    await accessible(page);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);

    await page.locator('.cook-row').getByRole('link', { name: 'Plum darker' }).click();
    await says(page, '.liked-here', /4 beers, 6 tastings; liked less than the others: less than 1 in 10/);
    expect(complaints).toEqual([]);
  }, 60_000);
});
