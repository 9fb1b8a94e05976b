/**
 * The built app in Chromium, as it is and slowed down four times as a phone is: how soon each place paints, how soon the Desk's field
 * and a spot of it are there, and how smoothly ten cooks laid over one another are dragged along.
 */
import { loadavg } from 'node:os';
import { chromium, type Page } from 'playwright-core';
import { findChromium } from '../scripts/setup/chromium.mjs';
import type { BookEntry } from '../src/api/book.ts';
import { cookOnAPan } from './measure/importedCook.ts';
import { publish, table } from './measure/report.ts';
import { served } from './measure/servedApp.ts';

const rates = [1, 4];
const times = 5;
/** Given to a page to paint what it has, ms. */
const settleMs = 2500;
const phone = { width: 360, height: 780 };
const places = ['', 'stove', 'shelf', 'book', 'glass', 'kit', 'care', 'guide', 'devices'];
const overlaid = 10;
const bars = { firstMs: 300, allMs: 3000, spotMs: 100 };

const middle = (values: readonly number[]): number => values.toSorted((a, b) => a - b)[values.length >> 1];
const longest = (values: readonly number[]): number => Math.max(...values);
const ms = (values: readonly number[]): string => `${middle(values).toFixed(0)} (${longest(values).toFixed(0)})`;

const executablePath = findChromium();
if (!executablePath) throw new Error('there is no Chromium');
const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });
await served(({ address }) => measure(address)).finally(() => browser.close());

async function measure(address: string): Promise<void> {
  await fill(address);
  const sections: string[] = [];
  for (const rate of rates) {
    const how = rate === 1 ? 'as it is' : `slowed down ${rate} times`;
    const open: Open = (path, use) => onPage(rate, address + path, use);
    const ids = (await entriesOf(address)).map(({ cook }) => cook.id);
    sections.push(
      `## Chromium ${browser.version()}, ${how}`,
      await painted(open),
      await fieldAndSpot(open),
      await dragged(open, ids),
    );
  }
  publish('pages', 'Pages', [
    `The built server on the same machine, a page of ${phone.width} x ${phone.height}, each time a browser profile that has seen nothing. Chromium slows down the page's main thread alone, not its workers. Median (longest) of ${times}, ms.`,
    ...sections,
    `When it ended, ${loadavg()[0].toFixed(1)} processes wanted the machine's cores: on a busy machine these times are too long.`,
  ]);
}

/** Ten cooks in the Book, summaries made. */
async function fill(address: string): Promise<void> {
  for (let number = 0; number < overlaid; number++) {
    const headers = { 'content-type': 'application/x-ndjson' };
    const answer = await fetch(`${address}api/cooks/import`, { method: 'POST', headers, body: cookOnAPan(number + 1) });
    if (!answer.ok) throw new Error(await answer.text());
  }
  while ((await entriesOf(address)).some(({ due }) => due)) await new Promise((resolve) => setTimeout(resolve, 500));
}

async function entriesOf(address: string): Promise<readonly Pick<BookEntry, 'cook' | 'due'>[]> {
  const answer = await fetch(`${address}api/book?limit=100`);
  return ((await answer.json()) as { entries: BookEntry[] }).entries;
}

type Open = <T>(path: string, use: (page: Page) => Promise<T>) => Promise<T>;

/** A page of a profile of its own, slowed down. */
async function onPage<T>(rate: number, url: string, use: (page: Page) => Promise<T>): Promise<T> {
  const context = await browser.newContext({ viewport: phone, hasTouch: true });
  try {
    const page = await context.newPage();
    const devtools = await context.newCDPSession(page);
    await devtools.send('Emulation.setCPUThrottlingRate', { rate });
    await page.goto(url);
    return await use(page);
  } finally {
    await context.close();
  }
}

async function painted(open: Open): Promise<string> {
  const rows: string[][] = [];
  for (const place of places) {
    const first: number[] = [];
    const largest: number[] = [];
    for (let time = 0; time < times; time++) {
      const found = await open(place, async (page) => {
        // A page that follows a stream is never done loading.
        await page.waitForTimeout(settleMs);
        return page.evaluate(largestPaint);
      });
      first.push(found.first);
      largest.push(found.largest);
    }
    rows.push([`/${place}`, ms(first), ms(largest)]);
  }
  return table(['page', 'first contentful paint', 'largest contentful paint'], rows);
}

function largestPaint(): Promise<{ first: number; largest: number }> {
  const [{ startTime: first } = { startTime: Number.NaN }] = performance.getEntriesByName('first-contentful-paint');
  return new Promise((resolve) => {
    new PerformanceObserver((list) => {
      const largest = list.getEntries().at(-1)?.startTime ?? Number.NaN;
      resolve({ first, largest });
    }).observe({ type: 'largest-contentful-paint', buffered: true });
  });
}

