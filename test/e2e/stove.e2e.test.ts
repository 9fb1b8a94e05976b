// A rehearsal at the Stove, in a real browser, from the Desk to the reveal.
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { noBrowser, pages, planned, says, seen } from './openPage.ts';

const phone = { width: 360, height: 780 };
const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
const done = '.card .done';

const complaintsOf = async (page: Page) => {
  const { violations } = await new AxeBuilder({ page }).withTags(tags).analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' | ')}`);
};

/** What the alkali's place, the temperature and the frame show at one moment. */
const moment = (page: Page) =>
  page.evaluate(() => {
    const text = (selector: string) => document.querySelector(selector)?.textContent ?? '';
    return {
      celsius: Number.parseFloat(text('.temperature')),
      alkaliButton: [...document.querySelectorAll('.deeds button')].some((each) =>
        each.textContent?.includes('Alkali'),
      ),
      frame: text('.strip h1'),
      title: text('.card h2'),
      poured: document.querySelector('.reveal') !== null,
    };
  });

/** Taps what the card asks for until the pour; gives all that was seen on the way. */
async function followTheCards(page: Page, longestMs: number) {
  const moments: Awaited<ReturnType<typeof moment>>[] = [];
  const giveUp = Date.now() + longestMs;
  while (Date.now() < giveUp) {
    moments.push(await moment(page));
    if (moments.at(-1)?.poured) break;
    await page
      .locator(done)
      .click({ timeout: 250 })
      .catch(() => undefined);
  }
  return moments;
}

describe.skipIf(noBrowser)('the Stove', () => {
  const open = pages();

  it('rehearses the plan of the Desk on a phone, card by card, to the pour and the reveal', async () => {
    const { page, complaints } = await open({ viewport: phone });
    await planned(page);
    await page.getByRole('link', { name: 'Rehearse this plan' }).click();
    await page.locator(done).waitFor();
    await page.getByRole('button', { name: '60× the pace' }).click();
    // At 60 times it takes two minutes to the pour: as fast as the machine can is the same cook.
    await page.goto(`${new URL(page.url()).origin}/stove?seed=7&speed=600`);
    await page.locator(done).waitFor();
    const moments = await followTheCards(page, 115_000);
    expect(moments.at(-1)?.poured).toBe(true);
    expect(new Set(moments.map(({ frame }) => frame))).toEqual(new Set(['Rehearsal']));
    expect(moments.some(({ title }) => title.startsWith('Alkali, part'))).toBe(true);
    expect(moments.some(({ alkaliButton }) => alkaliButton)).toBe(true);
    const hot = moments.filter(({ celsius }) => celsius > 135);
    expect(hot.length).toBeGreaterThan(10);
    expect(hot.filter(({ alkaliButton }) => alkaliButton)).toEqual([]);
    await says(page, '.reveal', /Poured: what was hidden/);
    await says(page, '.reveal', /\d+ of 11 hidden values lie within/);
    await says(page, '.score', /Hold in band\s*\d+ %/);
    expect(await complaintsOf(page)).toEqual([]);
    await page.getByRole('button', { name: 'Rehearse again' }).click();
    await page.locator(done).waitFor();
    expect(await seen(page, '.strip')).not.toMatch(/hidden pan 7$/m);
    expect(complaints).toEqual([]);
  }, 180_000);

  it.each(['light', 'dark'] as const)(
    'in %s has nothing that axe objects to, before and while it cooks',
    async (colorScheme) => {
      const { page, complaints } = await open({ at: 'stove?seed=3', colorScheme, viewport: phone });
      await page.locator(done).waitFor();
      expect(await complaintsOf(page)).toEqual([]);
      await page.locator(done).click();
      await says(page, '.deeds', /A deed acts on the hidden pan at once/);
      await page.waitForTimeout(2500);
      expect(await complaintsOf(page)).toEqual([]);
      expect(complaints).toEqual([]);
    },
  );

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

  it('shows the temperature at 96 px and the card’s button in the first view of a phone', async () => {
    const { page } = await open({ at: 'stove', viewport: { width: 390, height: 844 } });
    await page.locator(done).waitFor();
    const size = await page.locator('[data-role=temperature]').evaluate((each) => getComputedStyle(each).fontSize);
    expect(Number.parseFloat(size)).toBeGreaterThanOrEqual(96);
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
