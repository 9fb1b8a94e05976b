// A rehearsal at the Stove, in a real browser: what it looks like and how it is led. One to its end is in whole-way.e2e.test.ts.
import { describe, expect, it } from 'vitest';
import { cardDone as done } from './followTheCards.ts';
import { objections } from './objections.ts';
import { noBrowser, pages, says, seen } from './openPage.ts';

const phone = { width: 360, height: 780 };

describe.skipIf(noBrowser)('the Stove', () => {
  const open = pages();

  it('has nothing that axe objects to, before and while it cooks, in light and dark', async () => {
    const { page, complaints } = await open({ at: 'stove?seed=3', viewport: phone });
    const accessible = async () => {
      for (const colorScheme of ['light', 'dark'] as const) {
        await page.emulateMedia({ colorScheme });
        expect(await objections(page), colorScheme).toEqual([]);
      }
    };
    await page.locator(done).waitFor();
    await accessible();
    await page.locator(done).click();
    await says(page, '.deeds', /A deed acts on the hidden pan at once/);
    await page.waitForTimeout(2500);
    await accessible();
    expect(complaints).toEqual([]);
  });

  it('needs no sideways scrolling at 320 px; targets are 48 px, deeds and the card’s button 72 px', async () => {
    const { page } = await open({ at: 'stove', viewport: { width: 320, height: 640 } });
    await page.locator(done).waitFor();
    const [wide, room] = await page.evaluate(() => {
      const { scrollWidth, clientWidth } = document.documentElement;
      return [scrollWidth, clientWidth] as const;
    });
    expect(wide).toBeLessThanOrEqual(room);
    const low = await page
      .locator('button:visible, select:visible, label.slows, a.button:visible')
      .evaluateAll((all) =>
        all
          .filter((each) => each.getBoundingClientRect().height < (each.matches('.deed, .card button') ? 71.5 : 47.5))
          .map((each) => each.outerHTML),
      );
    expect(low).toEqual([]);
  });

  it('shows the temperature at 96 px, what to do at 40 px, and the card’s button in the first view of a phone', async () => {
    const { page } = await open({ at: 'stove', viewport: { width: 390, height: 844 } });
    await page.locator(done).waitFor();
    const sizeOf = (what: string) =>
      page.locator(what).evaluate((each) => Number.parseFloat(getComputedStyle(each).fontSize));
    expect(await sizeOf('[data-role=temperature]')).toBeGreaterThanOrEqual(96);
    expect(await sizeOf('.card h2')).toBeGreaterThanOrEqual(40);
    const box = await page.locator(done).boundingBox();
    expect((box?.y ?? 0) + (box?.height ?? 0)).toBeLessThanOrEqual(844);
  });

  it('has the temperature and the button together in the first view of a small phone, above the bar of alarms', async () => {
    const { page } = await open({ at: 'stove', viewport: phone });
    await page.locator(done).waitFor();
    const box = await page.locator(done).boundingBox();
    const bar = await page.locator('.alarm-strip').boundingBox();
    expect((box?.y ?? 0) + (box?.height ?? 0)).toBeLessThanOrEqual(bar?.y ?? 0);
  });

  it('has first aid one tap away, and holds the rehearsal meanwhile', async () => {
    const { page } = await open({ at: 'stove?seed=5', viewport: phone });
    await page.locator(done).click();
    await page.getByRole('button', { name: 'Pause' }).waitFor();
    await page.getByRole('link', { name: 'First aid' }).click();
    await page.getByRole('heading', { name: 'Burned by hot sugar' }).waitFor();
    await page.goBack();
    await page.getByText('The clock is held.').waitFor();
    expect(await seen(page, '.strip')).toContain('hidden pan 5');
    await page.getByRole('button', { name: 'Go on' }).click();
    await page.getByText('The clock is held.').waitFor({ state: 'detached' });
  });

  it('can be led by keyboard, and tells new advice to those who hear the page', async () => {
    const { page } = await open({ at: 'stove?seed=5&speed=240' });
    await page.locator(done).waitFor();
    await says(page, '.card [aria-live]', /Next: Dial up to \d/);
    await page.waitForTimeout(300);
    for (let i = 0; i < 12; i++) {
      await page.keyboard.press('Tab');
      if ((await page.evaluate(() => document.activeElement?.textContent)) === 'Done') break;
    }
    await page.keyboard.press('Enter');
    await says(page, '.deeds', /A deed acts on the hidden pan at once/);
    await says(page, '.glance-detail', /Dial [1-9]/);
  });

  it('puts advice aside on “Not now”, and opens no deed before its time', async () => {
    const { page } = await open({ at: 'stove?seed=5&speed=240' });
    await page.locator(done).waitFor();
    expect(await page.getByRole('button', { name: 'Not now', exact: true }).count()).toBe(0);
    const openDeeds = await page
      .locator('.deeds button')
      .evaluateAll((all) => all.filter((each) => !each.matches('[aria-disabled=true], :disabled')).length);
    expect(openDeeds).toBe(0);
    await page.waitForTimeout(300);
    await page.locator(done).click();
    await page.getByRole('button', { name: 'Not now', exact: true }).waitFor();
    await page.waitForTimeout(300);
    await page.getByRole('button', { name: 'Not now', exact: true }).click();
    await says(page, '.card', /Put aside|No act needed/);
    await says(page, '.deed.closed', /Alkali/);
  });

  it('is silent until sound is tapped on, and says when there is none', async () => {
    const { page } = await open();
    await page.addInitScript(() => Object.assign(window, { AudioContext: undefined }));
    await page.goto(`${page.url()}stove`);
    await page.getByText('Sound is off.').waitFor();
    await page.getByRole('button', { name: 'Sound on' }).click();
    await page.getByText('Sound is not available here: watch the card.').waitFor();
    expect(await page.locator(done).isVisible()).toBe(true);
  });
});
