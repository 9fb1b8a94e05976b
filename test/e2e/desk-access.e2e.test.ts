// Desk and Care for everybody: keyboard, screen readers, small screens, themes, paper.
import { describe, expect, it } from 'vitest';
import { objections } from './objections.ts';
import { bandsThere, field, noBrowser, pages, planned, says, seen } from './openPage.ts';
import { paperFormats, printedPages } from './printedPages.ts';

const amounts = '.results .amounts';

describe.skipIf(noBrowser)('Desk and Care', () => {
  const open = pages();

  it('can be used by keyboard alone, and shows where the focus is', async () => {
    const { page } = await open();
    await planned(page);
    const reached: string[] = [];
    for (let i = 0; i < 90; i++) {
      await page.keyboard.press('Tab');
      const seen = await page.evaluate(() => {
        const element = document.activeElement as HTMLElement;
        const label = (element as HTMLInputElement).labels?.[0]?.textContent;
        const name = element.getAttribute('aria-label') ?? label ?? element.textContent ?? '';
        return { name: name.trim().split('\n')[0] ?? '', outline: getComputedStyle(element).outlineStyle };
      });
      expect(seen.outline, seen.name).toBe('solid');
      reached.push(seen.name);
      if (seen.name === 'Finished sugar') {
        await page.keyboard.press('Control+a');
        await page.keyboard.type('250g');
        // What it comes to is reckoned anew, and may come last.
        await says(page, amounts, /2[45]\d/);
        await says(page, '.account', /Type prices/);
      }
      if (seen.name.startsWith('Burned')) break;
    }
    for (const name of [
      'To the content',
      'Desk',
      'Care',
      'Save plan',
      'Finished sugar',
      'Time along the pan line',
      'Save kit',
      'Type prices on the Kit page',
      'Burned, splashed, or a pan on fire: Care',
    ])
      expect(reached).toContain(name);
    await says(page, amounts, /2[45]\d/);
  });

  it('keeps a theme and a unit of temperature that were chosen', async () => {
    const { page } = await open();
    await planned(page);
    await page.getByLabel('Theme').selectOption('dark');
    const paper = () => page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
    expect(await paper()).toBe('rgb(27, 23, 20)');
    await page.getByRole('button', { name: '°F' }).click();
    expect(await field(page, 'Invert at').inputValue()).toBe('266 °F');
    await page.reload();
    await planned(page);
    expect(await paper()).toBe('rgb(27, 23, 20)');
    expect(await field(page, 'Invert at').inputValue()).toBe('266 °F');
  });

  it('moves nothing when the bands arrive', async () => {
    const { page } = await open({ viewport: { width: 360, height: 780 } });
    await page.evaluate(() => {
      const shifts: number[] = [];
      Object.assign(window, { shifts });
      new PerformanceObserver((list) => {
        for (const entry of list.getEntries()) shifts.push((entry as unknown as { value: number }).value);
      }).observe({ type: 'layout-shift', buffered: true });
    });
    await bandsThere(page);
    await page.waitForTimeout(800);
    const shifted = await page.evaluate(() =>
      (window as unknown as { shifts: number[] }).shifts.reduce((a, b) => a + b, 0),
    );
    expect(shifted).toBeLessThan(0.02);
  });

  it.each(['', 'care'])('/%s has nothing that axe objects to, in light and dark', async (at) => {
    const { page, complaints } = await open({ at });
    if (at === '') {
      await bandsThere(page);
      await page.getByText('Change the kit').click();
      await page.getByText('The pan line as a table').click();
      await page.getByText('The field as a table').click();
      await page.getByText('Other levers, another look').click();
      await page.waitForTimeout(500);
    } else {
      await page.getByRole('heading', { name: 'Burned by hot sugar' }).waitFor();
    }
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      expect(await objections(page), colorScheme).toEqual([]);
    }
    expect(complaints).toEqual([]);
  });

  it.each(['', 'care'])('/%s needs no sideways scrolling at 320 px, and its targets are 48 px high', async (at) => {
    const { page } = await open({ at, viewport: { width: 320, height: 640 } });
    await page.locator('h1').waitFor();
    if (at === '') await planned(page);
    const [wide, room] = await page.evaluate(() => {
      const { scrollWidth, clientWidth } = document.documentElement;
      return [scrollWidth, clientWidth] as const;
    });
    expect(wide).toBeLessThanOrEqual(room);
    const low = await page
      .locator('button:visible, input:not([type=radio]):visible, select:visible, summary:visible')
      .evaluateAll((all) =>
        all.filter((each) => each.getBoundingClientRect().height < 47.5).map((each) => each.outerHTML),
      );
    expect(low).toEqual([]);
  });

  it('prints the plan with its steps, and no controls', async () => {
    const { page } = await open();
    await bandsThere(page);
    await page.emulateMedia({ media: 'print' });
    // What it comes to is reckoned apart, and may come last.
    await says(page, '.print-sheet', /Tray/);
    const text = await seen(page, 'body');
    for (const words of [
      'First batch',
      'Dissolve',
      'Invert',
      'Roast',
      'Tray',
      'Sodium hydroxide',
      'Lye into cold water',
      '20 minutes of cool running water',
    ])
      expect(text).toContain(words);
    for (const words of ['Save plan', 'Print', 'Change the kit', 'System']) expect(text).not.toContain(words);
    expect(await page.locator('button:visible, input:visible, select:visible').count()).toBe(0);
    expect(await page.locator('.print-pan pattern').count()).toBeGreaterThan(0);
  });

  it('prints first aid on one page of either format', async () => {
    const { page } = await open({ at: 'care' });
    await page.locator('h1').waitFor();
    for (const format of paperFormats) expect(await printedPages(page, format), format).toBe(1);
  });

  it('prints every route, hard or syrup, on one page of either format, its total time in the heading', async () => {
    const { page } = await open();
    await planned(page);
    for (const route of ['Pale', 'Bright', 'Deep']) {
      for (const form of ['Hard', 'Syrup']) {
        await page.getByLabel(new RegExp(`^${route}`)).check();
        await page.getByLabel(form, { exact: true }).check();
        // The sheet is whole once it says what this plan lands at: that is reckoned last.
        const whole = new RegExp(`${form}, ${route} route; `, 'i');
        await page.locator('.print-sheet > p', { hasText: whole }).waitFor({ state: 'attached' });
        for (const format of paperFormats)
          expect(await printedPages(page, format), `${route} ${form} ${format}`).toBe(1);
      }
    }
    await page.emulateMedia({ media: 'print' });
    expect(await seen(page, '.print-sheet h1')).toMatch(/^First batch\s+1 h \d\d min$/);
    // 10 pt are read at arm's length; 1 pt is 4/3 px.
    const small = await page
      .locator('.print-sheet :is(p, li, td, th, dt, dd, span, figcaption, caption):visible')
      .evaluateAll((all) =>
        all
          .filter(
            (each) => each.textContent && Number.parseFloat(getComputedStyle(each).fontSize) < (10 * 4) / 3 - 0.01,
          )
          .map((each) => each.outerHTML),
      );
    expect(small).toEqual([]);
  });
});
