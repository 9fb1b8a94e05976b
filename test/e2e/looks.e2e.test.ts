// Every place, with an invented club's things in it, at three sizes: letters twice as large, colours of one's own, and no motion.
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import type { Demo } from '../../src/api/demo.ts';
import { cardDone as done } from './followTheCards.ts';
import { askBeside, noBrowser, pages } from './openPage.ts';

interface Place {
  readonly at: string;
  /** It is there once this is. */
  readonly shows: string;
  /** The link on it that leads to what is looked at. */
  readonly by?: string;
}

/** @param demo what the club has */
function placesOf({ cooks, lots, glasses }: Demo): readonly Place[] {
  const [one, other] = cooks;
  const [lot] = lots;
  return [
    { at: '', shows: '.picture .pan-line' },
    { at: '', by: 'Bonfire night, darker', shows: 'h1:text("Bonfire night, darker")' },
    { at: 'stove?seed=3', shows: done },
    { at: 'stove/cook', shows: '.checks input' },
    { at: 'shelf', shows: ':text("Bonfire shards, darker")' },
    { at: 'shelf/new', shows: 'h1' },
    { at: 'shelf/blind', shows: 'h1' },
    { at: `shelf/${lot}`, shows: '.note-list' },
    { at: `shelf/${lot}/label`, shows: '.labels svg' },
    { at: 'book', shows: ':text("Bonfire night, darker")' },
    { at: `book/${one}`, shows: '.moment' },
    { at: `book/over?cooks=${one},${other}`, shows: '.differences' },
    { at: 'glass', shows: '.glass-numbers' },
    { at: `glass/${glasses[0]}`, shows: 'h1:text("Bonfire stout")' },
    { at: 'kit', shows: '.kit-known' },
    { at: 'care', shows: 'h1' },
    { at: 'guide', shows: '.guide-kinds li' },
    { at: 'guide/reference/parameters', shows: 'article table' },
    { at: 'devices', shows: ':text("Let in")' },
    { at: 'demo', shows: ':text("Take the club’s things out")' },
  ];
}

async function demoIn(page: Page): Promise<Demo> {
  const asked = async (method: 'GET' | 'PUT') =>
    (await (await askBeside(page, '/api/demo', { method })).json()) as Demo;
  const demo = await asked('GET');
  return demo.isIn ? demo : asked('PUT');
}

async function goTo(page: Page, { at, by, shows }: Place): Promise<void> {
  await page.goto(`/${at}`);
  if (by !== undefined) await page.getByRole('link', { name: by }).click();
  await page.locator(`main ${shows}`).first().waitFor();
}

/** How far the page itself may be moved sideways, px. Pictures are drawn for a new width a few frames after the letters. */
const sideways = (page: Page) =>
  page.evaluate(async () => {
    const px = () => document.documentElement.scrollWidth - document.documentElement.clientWidth;
    const frame = () => new Promise((drawn) => requestAnimationFrame(drawn));
    for (let frames = 0; frames < 2 || (px() > 0 && frames < 30); frames++) await frame();
    return px();
  });

/** Where the page may be moved sideways: as it is, with its letters twice as large, and with the browser's own so. */
async function widths(page: Page): Promise<string[]> {
  const found: string[] = [];
  const look = async (letters: string) => {
    const px = await sideways(page);
    if (px > 0) found.push(`${px} px sideways, ${letters}`);
  };
  const root = (size: string) =>
    page.evaluate((set) => document.documentElement.style.setProperty('font-size', set), size);
  await look('letters as they are');
  await root('200%');
  await look('letters of the page twice as large');
  await root('');
  const browser = await page.context().newCDPSession(page);
  await browser.send('Page.setFontSizes', { fontSizes: { standard: 32 } });
  const seen = await page.evaluate(() => getComputedStyle(document.documentElement).fontSize);
  expect(seen).toBe('32px');
  await look('letters of the browser twice as large');
  await browser.send('Page.setFontSizes', { fontSizes: { standard: 16 } });
  await browser.detach();
  return found;
}

/**
 * Words and controls that are not seen in forced colours. Where colours are forced, the browser lays its own ground behind text (CSS
 * Color Adjustment 1, forced colors): text of the colour of that ground is not seen, whatever is behind it.
 */
