// A lot on the Shelf: measured, tasted, kept, labelled, taken off and put back, in a real browser.
import readQr from 'jsqr';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import type { NewLot } from '../../src/api/lot.ts';
import { expectedOfTold } from '../../src/core/lot/known.ts';
import { descriptors } from '../../src/core/lot/taste.ts';
import { objections } from './objections.ts';
import { askBeside, field, noBrowser, pages, says, seen } from './openPage.ts';
import { printedPages } from './printedPages.ts';

function lotOf(name: string, more: Partial<NewLot> = {}): NewLot {
  const share = (mid: number) => ({ low: 0.8 * mid, mid, high: Math.min(1, 1.2 * mid) });
  const expected = expectedOfTold({ massKg: 0.6, waterShare: share(0.24), inverted: share(0.6), ebc: 80 });
  const of = { cookId: null, planId: null, weighedKg: null, alkali: null, madeAt: '2026-05-14T16:20:00.000Z' } as const;
  return { name, form: 'syrup', expected, ...of, ...more };
}

async function onShelf(page: Page, lot: NewLot): Promise<string> {
  const answer = await askBeside(page, '/api/lots', { method: 'POST', body: lot });
  return ((await answer.json()) as { id: string }).id;
}

/** What a camera would read of a picture, PNG. */
async function scanned(page: Page, picture: Buffer): Promise<string | undefined> {
  const blank = await page.context().newPage();
  const { greys, width, height } = await blank.evaluate(async (png) => {
    const image = new Image();
    image.src = `data:image/png;base64,${png}`;
    await image.decode();
    const { width, height } = image;
    const context = new OffscreenCanvas(width, height).getContext('2d');
    context?.drawImage(image, 0, 0);
    const rgba = context?.getImageData(0, 0, width, height).data ?? [];
    let greys = '';
    for (let at = 0; at < rgba.length; at += 4) greys += String.fromCharCode(rgba[at] ?? 0);
    return { greys: btoa(greys), width, height };
  }, picture.toString('base64'));
  await blank.close();
  const pixels = Uint8ClampedArray.from([...Buffer.from(greys, 'base64')].flatMap((grey) => [grey, grey, grey, 255]));
  return readQr.default(pixels, width, height)?.data;
}

