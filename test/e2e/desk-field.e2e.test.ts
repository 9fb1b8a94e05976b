// The field of sugars on the Desk, and Care's countdown, in a real browser.
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { field, noBrowser, pages, planned, says } from './openPage.ts';

const spot = (page: Page) => page.getByRole('slider', { name: /^Spot of the field/ });

/** Mean lightness (luma, 0 to 255) of the painted picture from bottom to top, at shares of its width; nothing where it is clear. */
const across = (page: Page, shares: readonly number[]) =>
  page.locator('.field-ground canvas').evaluate((canvas, at) => {
    const { width, height } = canvas as HTMLCanvasElement;
    const bytes = (canvas as HTMLCanvasElement).getContext('2d')?.getImageData(0, 0, width, height).data ?? [];
    return at.map((share) => {
      let [luma, seen] = [0, 0];
      for (let y = 0; y < height; y++) {
        const i = 4 * (y * width + Math.round(share * width));
        if (bytes[i + 3] === 0) continue;
        seen++;
        luma += 0.299 * (bytes[i] ?? 0) + 0.587 * (bytes[i + 1] ?? 0) + 0.114 * (bytes[i + 2] ?? 0);
      }
      return seen > 0 ? luma / seen : undefined;
    });
  }, shares);

describe.skipIf(noBrowser)('the field', () => {
  const open = pages();

  it('paints what the kit can make, hands a spot to the plan by keys and pointer, and follows a hold set by hand', async () => {
    const { page, complaints } = await open();
    await planned(page);
    await says(page, '.field-readout', /8 in 10 cooks: \d+ to \d+/);

    const [pale, middle, dark, past] = await across(page, [0.03, 0.5, 0.9, 0.98]);
    expect(pale).toBeGreaterThan((middle ?? 255) + 20);
    expect(middle).toBeGreaterThan((dark ?? 255) + 20);
    expect(past).toBeUndefined();

    await spot(page).focus();
    for (const key of ['ArrowRight', 'ArrowRight', 'Shift+ArrowUp', 'ArrowDown']) await page.keyboard.press(key);
    expect(await field(page, 'Dose').inputValue()).toBe('5.2 g/kg');
    expect(await field(page, 'Brown for').inputValue()).toBe('29 min');
    expect(await spot(page).getAttribute('aria-valuetext')).toMatch(
      /Alkali dose 5\.2 g\/kg, Browning hold 29 min: \d+ EBC, 8 in 10 cooks \d+ to \d+; fruit \w+/,
    );

    const grip = page.getByRole('slider', { name: /^Invert by hand/ });
    await grip.focus();
    for (const key of ['ArrowUp', 'ArrowUp', 'ArrowUp', 'ArrowUp', 'ArrowRight']) await page.keyboard.press(key);
    expect(await field(page, 'Invert at').inputValue()).toBe('132 °C');
    expect(await field(page, 'Invert for').inputValue()).toBe('31 min');
    expect(await grip.getAttribute('aria-valuetext')).toMatch(
      /132 °C for 31 min; hotter is not allowed: LIM-ALKALI-HEAT/,
    );
    await page.getByRole('button', { name: 'Back to the route’s own holds' }).click();
    expect(await field(page, 'Invert at').inputValue()).toBe('130 °C');

    const ground = page.locator('.field-ground');
    await ground.scrollIntoViewIfNeeded();
    const box = await ground.boundingBox();
    if (!box) throw new Error('no field');
    await page.mouse.click(box.x + box.width * 0.25, box.y + box.height * 0.5);
    await says(page, '.results .steps', /Hold 2[23] min/);
    const dose = Number.parseFloat(await field(page, 'Dose').inputValue());
    expect(dose).toBeGreaterThan(2);
    expect(dose).toBeLessThan(2.6);

    await page.mouse.click(box.x + box.width * 0.98, box.y + box.height * 0.5);
    await says(page, '.field-none', /No plan here\. .* is too much alkali; allowed is 8\.0 g/);

    expect(complaints).toEqual([]);
  });

  it('hands a sugar over from its table, takes other levers, and shows where a colour wished for lies', async () => {
    const { page, complaints } = await open({ viewport: { width: 360, height: 780 } });
    await planned(page);
    await page.getByText('The field as a table').click();
    await page.locator('.field-table button').first().click();
    expect(await field(page, 'Brown for').inputValue()).toBe('45 min');
    expect(await field(page, 'Dose').inputValue()).toBe('0.2 g/kg');

    await page.getByRole('button', { name: '80 EBC', exact: true }).click();
    await says(page, '.wish-line', /80 EBC/);
    await field(page, 'Counted in').selectOption('A430');
    expect(await field(page, 'Land at, A430 of a 10 % solution').inputValue()).toBe('3.2');

    await page.getByText('Other levers, another look').click();
    await field(page, 'Up').selectOption('roastMinutes');
    await says(page, '.field-axes', /Roasting hold, min/);
    expect(complaints).toEqual([]);
  });

  it('Care counts 20 minutes of cool water, over a reload', async () => {
    const { page } = await open({ at: 'care', fakeClock: true });
    await page.getByRole('button', { name: 'Burned: count 20 minutes' }).click();
    await page.clock.fastForward('05:30');
    await says(page, '.cooling', /14:30/);
    await page.reload();
    await says(page, '.cooling', /14:(30|29)/);
    await page.clock.fastForward('15:00');
    await says(page, '.cooling', /0:00.*Twenty minutes are over/s);
  });
});
