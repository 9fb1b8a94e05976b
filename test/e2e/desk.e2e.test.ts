// From an aim to a plan, in a real browser.
import { describe, expect, it } from 'vitest';
import { bandsThere, field, noBrowser, pages, planned, says, seen } from './openPage.ts';

const amounts = '.results .amounts';
const hazard = '.results .hazard';

describe.skipIf(noBrowser)('the Desk', () => {
  const open = pages();

  it('finds the plan that lands at a colour, also when a glass sends the wish', async () => {
    const { page, complaints } = await open({ at: '?colour=45&from=40&to=51&mass=300' });
    await planned(page);
    expect(await field(page, 'Land at, EBC of a 10 % solution').inputValue()).toBe('45');
    await page.getByRole('button', { name: 'Find the plan' }).click();
    await says(page, '.colour-wish', /Planned to land at 4[3-7] EBC; 8 in 10 cooks of it at \d+ to \d+ EBC\./);
    await says(page, '.colour-wish', /\d+ in 10 come between the 40 and 51 EBC that the beer may need/);
    await says(page, '.heading', /300 g, hard, deep route/);
    // Another colour is no longer the beer's.
    await says(page, '.colour-wish', /the beer may need 40 to 51 EBC/);
    await field(page, 'Land at, EBC of a 10 % solution').fill('9999');
    expect(await page.getByText('the beer may need').count()).toBe(0);
    expect(await page.getByRole('button', { name: 'Find the plan' }).isDisabled()).toBe(true);
    await says(page, '.colour-wish', /“9999” can’t be aimed at\. Allowed: 0\.25 to 1300 EBC/);
    expect(complaints).toEqual([]);
  });

  it('aims at any colour of the screen, and says what is near enough', async () => {
    const { page, complaints } = await open();
    await planned(page);
    const pick = page.getByLabel('or like any colour');
    // A blue, which no sugar is.
    await pick.fill('#3050c0');
    await says(
      page,
      '.picked-colour',
      /No sugar looks quite like that\. The nearest is at [\d.]+ EBC, \d+ just visible steps away/,
    );
    // As 1 cm of a 10 % solution of 45 EBC is painted.
    await pick.fill('#f2b31b');
    await page.waitForFunction(() => !document.querySelector('.picked-colour .paint'));
    expect(Math.abs(Number(await field(page, 'Land at, EBC of a 10 % solution').inputValue()) - 45)).toBeLessThan(2);
    await field(page, 'Near enough, to either side').fill('much');
    await says(page, '.colour-wish', /“much” is no span of colour\. Allowed: above 0 to 99 %/);
    expect(await page.getByRole('button', { name: 'Find the plan' }).isDisabled()).toBe(true);
    await field(page, 'Land at, EBC of a 10 % solution').fill('60');
    await field(page, 'Near enough, to either side').fill('20');
    await page.getByRole('button', { name: 'Find the plan' }).click();
    await says(page, '.colour-wish', /\d+ in 10 come within what you call near enough, 40 to 80 EBC/);
    await says(page, '.account', /Sodium\s*\d\.\d\d g in a kg/);
    expect(complaints).toEqual([]);
  });

  it('plans what is typed, at once, in kitchen units', async () => {
    const { page, complaints } = await open();
    await planned(page);
    await says(page, amounts, /39\d|40\d/);
    await field(page, 'Finished sugar').fill('1lb');
    await page.getByText('= 454 g').waitFor();
    await says(page, amounts, /45\d/);
    await bandsThere(page);
    expect(complaints).toEqual([]);
  });

  it('says what is wrong with a text and what is allowed, and keeps the last plan, dimmed', async () => {
    const { page, complaints } = await open();
    await planned(page);
    const before = await seen(page, amounts);
    await field(page, 'Finished sugar').fill('two spoons');
    await page.getByText('Finished sugar: “two spoons” is not understood. Allowed: 100 g to 5000 g.').waitFor();
    expect(await field(page, 'Finished sugar').getAttribute('aria-invalid')).toBe('true');
    expect(await seen(page, amounts)).toBe(before);
    await page.getByText('This is the last plan that could be made').waitFor();
    expect(await page.getByRole('button', { name: 'Save plan' }).isDisabled()).toBe(true);
    await field(page, 'Finished sugar').fill('90kg');
    await page.getByText('Finished sugar: “90kg” is too much. Allowed: 100 g to 5000 g.').waitFor();
    expect(complaints).toEqual([]);
  });

  it('writes the usual spoon as people do, and names a field in its message as it is labelled', async () => {
    const { page } = await open();
    await planned(page);
    await page.getByText('Change the kit').click();
    expect(await field(page, 'Spoon for cold water').inputValue()).toBe('1 tsp');
    for (const [label, text, message] of [
      ['Dial goes to', '-5', 'Dial goes to: “-5” is too little. Allowed: 1 to 20.'],
      ['Room', '-5', 'Room: “-5” is too little. Allowed: 0 °C to 45 °C.'],
      ['Finished sugar', '-5', 'Finished sugar: “-5” is too little. Allowed: 100 g to 5000 g.'],
    ] as const) {
      await field(page, label).fill(text);
      await page.getByText(message).waitFor();
    }
  });

  it('tells of the dial what the drawn cook does, and one figure for each end', async () => {
    const { page } = await open();
    await bandsThere(page);
    const drawn = await page.locator('.picture .dial-number').allTextContents();
    const words = (await page.locator('.results .steps .deed').allInnerTexts()).map((each) =>
      [...(/Dial ([^.]*)\./.exec(each)?.[1] ?? '').matchAll(/\d+/g)].map(String),
    );
    expect(words).toHaveLength(5);
    // The last setting of each step is drawn, in the order of the steps; more may stand between.
    let from = 0;
    for (const settings of words.filter((each) => each.length < 3)) {
      const at = drawn.indexOf(settings.at(-1) ?? '', from);
      expect(at, `${settings} after ${drawn.slice(0, from)} of ${drawn}`).toBeGreaterThanOrEqual(from);
      from = at + 1;
    }
    const ends = await page.locator('.results .steps td[data-label="Ends at"]').allInnerTexts();
    const [hours, minutes] = /(\d+) h (\d+) min/.exec(await seen(page, '.landing .further:last-child'))?.slice(1) ?? [];
    expect(Number.parseInt(ends.at(-1) ?? '', 10)).toBe(60 * Number(hours) + Number(minutes));
  });

  it('warns of weak lye at the field and at the alkali: its strength, its parts, and what strength would do', async () => {
    const { page } = await open();
    await planned(page);
    expect(await page.locator('.caution').count()).toBe(0);
    await field(page, 'Strength').fill('2 %');
    const caution = /At 2 % the alkali goes in by 49 parts.*At 8 % it takes 12 parts/;
    await says(page, '.sheet .caution', caution);
    await says(page, '.results .caution', caution);
    await field(page, 'Strength').fill('8 %');
    await page.locator('.results .caution').waitFor({ state: 'detached' });
  });

  it('refuses alkali in an aluminium pan at the field, names the limit, and shows no plan', async () => {
    const { page, complaints } = await open();
    await planned(page);
    await page.getByText('Change the kit').click();
    await field(page, 'Material').selectOption('aluminium');
    await page.getByRole('alert', { name: 'No plan' }).waitFor();
    expect(await seen(page, '.refused')).toContain('LIM-PAN');
    expect(await page.locator('.pan-line').count()).toBe(0);
    const line = await field(page, 'Material').getAttribute('aria-describedby');
    expect(await seen(page, `[id="${line}"]`)).toMatch(/hydrogen.*stainless steel/);
    await field(page, 'Material').selectOption('stainless');
    await planned(page);
    expect(complaints).toEqual([]);
  });

  it('refuses lye that is too strong, and says how strong it may be', async () => {
    const { page } = await open();
    await field(page, 'Strength').fill('30 %');
    await page
      .getByText(/30 % is too strong; allowed is 25 %/)
      .first()
      .waitFor();
    expect(await page.locator('.pan-line').count()).toBe(0);
  });

  it('shows the hazard class that the strength of the lye has', async () => {
    const { page } = await open();
    await planned(page);
    expect(await seen(page, hazard)).toMatch(/DANGER.*category 1A/s);
    await field(page, 'Strength').fill('4 %');
    await says(page, hazard, /1B/);
    await field(page, 'Strength').fill('1 %');
    await says(page, hazard, /irritates/);
  });

  it('asks for no alkali on the pale route', async () => {
    const { page } = await open();
    await planned(page);
    await page.getByLabel(/^Pale/).check();
    await field(page, 'Citric acid').waitFor();
    expect(await field(page, 'Strength').count()).toBe(0);
    await page.waitForFunction(() => !document.querySelector('.results .alkali'));
    expect(await seen(page, amounts)).toContain('Citric acid');
  });

  it('tells the values under the pointer and under the arrow keys', async () => {
    const { page } = await open();
    await bandsThere(page);
    const slider = page.getByRole('slider', { name: 'Time along the pan line' });
    await slider.evaluate((line) => line.scrollIntoView({ block: 'center' }));
    const box = await slider.boundingBox();
    if (!box) throw new Error('the pan line has no place');
    await page.mouse.move(box.x + box.width / 2, box.y + 120);
    await page.locator('.cross-hair').waitFor();
    const pointed = await slider.getAttribute('aria-valuetext');
    expect(pointed).toMatch(/^\d+ min, \w+: Temperature \d+ °C \(8 in 10: .*Colour, EBC/);
    await page.mouse.move(5, 5);
    await slider.focus();
    await page.keyboard.press('Home');
    expect(await slider.getAttribute('aria-valuetext')).toMatch(/^0 min, Dissolve: Temperature 21 °C/);
    for (let i = 0; i < 4; i++) await page.keyboard.press('ArrowRight');
    expect(Number(await slider.getAttribute('aria-valuenow'))).toBe(120);
    await page.getByText('The pan line as a table').click();
    expect(await page.locator('.pan-table tbody tr').count()).toBeGreaterThan(15);
  });
});