describe.skipIf(noBrowser)('the Shelf', () => {
  const open = pages();

  it('measures a lot, notes what is taken, keeps a tasting, and takes the lot off and puts it back', async () => {
    const { page, complaints } = await open({ at: 'shelf', ownServer: true });
    await page.getByText('Nothing on it yet').waitFor();
    await onShelf(page, lotOf('Rehearsed', { origin: 'rehearsed' }));
    await onShelf(page, lotOf('Amber syrup'));
    await page.reload();
    await says(page, '.rehearsed', /Rehearsed/);
    await page.getByRole('link', { name: /Amber syrup/ }).click();
    await says(page, '.figures', /24\.0 %/);

    // 10 g in 20 g of water that read 25.6 at 20 C: 76.8 % and 1.3 % more of it for 60 % invert sugar.
    await field(page, 'It shows').fill('25.6');
    await page.getByText('77.8 % solids').waitFor();
    await page.getByRole('button', { name: 'Keep this measurement' }).click();
    await says(page, '.figures tr:has-text("Water")', /22\.2 %[\s\S]*measured once/);
    await field(page, 'It shows').fill('60');
    await page.getByText(/This gives nothing: solids that come of it \(share\) is 1\.8/).waitFor();
    expect(await page.getByRole('button', { name: 'Keep this measurement' }).isDisabled()).toBe(true);

    await field(page, 'How much, in g').fill('150');
    await field(page, 'What for').fill('Winter ale');
    await page.getByRole('button', { name: 'Note it' }).click();
    await says(page, '.lot-stock', /450 g left of 600 g/);
    await page.getByRole('button', { name: 'Undo' }).click();
    await says(page, '.lot-stock', /600 g left/);

    await page.getByRole('group', { name: 'toffee' }).getByText('4', { exact: true }).click();
    await page.getByRole('button', { name: 'Keep this tasting' }).click();
    await says(page, '.profile', /toffee\s*4/);
    expect(await seen(page, '.let-down')).toMatch(/g of water; it makes/);

    await page.getByRole('button', { name: 'Change', exact: true }).click();
    await field(page, 'Name').fill('Amber, May');
    await field(page, 'Browned with').selectOption('NaOH');
    await page.getByRole('button', { name: 'Keep the change' }).click();
    await says(page, 'h1', /Amber, May/);
    await says(page, '.figures', /5\.0 g NaOH/);
    await page.getByRole('button', { name: 'Take off the shelf' }).click();
    await page.getByText(/It was taken off the shelf on/).waitFor();
    await page.getByRole('button', { name: 'Put it back' }).click();
    await page.getByRole('button', { name: 'Take off the shelf' }).waitFor();
    expect(complaints).toEqual([]);
  });

  it('writes in a sugar, and its label leads back to it when a camera reads what is drawn', async () => {
    const { page } = await open({ at: 'shelf/new', ownServer: true, deviceScaleFactor: 2 });
    await field(page, 'Name').fill('Bakery sugar');
    await page.getByRole('button', { name: 'Put it on the shelf' }).click();
    await says(page, 'h1', /Bakery sugar/);
    const address = page.url();
    expect(address).toMatch(/\/shelf\/[0-9a-f-]{36}$/);
    await page.getByRole('link', { name: 'Label' }).click();
    for (const size of ['Tag', 'Jar', 'Bag']) {
      await page.getByText(size, { exact: true }).click();
      const label = page.getByRole('img', { name: /^Label: Bakery sugar/ });
      expect(await label.getAttribute('aria-label')).toContain('400 g, hard; 150 EBC');
      expect(await scanned(page, await label.screenshot())).toBe(address);
    }

    // On paper: the labels alone, all that fit on one sheet, and the code reads as well.
    await page.getByText('Tag', { exact: true }).click();
    await page.getByLabel('Copies', { exact: true }).fill('24');
    expect(await page.locator('.label').count()).toBe(24);
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('.label-choices').isVisible()).toBe(false);
    const printed = page.getByRole('img', { name: /^Label: Bakery sugar/ }).first();
    expect(await scanned(page, await printed.screenshot())).toBe(address);
    await page.emulateMedia({ media: null });
    expect(await printedPages(page, 'A4')).toBe(1);
    expect(await printedPages(page, 'Letter')).toBe(1);
  });

  it('lays lots side by side: measurements in one table, tastes word by word, blind ones alone when so wished', async () => {
    const { page, complaints } = await open({ at: 'shelf', ownServer: true, viewport: { width: 360, height: 780 } });
    const shards = await onShelf(page, lotOf('Shards', { form: 'hard', weighedKg: 0.391 }));
    const syrup = await onShelf(page, lotOf('Amber syrup'));
    await onShelf(page, lotOf('Third'));
    const at = '2026-05-20T10:00:00.000Z';
    const strengths = Object.fromEntries(descriptors.map((name) => [name, null]));
    const note = async (lot: string, body: object) => {
      const answer = await askBeside(page, `/api/lots/${lot}/notes`, { method: 'POST', body: { at, ...body } });
      expect(answer.ok).toBe(true);
    };
    const acidity = { method: 'acidity', by: 'meter', ph: 5.1, sugarG: 5, waterG: 45 };
    await note(shards, { kind: 'measured', reading: acidity });
    const tasted = { kind: 'tasted', texture: null, note: '' };
    await note(shards, { ...tasted, blind: true, strengths: { ...strengths, toffee: 4, burnt: 1 } });
    await note(syrup, { ...tasted, blind: false, strengths: { ...strengths, toffee: 2 } });
    await page.reload();
    await page.getByRole('link', { name: 'Side by side' }).click();
    await page.getByLabel('Shards').check();
    await page.getByLabel('Amber syrup').check();
    const rowOf = (name: string) => page.locator('.side-by-side tr', { has: page.getByRole('rowheader', { name }) });
    await expect
      .poll(() => rowOf('Yield, g').textContent())
      .toMatch(/391[\s\S]*measured once[\s\S]*600[\s\S]*believed/);
    expect(await rowOf('pH, diluted').textContent()).toMatch(/5\.1[\s\S]*not measured/);
    expect(await rowOf('toffee').textContent()).toMatch(/4\s*2/);
    expect(await rowOf('burnt').textContent()).toMatch(/1\s*not asked/);
    expect(await objections(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
    await page.getByLabel('Only tastings by who did not know which was which').check();
    expect(await rowOf('toffee').textContent()).toMatch(/4\s*not asked/);
    // The address holds which lots they are.
    const search = new URL(page.url()).searchParams.get('lots');
    expect(search).toBe(`${shards},${syrup}`);
    await page.reload();
    await rowOf('Yield, g').waitFor();
    expect(complaints).toEqual([]);
  });

  it('tastes blind: the names come when all cups are done', async () => {
    const { page } = await open({ at: 'shelf', ownServer: true });
    const names = ['First', 'Second'];
    for (const name of names) await onShelf(page, lotOf(name));
    await page.goto(new URL('/shelf/blind', page.url()).href);
    await page.getByRole('button', { name: 'Give them codes' }).click();
    await page.getByRole('button', { name: /^Set out/ }).click();
    for (const _ of names) {
      const head = await seen(page, '.blind h2');
      expect(await seen(page, '.blind')).not.toMatch(/First|Second/);
      await page.getByRole('group', { name: 'burnt' }).getByText('1', { exact: true }).click();
      await page.getByRole('button', { name: 'Keep this tasting' }).click();
      await page.waitForFunction((before) => document.querySelector('.blind h2')?.textContent !== before, head);
    }
    await says(page, '.blind', /What they were[\s\S]*(First|Second)/);
    await page.getByRole('link', { name: 'First' }).click();
    await says(page, '.taste', /blind/);
  });

  it.each([
    [360, 'light'],
    [1440, 'dark'],
  ] as const)('at %i px in %s axe objects to nothing and nothing scrolls sideways', async (width, colorScheme) => {
    const { page } = await open({ at: 'shelf', ownServer: true, colorScheme, viewport: { width, height: 800 } });
    const id = await onShelf(page, lotOf('Amber syrup, poured in the hall by candlelight', { form: 'hard' }));
    const check = async () => {
      expect(await objections(page)).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
    };
    if (width > 1000) {
      await page.reload();
      await page.getByRole('link', { name: /Amber syrup/ }).waitFor();
      await check();
    }
    await page.goto(new URL(`/shelf/${id}`, page.url()).href);
    await page.getByText('By eye').click();
    await page.getByText('Which dilution?').click();
    await page
      .getByRole('button', { name: /^a sugar of/ })
      .nth(3)
      .click();
    await check();
  });
});