async function fieldAndSpot(open: Open): Promise<string> {
  const opening: FieldTimes = { first: [], all: [] };
  const anew: FieldTimes = { first: [], all: [] };
  const spot: number[] = [];
  for (let time = 0; time < times; time++) {
    await open('', async (page) => {
      await page.locator('.field-ground').scrollIntoViewIfNeeded();
      await fieldTimes(page, opening);
      spot.push(await page.evaluate(spotAnswer));
      await page.evaluate(() => performance.clearMeasures());
      await page.getByRole('radio', { name: /^Bright/ }).check();
      await fieldTimes(page, anew);
    });
  }
  const kept = (values: readonly number[], bar: number) => (middle(values) <= bar ? 'kept' : 'missed');
  return table(
    ['the Desk’s field of 48 x 32', 'ms', 'bar, ms', ''],
    [
      [
        'as the page opens: to its first paint',
        ms(opening.first),
        String(bars.firstMs),
        kept(opening.first, bars.firstMs),
      ],
      ['as the page opens: to all of it', ms(opening.all), String(bars.allMs), kept(opening.all, bars.allMs)],
      ['after a change: to its first paint', ms(anew.first), String(bars.firstMs), kept(anew.first, bars.firstMs)],
      ['after a change: to all of it', ms(anew.all), String(bars.allMs), kept(anew.all, bars.allMs)],
      ['from a tap on a spot to its readout painted', ms(spot), String(bars.spotMs), kept(spot, bars.spotMs)],
    ],
  );
}

interface FieldTimes {
  readonly first: number[];
  readonly all: number[];
}

/** From its being asked for, once its band is there too and the page has come to rest. */
async function fieldTimes(page: Page, { first, all }: FieldTimes): Promise<void> {
  const measured = async (name: string) => {
    await page.waitForFunction((wanted) => performance.getEntriesByName(wanted).length > 0, name);
    return page.evaluate((wanted) => performance.getEntriesByName(wanted)[0].duration, name);
  };
  await measured('field with its band');
  first.push(await measured('first paint of the field'));
  all.push(await measured('all of the field'));
}

/** From a click on the field until the frame in which the readout says what the spot makes has been drawn. */
function spotAnswer(): Promise<number> {
  const ground = document.querySelector('.field-ground') as HTMLElement;
  const readout = document.querySelector('.field-readout') as HTMLElement;
  const { left, top, width, height } = ground.getBoundingClientRect();
  return new Promise((resolve) => {
    const observer = new MutationObserver(() => {
      observer.disconnect();
      requestAnimationFrame(() => setTimeout(() => resolve(performance.now() - begun)));
    });
    observer.observe(readout, { subtree: true, childList: true, characterData: true });
    const begun = performance.now();
    const at = { clientX: left + 0.2 * width, clientY: top + 0.4 * height, bubbles: true };
    ground.dispatchEvent(new MouseEvent('click', at));
  });
}

async function dragged(open: Open, ids: readonly string[]): Promise<string> {
  return open(`book/over?cooks=${ids.join()}`, async (page) => {
    await page
      .locator('.over-line')
      .nth(overlaid - 1)
      .waitFor();
    for (let larger = 0; larger < 3; larger++) await page.getByRole('button', { name: 'Larger' }).click();
    const gaps = await page.evaluate(frameGaps);
    const share = gaps.filter((gap) => gap < 1.5 * (1000 / 60)).length / gaps.length;
    return `Ten cooks laid over one another and dragged for two seconds: ${(1000 / (gaps.reduce((sum, gap) => sum + gap, 0) / gaps.length)).toFixed(0)} frames a second, ${(100 * share).toFixed(0)} % of them on time, the longest after ${longest(gaps).toFixed(0)} ms. The bar: 60 a second.`;
  });
}

/** Times between frames while the picture is dragged to and fro, ms. */
function frameGaps(): Promise<number[]> {
  const frame = document.querySelector('.over-frame') as HTMLElement;
  const { left, top, width } = frame.getBoundingClientRect();
  const event = (type: string, share: number) =>
    frame.dispatchEvent(
      new PointerEvent(type, { pointerId: 1, clientX: left + share * width, clientY: top + 50, bubbles: true }),
    );
  frame.setPointerCapture = () => undefined;
  event('pointerdown', 0.8);
  const gaps: number[] = [];
  return new Promise((resolve) => {
    const begun = performance.now();
    let before: number | undefined;
    const next = (now: number) => {
      if (before !== undefined) gaps.push(now - before);
      before = now;
      event('pointermove', 0.5 + 0.4 * Math.cos((now - begun) / 200));
      if (now - begun < 2000) requestAnimationFrame(next);
      else resolve(gaps);
    };
    requestAnimationFrame(next);
  });
}
