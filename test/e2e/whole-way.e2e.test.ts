// From a beer's need to a plan, a rehearsed cook, a lot, and the beer with it: the whole way on a phone, in a real browser.
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { cardDone, followTheCards } from './followTheCards.ts';
import { objections } from './objections.ts';
import { field, noBrowser, pages, says, seen } from './openPage.ts';

const wishedEbc = 60;

/** To the Desk with what the beer is in want of; gives the mass that is planned, g. */
async function planForBeer(page: Page): Promise<number> {
  await page.getByRole('button', { name: 'Take out' }).click();
  await field(page, 'Beer colour').fill(String(wishedEbc));
  await field(page, 'Sugar share').fill('8');
  await page.getByRole('button', { name: 'Find' }).click();
  await page.getByRole('link', { name: 'Plan it at the Desk' }).click();
  await page.getByRole('button', { name: 'Find the plan' }).click();
  await says(page, '.colour-wish', /8 in 10 cooks of it at/);
  return Number((await page.getByLabel('Finished sugar', { exact: true }).inputValue()).replace(/\D/g, ''));
}

/** Card by card to the pour, as fast as the machine can: at 60 times it takes two minutes, and is the same cook. */
async function rehearse(page: Page): Promise<void> {
  await page.getByRole('link', { name: 'Rehearse this plan' }).click();
  await page.locator(cardDone).waitFor();
  await page.getByRole('button', { name: '60× the pace' }).click();
  await page.goto(`${new URL(page.url()).origin}/stove?seed=11&speed=600`);
  await page.locator(cardDone).waitFor();
  await page.getByLabel('With surprises').check();
  const moments = await followTheCards(page, 150_000);
  expect(moments.at(-1)?.poured).toBe(true);
  expect(new Set(moments.map(({ frame }) => frame))).toEqual(new Set(['Rehearsal']));
  expect(moments.some(({ title }) => title.startsWith('Alkali, part'))).toBe(true);
  expect(moments.some(({ alkaliButton }) => alkaliButton)).toBe(true);
  const hot = moments.filter(({ celsius }) => celsius > 135);
  expect(hot.length).toBeGreaterThan(5);
  expect(hot.filter(({ alkaliButton }) => alkaliButton)).toEqual([]);
}

/** Colour of the beer with its sugars, EBC: the marks below which 10 and 90 % lie. */
async function colourOfBeer(page: Page): Promise<readonly number[]> {
  const row = page.locator('.glass > .wide-table tr', {
    has: page.getByRole('rowheader', { name: 'Colour, EBC', exact: true }),
  });
  const [told = ''] = await row.locator('td').last().allInnerTexts();
  return (told.split(/\n+/)[1] ?? '').split(' to ').map(Number);
}

describe.skipIf(noBrowser)('the whole way', () => {
  const open = pages();

  it('from a beer that should be darker, by way of the Desk and a rehearsal, to that beer within its stated range', async () => {
    const { page, complaints } = await open({ at: 'glass', ownServer: true, viewport: { width: 360, height: 780 } });
    const massG = await planForBeer(page);
    await rehearse(page);
    await says(page, '.reveal', /Poured: what was hidden/);
    await says(page, '.reveal', /\d+ of 11 hidden values lie within/);
    await page.getByRole('heading', { name: 'Surprises' }).waitFor();
    await says(page, '.reveal', /said so after \d+ s|no alarm said so/);
    await says(page, '.score', /Hold in band\s*\d+ %/);
    expect(await objections(page)).toEqual([]);

    await page.getByRole('button', { name: 'Try it in a glass' }).click();
    await page.getByRole('link', { name: 'To the glass' }).click();
    await page.getByRole('button', { name: 'Add a lot' }).click();
    await says(page, '.dose legend', /Rehearsed: /);
    await field(page, 'How much').fill(`${massG} g`);
    const [low = Number.NaN, high = Number.NaN] = await colourOfBeer(page);
    expect(low).toBeLessThanOrEqual(wishedEbc);
    expect(high).toBeGreaterThanOrEqual(wishedEbc);

    await page.getByRole('link', { name: 'Stove', exact: true }).click();
    await page.getByRole('button', { name: 'Rehearse again' }).click();
    await page.locator(cardDone).waitFor();
    expect(await seen(page, '.strip')).not.toMatch(/hidden pan 11$/m);
    expect(complaints).toEqual([]);
  }, 240_000);
});