const notSeen = (page: Page) =>
  page.evaluate(() => {
    const rgbaOf = (colour: string) => [...colour.matchAll(/[\d.]+/g)].map(Number);
    const isClear = (colour: string) => rgbaOf(colour)[3] === 0;
    const luminance = (colour: string) => {
      const [r = 0, g = 0, b = 0] = rgbaOf(colour).map((value) => {
        const share = value / 255;
        return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
      });
      return 0.2126 * r + 0.7152 * g + 0.0722 * b;
    };
    const contrast = (one: string, other: string) => {
      const [light = 0, dark = 0] = [luminance(one), luminance(other)].sort((a, b) => b - a);
      return (light + 0.05) / (dark + 0.05);
    };
    const probe = document.body.appendChild(document.createElement('i'));
    probe.style.cssText = 'forced-color-adjust: none; background: Canvas';
    const canvas = getComputedStyle(probe).backgroundColor;
    probe.remove();

    const groundOf = (element: Element): string => {
      for (let each: Element | null = element; each; each = each.parentElement) {
        const { backgroundColor } = getComputedStyle(each);
        if (!isClear(backgroundColor)) return backgroundColor;
      }
      return canvas;
    };
    const isRead = (element: Element) => {
      const style = getComputedStyle(element);
      const ground = style.forcedColorAdjust === 'none' ? groundOf(element) : canvas;
      return contrast(style.color, ground) >= 4.5;
    };
    const isBounded = (control: Element) => {
      const style = getComputedStyle(control);
      // The browser draws these, and of a file's field the button in it.
      const native =
        control.matches('[type=file]') ||
        (style.appearance !== 'none' && control.matches('[type=checkbox], [type=radio], [type=range]'));
      return (
        native || (Number.parseFloat(style.borderBottomWidth) >= 1 && contrast(style.borderBottomColor, canvas) >= 3)
      );
    };
    const shown = (selector: string) =>
      [...document.querySelectorAll(selector)].filter(
        (each) => each.checkVisibility() && !each.closest('.skip, .unseen'),
      );
    const hasWords = (element: Element) =>
      [...element.childNodes].some((node) => node.nodeType === Node.TEXT_NODE && node.textContent?.trim());

    const unread = shown('body :not(svg *, option)').filter(
      (each) => (hasWords(each) || each.matches('select')) && !isRead(each),
    );
    /** A field that is laid over what stands for it is seen as that. */
    const fields = shown('input, textarea').filter((each) => getComputedStyle(each).opacity !== '0');
    const bare = shown('button, a[href], summary').filter(
      (each) => !each.textContent?.trim() && !each.querySelector('svg, img'),
    );
    return [...unread, ...[...fields, ...bare].filter((each) => !isBounded(each))].map((each) =>
      each.outerHTML.slice(0, 200),
    );
  });

/** Longest that anything may move when no motion is wished, ms. */
const longestMs = 50;

/** What would move for longer, or moves now. */
const moving = (page: Page) =>
  page.evaluate((most) => {
    const longest = (times: string) => Math.max(...times.split(',').map((each) => 1000 * Number.parseFloat(each)));
    const styled = [...document.querySelectorAll('*')].filter((each) => {
      const { animationName, animationDuration, transitionDuration } = getComputedStyle(each);
      return (animationName !== 'none' && longest(animationDuration) > most) || longest(transitionDuration) > most;
    });
    const running = document
      .getAnimations()
      .filter(({ effect }) => Number(effect?.getComputedTiming().duration) > most)
      .map(({ effect }) => (effect instanceof KeyframeEffect ? effect.target : null));
    return [...new Set([...styled, ...running])].map((each) => each?.outerHTML.slice(0, 200));
  }, longestMs);

describe.skipIf(noBrowser)('every place', () => {
  const open = pages();

  it.each([
    { width: 360, height: 780 },
    { width: 768, height: 1024 },
    { width: 1440, height: 900 },
  ])('at $width px: needs no scrolling sideways, is seen in forced colours, and keeps still', async (viewport) => {
    const { page, complaints } = await open({ at: 'care', viewport });
    const found: Record<string, unknown> = {};
    for (const place of placesOf(await demoIn(page))) {
      await goTo(page, place);
      const wide = await widths(page);
      await page.emulateMedia({ forcedColors: 'active', reducedMotion: 'reduce' });
      const unseen = await notSeen(page);
      const moves = await moving(page);
      await page.emulateMedia({ forcedColors: 'none', reducedMotion: 'no-preference' });
      if (wide.length + unseen.length + moves.length > 0)
        found[`${place.at} ${place.by ?? ''}`] = { wide, unseen, moves };
    }
    expect(found).toEqual({});
    expect(complaints).toEqual([]);
  });

  it('an alarm is read in forced colours, and does not blink where no motion is wished', async () => {
    const { page } = await open({ at: 'stove?seed=3', forcedColors: 'active', reducedMotion: 'reduce' });
    await page.locator(done).click();
    // Longer than the guard against double taps.
    await page.waitForTimeout(300);
    await page.getByRole('button', { name: 'Foam!' }).click();
    await page.locator('.alarm-strip[data-phase=new][data-priority="act now"]').waitFor();
    expect(await notSeen(page)).toEqual([]);
    expect(await moving(page)).toEqual([]);
  });
});
