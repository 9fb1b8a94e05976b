// A real cook by wet hands: the screen is locked to be wiped, and a picture is noted.
import type { Locator, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { cardDone as done } from './followTheCards.ts';
import { noBrowser, pages, says } from './openPage.ts';
import { logOf, startCook } from './startCook.ts';

const phone = { width: 360, height: 780 };
const logShown = (page: Page) => page.locator('.log-book li > span:nth-child(2)').allInnerTexts();
/** Longer than the guard against double taps. */
const overGuard = (page: Page) => page.waitForTimeout(300);

/** Where a finger would come down on it, whatever lies above. */
async function middleOf(target: Locator) {
  await target.evaluate((each) => each.scrollIntoView({ block: 'center' }));
  const box = await target.boundingBox();
  return [(box?.x ?? 0) + (box?.width ?? 0) / 2, (box?.y ?? 0) + (box?.height ?? 0) / 2] as const;
}

/** The first deed is done, so that others may follow. */
async function cooking(page: Page): Promise<string> {
  const cook = await startCook(page);
  await overGuard(page);
  await page.locator(done).click();
  await says(page, '.log-book', /Dial \d/);
  await overGuard(page);
  return cook;
}

describe.skipIf(noBrowser)('wet hands', () => {
  const open = pages();

  it('wipe the locked screen without a deed; alarms and first aid stay in reach; a second’s hold unlocks', async () => {
    const { page, complaints } = await open({ at: 'stove/cook', viewport: phone, hasTouch: true });
    await cooking(page);
    await page.getByRole('button', { name: 'Lock to wipe the screen' }).tap();
    const unlock = page.getByRole('button', { name: /Hold here for a second to unlock/ });
    await unlock.waitFor();

    const stirred = page.getByRole('button', { name: /^Stirred/ });
    const before = await logShown(page);
    const address = page.url();
    for (const under of [stirred, page.locator('.keep-reading'), page.locator('.masthead nav a').first()]) {
      await page.touchscreen.tap(...(await middleOf(under)));
      await overGuard(page);
    }
    expect(await logShown(page)).toEqual(before);
    expect(page.url()).toBe(address);

    await page.getByRole('link', { name: 'First aid' }).tap({ trial: true });
    await page.getByRole('button', { name: 'Foam!' }).tap();
    await says(page, '.alarm-strip[data-phase=new]', /Foam rising/);
    await overGuard(page);
    await page.getByRole('button', { name: 'Seen: Foam rising' }).tap();
    await page.locator('.alarm-strip[data-phase=seen]').waitFor();

    await unlock.tap();
    await page.waitForTimeout(1200);
    expect(await unlock.isVisible()).toBe(true);
    await page.mouse.move(...(await middleOf(unlock)));
    await page.mouse.down();
    await unlock.waitFor({ state: 'detached' });
    await page.mouse.up();
    await stirred.tap();
    await says(page, '.log-book', /Stirred/);
    expect(complaints).toEqual([]);
  });

  it('note a picture: its name and time are in the log, the picture itself goes nowhere', async () => {
    const { page, server, complaints } = await open({ at: 'stove/cook', viewport: phone });
    const cook = await cooking(page);
    const sent: string[] = [];
    page.on('request', (request) => sent.push(request.postDataBuffer()?.toString('latin1') ?? ''));
    const picture = Buffer.from('what the camera saw of the foam');
    await page.getByText('Something else was done').click();
    await page
      .getByLabel('Note a picture')
      .setInputFiles({ name: 'foam at 140.jpg', mimeType: 'image/jpeg', buffer: picture });
    await says(page, '.log-book', /Picture: foam at 140\.jpg/);
    await says(page, '[data-role=link]', /All is on the server/);
    const photos = async () => (await logOf(server, cook)).filter(({ kind }) => kind === 'photo');
    await expect.poll(async () => (await photos()).map(({ body }) => body)).toEqual([{ reference: 'foam at 140.jpg' }]);

    expect(sent.join()).toContain('foam at 140.jpg');
    for (const form of ['latin1', 'base64', 'hex'] as const) expect(sent.join()).not.toContain(picture.toString(form));
    expect(complaints).toEqual([]);
  });
});
