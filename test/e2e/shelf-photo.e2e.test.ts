// Colour from a picture in a real browser: rendered pictures of known dilutions are uploaded, read, refused, and taught from.
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { rendered, sceneCamera } from '../../bench/measure/renderedPhoto.ts';
import { ratingEbc } from '../../src/core/colour/rating.ts';
import { normalNumbers } from '../../src/core/reactions/normal.ts';
import { objections } from './objections.ts';
import { field, noBrowser, pages, says, seen } from './openPage.ts';

const camera = sceneCamera(normalNumbers(401), false);

/** A picture as a phone would give it: each pixel of the rendered scene five across and down, JPEG. */
async function photographed(page: Page, a430Path: number, seed: number): Promise<Buffer> {
  const { width, height, data } = rendered(camera, { a430Path, hueIndex: 6, exposure: 0.75 }, normalNumbers(seed));
  // The scene's pixels have no say on what is seen through them.
  const opaque = Uint8ClampedArray.from(data, (byte, at) => (at % 4 === 3 ? 255 : byte));
  const rgba = Buffer.from(opaque).toString('base64');
  const jpeg = await page.evaluate(
    ({ width, height, rgba }) => {
      const small = new OffscreenCanvas(width, height);
      const bytes = Uint8ClampedArray.from(atob(rgba), (each) => each.charCodeAt(0));
      small.getContext('2d')?.putImageData(new ImageData(bytes, width, height), 0, 0);
      const large = document.createElement('canvas');
      large.width = 5 * width;
      large.height = 5 * height;
      const context = large.getContext('2d');
      if (context) context.imageSmoothingEnabled = false;
      context?.drawImage(small, 0, 0, large.width, large.height);
      return large.toDataURL('image/jpeg', 0.92).split(',')[1] ?? '';
    },
    { width, height, rgba },
  );
  return Buffer.from(jpeg, 'base64');
}

async function show(page: Page, a430Path: number, seed: number): Promise<void> {
  const buffer = telling(await photographed(page, a430Path, seed));
  expect(tells(buffer.toString('latin1'))).toEqual(['Exif', maker, Buffer.from(place).toString('latin1')]);
  await page
    .getByLabel(/^Choose (a picture|another one)$/)
    .setInputFiles({ name: 'glasses.jpg', mimeType: 'image/jpeg', buffer });
}

/** What phones write into a picture besides it: who made them, and where it was taken. */
const maker = 'Tattle Phones';
const place = [51, 1, 4, 1, 2999, 100].flatMap((part) => [part & 255, part >> 8, 0, 0]);

/** The same JPEG with an Exif segment (CIPA DC-008: a TIFF of its own in APP1): the maker, and the place it points to. */
function telling(jpeg: Buffer): Buffer {
  const entry = (tag: number, type: number, count: number, value: number): Buffer => {
    const bytes = Buffer.alloc(12);
    bytes.writeUInt16LE(tag, 0);
    bytes.writeUInt16LE(type, 2);
    bytes.writeUInt32LE(count, 4);
    bytes.writeUInt32LE(value, 8);
    return bytes;
  };
  const directory = (...entries: Buffer[]) =>
    Buffer.concat([Buffer.from([entries.length, 0]), ...entries, Buffer.alloc(4)]);
  const [ascii, long, rational] = [2, 4, 5];
  const [gpsAt, textAt, placeAt] = [38, 68, 68 + maker.length + 1];
  const tiff = Buffer.concat([
    Buffer.from([0x49, 0x49, 42, 0, 8, 0, 0, 0]),
    directory(entry(0x010f, ascii, maker.length + 1, textAt), entry(0x8825, long, 1, gpsAt)),
    directory(entry(1, ascii, 2, 'N'.charCodeAt(0)), entry(2, rational, 3, placeAt)),
    Buffer.from(`${maker}\0`),
    Buffer.from(place),
  ]);
  const segment = Buffer.concat([Buffer.from('\0\0Exif\0\0', 'latin1'), tiff]);
  segment.writeUInt16BE(segment.length, 0);
  return Buffer.concat([jpeg.subarray(0, 2), Buffer.from([0xff, 0xe1]), segment, jpeg.subarray(2)]);
}

/** What no picture may leave behind: of its file all but the figures read from it. */
const told = ['Exif', maker, 'glasses.jpg', Buffer.from(place).toString('latin1')];
const tells = (of: string) => told.filter((each) => of.includes(each));

