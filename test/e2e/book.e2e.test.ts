// The Book in a real browser: cooks listed with what they landed at, one replayed, two laid over one another and explained, a report.
import { randomUUID } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { writeCookFile } from '../../src/core/log/cookFile.ts';
import { defaultKit } from '../../src/core/pan/kit.ts';
import { defaultRequest } from '../../src/core/planning/request.ts';
import { cookedLog } from '../cookedLog.ts';
import { sampleDevice, sha256 } from '../sampleCook.ts';
import { scratchFolder } from '../testServer.ts';
import { objections } from './objections.ts';
import { noBrowser, pages, says } from './openPage.ts';

const short = { ...defaultRequest, massKg: 0.2, route: 'bright', invertMinutes: 5, brownMinutes: 8 } as const;

/** The file of a small cook with a reading each 20 s. */
function cookFile(name: string, mode: 'live' | 'rehearsal', change: object = {}): string {
  const cook = randomUUID();
  const cooked = cookedLog(defaultKit, 4, mode, cook, { request: { ...short, name, ...change } });
  const few = cooked.events.filter(({ kind }, place) => kind !== 'reading' || place % 2 === 0);
  const device = sampleDevice(cook);
  const test = device.make('spoonTest', { a430: 3, behaviour: 'snaps', taste: [] }, cooked.lastS - 60);
  return writeCookFile(cook, [...few, test, device.make('ended', { how: 'done' }, cooked.lastS + 10)], sha256);
}

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
    await reader.goto(pathToFileURL(path).href);
    await says(reader, 'body', /What went in/);
    expect(await reader.locator('svg .middle').count()).toBe(1);
    await reader.context().setOffline(false);
    await reader.close();

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
});
