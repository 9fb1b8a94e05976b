import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { encode } from 'jpeg-js';
import { afterAll, describe, expect, test } from 'vitest';
import { regions, rendered, type Scene, sceneCamera } from '../../bench/measure/renderedPhoto.ts';
import { umberpan } from '../../test/runProgram.ts';
import { ratingA430 } from '../core/colour/rating.ts';
import { ebcFromA430 } from '../core/colour/scales.ts';
import { normalNumbers } from '../core/reactions/normal.ts';
import { png } from './field/png.ts';

async function document(line: string) {
  const { code, stdout, stderr } = await umberpan(`colour ${line} --json`);
  expect([code, stderr]).toEqual([0, '']);
  return JSON.parse(stdout);
}

describe('umberpan colour', { timeout: 60_000 }, () => {
  test('1 g in 100 mL of 0.420 is 0.0420 L/(g cm): EBC 109 at 10 % w/w (definition: 25 x 0.042 x 103.8)', async () => {
    const { specific430, ebc, srm, icumsa } = await document('--a430 0.42 --sugar 1g --made-up-to 100mL');
    expect(specific430.mid).toBeCloseTo(0.042, 9);
    expect(ebc.mid).toBeCloseTo(109.0, 1);
    expect(ebc.low).toBeLessThan(107);
    expect(ebc.high).toBeGreaterThan(111);
    expect(ebc.mid / srm.mid).toBeCloseTo(25 / 12.7, 9);
    // EBC is 0.0022 of the ICUMSA colour at 10 % w/v, within 3 % (ratio of 420 to 430 nm).
    expect((0.963 * ebc.mid) / icumsa.mid / 0.0022).toBeGreaterThan(0.97);
    expect((0.963 * ebc.mid) / icumsa.mid / 0.0022).toBeLessThan(1.03);
  });

  test('water in the sugar, a longer path and another thinning are reckoned away', async () => {
    const [plain, other] = await Promise.all([
      document('--a430 0.42 --sugar 1g --made-up-to 100mL'),
      document('--a430 0.42 --sugar 5g --made-up-to 250mL --path 2cm --fold 3 --solids 75'),
    ]);
    expect(other.specific430.mid).toBeCloseTo(plain.specific430.mid, 9);
  });

  test('scales lead back to each other', async () => {
    const { srm, icumsa } = await document('--ebc 210');
    expect((await document(`--srm ${srm.mid}`)).ebc.mid).toBeCloseTo(210, 6);
    expect((await document(`--icumsa ${icumsa.mid}`)).ebc.mid / 210).toBeCloseTo(1, 2);
  });

  test('says it in words', async () => {
    const { code, stdout } = await umberpan('colour --a420 0.61 --sugar 2g --made-up-to 100mL --fold 10');
    expect(code).toBe(0);
    expect(stdout).toMatch(/EBC +\d+ \(\d+ to \d+\)/);
    expect(stdout.split('\n').filter((line) => line.length > 90)).toEqual([]);
  });

  test.each([
    ['', '--a430'],
    ['--a430 1 --ebc 3', '--a430'],
    ['--a430 0.4 --sugar 1g', '--made-up-to'],
    ['--ebc 4 --sugar 1g --made-up-to 100mL', '--sugar'],
    ['--a430 3.5 --sugar 1g --made-up-to 100mL', '--a430'],
    ['--a430 dark', '--a430'],
  ])('colour %s is refused over %s', async (line, field) => {
    const { code, stderr } = await umberpan(`colour ${line} --json`);
    expect(code).toBe(2);
    expect(JSON.parse(stderr).error.field).toBe(field);
  });
});

const folder = mkdtempSync(join(tmpdir(), 'umberpan-'));
afterAll(() => rmSync(folder, { recursive: true }));

const [sample, white1, white2] = [regions.sample, ...regions.whites].map(
  ({ left, top, width, height }) => `${left},${top},${width},${height}`,
);
const placed = `--sample ${sample} --white ${white1} --white ${white2}`;
const made = '--sugar 1g --made-up-to 100mL --fold 2 --path 5cm';
const plain: Scene = { a430Path: 0.45, hueIndex: 6, exposure: 0.75 };

