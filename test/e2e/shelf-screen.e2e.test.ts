// Teaching the screen in a real browser: rows at the screen's own pixels, swatches drawn for it, and a measurement that says so.
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { objections } from './objections.ts';
import { field, noBrowser, pages, says, seen } from './openPage.ts';

/** The rows as the screen has them, from the top: `#` a white pixel, `.` a black one, `?` any other; and the level of the block's middle. */
async function rowsSeen(page: Page, label: RegExp) {
  const rows = page.getByRole('img', { name: label });
  await rows.scrollIntoViewIfNeeded();
  const box = await rows.evaluate((canvas) => {
    const { left, top, width, height } = canvas.getBoundingClientRect();
    return [left, top, width, height].map((each) => Math.round(each * devicePixelRatio));
  });
  // All of the window: a picture of a part may be scaled where a pixel of the page is not a whole number of the screen's.
  const png = (await page.screenshot()).toString('base64');
  return page.evaluate(
    async ({ png, box: [left = 0, top = 0, width = 0, height = 0] }) => {
      const image = new Image();
      image.src = `data:image/png;base64,${png}`;
      await image.decode();
      const context = new OffscreenCanvas(image.width, image.height).getContext('2d');
      context?.drawImage(image, 0, 0);
      const level = (x: number, y: number) => context?.getImageData(x, y, 1, 1).data[0];
      const name = (of: number | undefined) => (of === 255 ? '#' : of === 0 ? '.' : '?');
      // Less a few at either end: where the page puts the first is a matter of rounding.
      const column = Array.from({ length: height - 8 }, (_, y) => name(level(left + 6, top + 4 + y))).join('');
      return { column, block: level(left + Math.round(width / 2), top + Math.round(height / 2)) };
    },
    { png, box },
  );
}

const swatches = (page: Page) =>
  page.locator('.swatch-row rect').evaluateAll((all) => all.map((each) => each.getAttribute('fill')));
const band = async (page: Page) => {
  const [low, high] =
    (await seen(page, '.measure form .result'))
      .match(/([\d.]+) to ([\d.]+)/)
      ?.slice(1)
      .map(Number) ?? [];
  return (high ?? 0) / (low ?? 1);
};

describe.skipIf(noBrowser)('the screen', () => {
  const open = pages();

  async function openByEye(options: Parameters<typeof open>[0] = {}) {
    const opened = await open({ at: 'shelf/new', ownServer: true, ...options });
    const { page } = opened;
    await field(page, 'Name').fill('Amber syrup');
    await page.getByRole('button', { name: 'Put it on the shelf' }).click();
    await page.getByText('By eye').click();
    await page.getByText('Teach the screen').click();
    return opened;
  }

  it('is taught by two greys: swatches are drawn for it, and the measurement says so and is a little surer', async () => {
    const { page, complaints } = await openByEye();
    await says(page, '.swatch-row', /a screen that nobody taught, count on a third/);
    const swatch = page.getByRole('button', { name: /^a sugar of/ }).nth(2);
    await swatch.click();
    const [before, bandBefore] = [await swatches(page), await band(page)];

    const teach = page.getByRole('button', { name: 'Both look alike: teach it' });
    await field(page, 'Grey amid every second row').fill('200');
    expect(await teach.isDisabled()).toBe(true);
    await field(page, 'Grey amid every fourth row').fill('100');
    await says(page, '.screen-teach', /contradict each other/);
    expect(await teach.isDisabled()).toBe(true);
    // By keyboard, from 100 to 157, where one power gives both.
    const up = page.getByRole('button', { name: 'Grey amid every fourth row: +8' });
    await up.focus();
    for (let i = 0; i < 7; i++) await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'Grey amid every fourth row: +1' }).press('Enter');
    await says(page, '.screen-teach', /gamma 2\.85 at half the light and 2\.86 at a quarter/);
    await teach.click();

    await says(page, '.swatch-row', /a screen taught on \d+ \w+ \d{4}, count on a good quarter/);
    const after = await swatches(page);
    // A steeper screen shows middle tones too dark: it is sent higher levels.
    const level = (fills: (string | null)[], at: number) => Number(fills[at]?.match(/\d+/g)?.[1]);
    for (const at of before.keys()) expect(level(after, at)).toBeGreaterThan(level(before, at));
    expect(await swatch.getAttribute('aria-pressed')).toBe('false');
    await swatch.click();
    expect(await band(page)).toBeLessThan(bandBefore);
    await page.getByRole('button', { name: 'Keep this measurement' }).click();
    await says(page, '.measure .note-list', /By eye on a taught screen/);

    await page.reload();
    await page.getByText('By eye', { exact: true }).click();
    await says(page, '.swatch-row', /a screen taught on/);
    expect(await objections(page)).toEqual([]);
    await page.getByText('Teach the screen').click();
    await page.getByRole('button', { name: 'Take away what this screen was taught' }).click();
    await says(page, '.swatch-row', /nobody taught/);
    await says(page, '.measure .note-list', /By eye on a taught screen/);
    expect(complaints).toEqual([]);
  });

  it.each([1, 1.5, 2, 2.625])(
    'of %d pixels a CSS pixel shows rows of pure black and white',
    async (deviceScaleFactor) => {
      const { page } = await openByEye({ deviceScaleFactor, viewport: { width: 411, height: 731 } });
      await field(page, 'Grey amid every second row').fill('190');
      await field(page, 'Grey amid every fourth row').fill('140');
      const [second, fourth] = [await rowsSeen(page, /^Every second row/), await rowsSeen(page, /^Every fourth row/)];
      for (const [{ column }, share] of [
        [second, 1 / 2],
        [fourth, 1 / 4],
      ] as const) {
        expect(column).toMatch(/^[#.]+$/);
        // Rounding of the page's lengths may double or drop one row of all.
        expect(Math.abs(column.split('#').length - 1 - share * column.length)).toBeLessThanOrEqual(1);
        expect(column.split('##').length - 1).toBeLessThanOrEqual(1);
      }
      expect(second.column.length).toBeGreaterThan(120 * deviceScaleFactor);
      expect([second.block, fourth.block]).toEqual([190, 140]);
    },
  );

  it.each([
    [360, 780, 'light'],
    [1440, 900, 'dark'],
  ] as const)(
    'at %i by %i in %s axe objects to nothing and nothing scrolls sideways',
    async (width, height, colorScheme) => {
      const { page } = await openByEye({ colorScheme, viewport: { width, height } });
      await field(page, 'Grey amid every second row').fill('188');
      await field(page, 'Grey amid every fourth row').fill('137');
      await says(page, '.screen-teach', /gamma 2\.27 at half the light and 2\.23 at a quarter/);
      expect(await objections(page)).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
    },
  );
});
