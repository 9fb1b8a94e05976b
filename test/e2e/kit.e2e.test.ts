// A kit, a check, and learning from a cook, in a real browser.
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import type { KitRecord } from '../../src/api/kit.ts';
import { defaultKit } from '../../src/core/pan/kit.ts';
import { defaultRequest } from '../../src/core/planning/request.ts';
import { cookedLog } from '../cookedLog.ts';
import { objections } from './objections.ts';
import { askBeside, field, noBrowser, pages, says } from './openPage.ts';

const cookId = '6f1c1c9e-8a4e-4b55-9a51-0d7f8c2b1a01';
const kitId = '6f1c1c9e-8a4e-4b55-9a51-0d7f8c2b1a02';

async function post(page: Page, address: string, data: unknown, id?: string): Promise<void> {
  const headers = id === undefined ? {} : { 'idempotency-key': id };
  const answer = await askBeside(page, address, { method: 'POST', body: data, headers });
  expect(answer.status).toBe(201);
}

async function audited(page: Page): Promise<void> {
  expect(await objections(page)).toEqual([]);
  const wider = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
  expect(wider).toBeLessThanOrEqual(0);
}

describe.skipIf(noBrowser)('the Kit', () => {
  const open = pages();

  it('keeps a kit, a check of it, and what a cook taught, on a phone', { timeout: 150_000 }, async () => {
    const { page, complaints } = await open({ at: 'kit', ownServer: true, viewport: { width: 360, height: 780 } });
    await page.getByRole('heading', { name: 'New kit' }).waitFor();
    await post(page, '/api/kits', { ...defaultKit, name: 'Church hall' }, kitId);
    await post(page, '/api/plans', { kitId, request: defaultRequest });
    await page.goto(new URL(`/kit/${kitId}`, page.url()).href);
    await says(page, '.lessons', /Nothing yet/);
    await audited(page);

    await page.getByRole('link', { name: /Ten spoonfuls/ }).click();
    for (let i = 0; i < 6; i++) {
      await page
        .getByLabel(/This spoonful, g: (\+0.1|−0.1)/)
        .nth(i % 2)
        .click();
      await page.getByRole('button', { name: 'Note this spoonful' }).click();
    }
    await says(page, '.found', /A spoonful/);
    await audited(page);
    await page.getByRole('button', { name: 'Keep this check' }).click();
    await page.getByRole('link', { name: 'To the kit' }).click();
    await says(page, '.lessons', /Ten spoonfuls/);
    await says(page, '.known', /measured/);

    // A form that is saved leaves what was measured alone.
    await field(page, 'Room').fill('19 C');
    await page.getByRole('button', { name: 'Save kit' }).click();
    await says(page, '.keeping', /Saved/);
    await says(page, '.lessons', /Ten spoonfuls/);
    const { kit } = (await (await askBeside(page, `/api/kits/${kitId}`)).json()) as KitRecord;
    expect([kit.roomC, kit.learned?.lessons.length]).toEqual([19, 1]);

    await post(page, '/api/cooks/whole', cookedLog(defaultKit, 3, 'live', cookId).events);
    await page.getByRole('link', { name: 'Learn from a cook' }).click();
    await page.locator('.cook-list a').click();
    await page.getByRole('button', { name: 'Look what it teaches' }).click();
    await page.locator('.running progress').waitFor();
    await page.getByRole('heading', { name: /This cook can be told/ }).waitFor({ timeout: 100_000 });
    await says(page, '.next-plan', /8 cooks in 10/);
    await audited(page);
    await page.getByRole('button', { name: 'Keep what it taught' }).click();
    await page.getByRole('link', { name: 'To the kit' }).click();
    await page.locator('.lessons li').nth(1).waitFor();
    await audited(page);
    expect(complaints).toEqual([]);
  });

  it('shows what an imported table says, names each cell that says nothing, and takes all or nothing', async () => {
    const { page } = await open({ at: 'kit', ownServer: true });
    await post(page, '/api/kits', defaultKit, kitId);
    await post(page, '/api/plans', { kitId, request: defaultRequest });
    await page.goto(new URL(`/kit/${kitId}/import`, page.url()).href);
    const tableOf = (rows: string) => ({
      name: 'april.csv',
      mimeType: 'text/csv',
      buffer: Buffer.from(`Seconds,Probe,Note\n${rows}`),
    });
    await page.getByLabel('Table').setInputFiles(tableOf('0,70,heat 6\n60,warm,\n'));
    await field(page, 'They are in').selectOption('[degF]');
    await says(page, '.wrong-cells', /Line 3, Probe: “warm”/);
    expect(await page.getByRole('button', { name: 'Take it in' }).count()).toBe(0);
    await page.getByLabel('Table').setInputFiles(tableOf('0,70,heat 6\n60,122,\n900,284,poured\n'));
    await field(page, 'They are in').selectOption('[degF]');
    await says(page, '.found', /3, 21 °C to 140 °C/);
    await audited(page);
    await page.getByRole('button', { name: 'Take it in' }).click();
    await page.getByRole('link', { name: 'Learn from it' }).click();
    await page.getByRole('button', { name: 'Look what it teaches' }).click();
    await says(page, '.kit-note', /too few readings/);
  });
});