/** `31 EBC 24 to 40, 9 in 10` */
async function range(page: Page): Promise<{ low: number; high: number }> {
  await says(page, '.photo-answer', /EBC[\s\S]* to [\s\S]*9 in 10/);
  const [, low, high] = /EBC\s+([\d.]+) to ([\d.]+), 9 in 10/.exec(await seen(page, '.photo-answer')) ?? [];
  return { low: Number(low), high: Number(high) };
}

describe.skipIf(noBrowser)('colour from a picture', () => {
  const open = pages();

  it('holds the truth, refuses what is too dark, and is narrower once the phone was taught', async () => {
    const { page, complaints } = await open({ at: 'shelf/new', viewport: { width: 360, height: 780 }, hasTouch: true });
    const sent: string[] = [];
    page.on('request', (request) =>
      sent.push(`${request.url()} ${request.postDataBuffer()?.toString('latin1') ?? ''}`),
    );
    await field(page, 'Name').fill('Pan scrapings');
    await page.getByRole('button', { name: 'Put it on the shelf' }).click();
    await page.getByRole('radio', { name: /^Picture/ }).check();
    await field(page, 'Inner width of the glass').fill('6');

    await show(page, 3, 1);
    await says(page, '.photo-answer', /Sample too dark[\s\S]*Thin it \d+ fold: 10 mL of it, made up to/);
    expect(await page.getByRole('button', { name: 'Keep this measurement' }).isDisabled()).toBe(true);
    await page.getByRole('button', { name: 'I made it so' }).click();
    expect(Number((await field(page, 'Thinned again').inputValue()).split(' ')[0])).toBeGreaterThan(2);
    await field(page, 'Thinned again').fill('1');

    // 1 g in 100 mL, 6 cm wide; what the sugar's solids are is read from the page's own figure.
    const water = Number(/Water\s+([\d.]+) %/.exec(await seen(page, '.figures'))?.[1]);
    const truth = (a430Path: number) => ratingEbc(a430Path / (6 * 10 * (1 - water / 100)), 'tenPercentByWeight');
    await show(page, 0.45, 2);
    const alone = await range(page);
    expect(alone.low).toBeLessThanOrEqual(truth(0.45));
    expect(alone.high).toBeGreaterThanOrEqual(truth(0.45));

    await page.getByText('Teach the phone', { exact: true }).click();
    await field(page, 'Absorbance at 430 nm of this dilution').fill('0.075');
    await page.getByRole('button', { name: 'Teach it by this picture' }).click();
    await says(page, '.photo-answer', /This picture taught the phone/);
    await says(page, '.photo-teach', /Pan scrapings in daylight/);
    expect(await objections(page, '.measure')).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);

    await show(page, 0.6, 3);
    await says(page, '.photo-answer', /Read with what this phone was taught/);
    const taught = await range(page);
    expect(taught.low).toBeLessThanOrEqual(truth(0.6));
    expect(taught.high).toBeGreaterThanOrEqual(truth(0.6));
    expect(taught.high / taught.low).toBeLessThan(alone.high / alone.low);

    // By keys alone the frame is moved off the dilution, which is seen at once.
    await page.getByRole('button', { name: /^Sample: \d+ % across/ }).focus();
    for (let press = 0; press < 12; press++) await page.keyboard.press('ArrowRight');
    await says(page, '.photo-answer', /Sample uneven/);
    for (let press = 0; press < 12; press++) await page.keyboard.press('ArrowLeft');
    await range(page);
    await page.getByRole('button', { name: 'Keep this measurement' }).click();
    await says(page, '.note-list', /EBC[\s\S]*Picture/);

    // Of the pictures nothing but figures left the page or stayed in it, though each said who made it and where.
    const notes = sent.filter((each) => / .*"method":"photo"/.test(each));
    expect(notes).toHaveLength(1);
    expect(notes[0]?.length).toBeLessThan(1000);
    expect(sent.flatMap(tells)).toEqual([]);
    const stays = await page.evaluate(() => JSON.stringify({ ...localStorage, ...sessionStorage }));
    expect(stays).toContain('Pan scrapings');
    expect(tells(stays)).toEqual([]);
    expect(complaints).toEqual([]);
  });
});
