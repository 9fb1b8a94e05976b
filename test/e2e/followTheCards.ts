// Leads a rehearsal as its cards say.
import type { Page } from 'playwright-core';

export const cardDone = '.card .done';

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
export async function followTheCards(page: Page, longestMs: number) {
  const moments: Awaited<ReturnType<typeof moment>>[] = [];
  const giveUp = Date.now() + longestMs;
  while (Date.now() < giveUp) {
    moments.push(await moment(page));
    if (moments.at(-1)?.poured) break;
    await page
      .locator(cardDone)
      .click({ timeout: 250 })
      .catch(() => undefined);
  }
  return moments;
}