function pictured(scene: Partial<Scene>, tint: readonly [number, number, number] = [1, 1, 1]) {
  const { data, ...size } = rendered(sceneCamera(normalNumbers(401), false), { ...plain, ...scene }, normalNumbers(7));
  return { ...size, data: Uint8Array.from(data, (byte, at) => byte * (tint[at % 4] ?? 1)) };
}

function file(name: string, content: Uint8Array | string): string {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
}

const jpeg = (name: string, ...of: Parameters<typeof pictured>) => file(name, encode(pictured(...of), 95).data);

const pngBytes = ({ width, height, data }: ReturnType<typeof pictured>): Buffer => png({ width, height, data });

async function refused(line: string) {
  const { code, stdout, stderr } = await umberpan(`colour ${line} --json`);
  expect([code, stdout]).toEqual([2, '']);
  return JSON.parse(stderr).error;
}

describe('umberpan colour --photo', { timeout: 60_000 }, () => {
  // What the scene was rendered of: A430 0.45 over 5 cm of 1 g in 100 mL, thinned twice (5 g/L).
  const truth = ebcFromA430(ratingA430(0.45 / (5 * 5), 'tenPercentByWeight'));

  test('a good picture comes to its colour within the range, which is as wide as any phone makes it', async () => {
    const { ebc, photo } = await document(`--photo ${jpeg('good.jpg', {})} ${placed} ${made}`);
    expect(photo.ebc.low).toBeLessThan(truth);
    expect(photo.ebc.high).toBeGreaterThan(truth);
    expect(photo.ebc.high / photo.ebc.low).toBeGreaterThan(1.5);
    expect(photo.ebc.high / photo.ebc.low).toBeLessThan(2.6);
    expect(ebc.mid).toBe(photo.ebc.mid);
    expect([ebc.low > photo.ebc.low, ebc.high < photo.ebc.high]).toEqual([true, true]);
  });

  test('the same picture as a PNG comes to the same colour, within what JPEG loses', async () => {
    const ofJpeg = await document(`--photo ${jpeg('same.jpg', {})} ${placed} ${made}`);
    const ofPng = await document(`--photo ${file('same.png', pngBytes(pictured({})))} ${placed} ${made}`);
    // JPEG moves an absorbance by a hundredth or so; what is drawn of phones is the same for both.
    for (const mark of ['low', 'mid', 'high'] as const) {
      expect(Math.abs(Math.log(ofPng.photo.ebc[mark] / ofJpeg.photo.ebc[mark]))).toBeLessThan(0.05);
    }
  });

  test('regions that nobody told are found, and said; where they are not found, that is said', async () => {
    const { ebc, photo } = await document(`--photo ${jpeg('find.jpg', {})} ${made}`);
    expect(photo.ebc.low).toBeLessThan(truth);
    expect(photo.ebc.high).toBeGreaterThan(truth);
    const { sample: inGlass, whites } = photo.regions;
    // The dilution is drawn from the 68th column to the 123rd.
    expect(inGlass.left).toBeGreaterThanOrEqual(68);
    expect(inGlass.left + inGlass.width).toBeLessThanOrEqual(124);
    expect([whites[0].left + whites[0].width <= 68, whites[1].left >= 124]).toEqual([true, true]);
    const { stdout } = await umberpan(`colour --photo ${jpeg('find.jpg', {})} ${made}`);
    const [, again = ''] = /Found and read: (--sample .*?)\. Where/.exec(stdout) ?? [];
    expect((await document(`--photo ${jpeg('find.jpg', {})} ${again} ${made}`)).ebc.mid).toBe(ebc.mid);
    const grey = new Uint8Array(4 * 200 * 100).fill(200);
    const plainGrey = file('grey.jpg', encode({ width: 200, height: 100, data: grey }, 95).data);
    expect((await refused(`--photo ${plainGrey} ${made}`)).message).toMatch(/no dilution.*--sample and --white/);
  });

  test('says it in words, with the range that holds nine times in ten', async () => {
    const { code, stdout } = await umberpan(`colour --photo ${jpeg('words.jpg', {})} ${placed} ${made}`);
    expect(code).toBe(0);
    expect(stdout).toMatch(/in brackets: 9 in 10/);
    expect(stdout).toMatch(/EBC +[\d.]+ \([\d.]+ to [\d.]+\)/);
    expect(stdout).toMatch(/Any phone in daylight/);
  });

  test.each([
    ['clipped', { exposure: 1.2 }, undefined, /white clipped: .*a little darker/],
    ['too dark', { a430Path: 3 }, undefined, /Thin it \d+ fold: 10 mL of it, made up to \d+ mL.*--fold \d+\./],
    // Thinned twice, and still to be 15 times as strong: without that, with more sugar.
    ['too pale', { a430Path: 0.03 }, undefined, /Make it \d+ times as strong: 5 g of the sugar.*--sugar 5g/],
    ['tinted', {}, [1, 1, 0.75], /white tinted: .*white balance/],
  ] as const)('a picture that is %s is refused, with the reason', async (name, scene, tint, why) => {
    const { field, message } = await refused(`--photo ${jpeg(`${name[0]}.jpg`, scene, tint)} ${placed} ${made}`);
    expect(field).toBe('--photo');
    expect(message).toMatch(why);
  });

  test('a region over an edge of the glass is refused as uneven', async () => {
    const regionsOverEdge = `--sample 50,24,40,48 --white ${white1}`;
    const { message } = await refused(`--photo ${jpeg('edge.jpg', {})} ${regionsOverEdge} ${made}`);
    expect(message).toMatch(/sample uneven/);
  });

  const whole = encode(pictured({}), 95).data;
  const huge = pngBytes(pictured({}));
  huge.writeUInt32BE(60_000, 16);
  huge.writeUInt32BE(60_000, 20);
  const hugeJpeg = Buffer.from(whole);
  hugeJpeg.writeUInt32BE(0xffffffff, hugeJpeg.indexOf(Buffer.from([0xff, 0xc0])) + 5);
  const swollen = png({ width: 4000, height: 4000, data: new Uint8Array(4 * 4000 * 4000) });
  swollen.writeUInt32BE(100, 16);
  swollen.writeUInt32BE(100, 20);
  test.each([
    ['text', 'not a picture', /is no JPEG and no PNG/],
    ['a JPEG that breaks off', whole.subarray(0, whole.length / 2), /can't be read/],
    ['a PNG that breaks off', pngBytes(pictured({})).subarray(0, 900), /broken|breaks off/],
    ['a PNG that claims 3600 million pixels', huge, /60000 × 60000 pixels; allowed is 64 million/],
    ['a JPEG that claims 4295 million pixels', hugeJpeg, /65535 × 65535 pixels; allowed is 64 million/],
    ['a PNG that swells beyond its header', swollen, /more than its header says/],
  ])('%s is refused', async (name, content, why) => {
    const { field, message } = await refused(`--photo ${file(name.replaceAll(' ', '-'), content)} ${placed} ${made}`);
    expect(field).toBe('--photo');
    expect(message).toMatch(why);
  });

  test.each([
    [`--sample ${sample}`, '--white'],
    [`--white ${white1}`, '--sample'],
    [`--sample 10,10,5,5 --white ${white1}`, '--sample'],
    [`--sample ${sample} --white 180,0,40,40`, '--white'],
    [`--sample 1,2,3 --white ${white1}`, '--sample'],
    [`${placed} --ebc 3`, '--a430'],
  ])('a picture with %s is refused over %s', async (line, field) => {
    expect((await refused(`--photo ${jpeg('good.jpg', {})} ${line} ${made}`)).field).toBe(field);
  });

  test('the way of the light through the liquid has to be told, and regions are of a picture alone', async () => {
    const line = `--photo ${jpeg('good.jpg', {})} ${placed} --sugar 1g --made-up-to 100mL`;
    expect((await refused(line)).field).toBe('--path');
    expect((await refused(`--ebc 3 --sample ${sample}`)).field).toBe('--sample');
  });
});
