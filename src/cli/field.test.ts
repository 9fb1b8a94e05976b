import { mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { crc32, inflateSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { umberpan } from '../../test/runProgram.ts';
import { pngPixels } from './colour/picture/png.ts';
import { png } from './field/png.ts';

const folder = mkdtempSync(join(tmpdir(), 'umberpan-'));

/** The chunks of a PNG, each with its checksum tried. */
function chunksOf(file: Buffer): Map<string, Buffer> {
  const chunks = new Map<string, Buffer>();
  for (let at = 8; at < file.length; ) {
    const length = file.readUInt32BE(at);
    const data = file.subarray(at + 8, at + 8 + length);
    expect(file.readUInt32BE(at + 8 + length)).toBe(crc32(file.subarray(at + 4, at + 8 + length)));
    chunks.set(file.toString('latin1', at + 4, at + 8), data);
    at += 12 + length;
  }
  return chunks;
}

test('a PNG holds its pixels row by row, each row after a filter byte', () => {
  const data = Uint8Array.from({ length: 16 }, (_, at) => at + 1);
  const file = png({ width: 2, height: 2, data });
  expect([...file.subarray(0, 8)]).toEqual([137, 80, 78, 71, 13, 10, 26, 10]);
  const chunks = chunksOf(file);
  expect([...chunks.keys()]).toEqual(['IHDR', 'IDAT', 'IEND']);
  expect([...(chunks.get('IHDR') ?? [])]).toEqual([0, 0, 0, 2, 0, 0, 0, 2, 8, 6, 0, 0, 0]);
  expect([...inflateSync(chunks.get('IDAT') ?? Buffer.alloc(0))]).toEqual([
    0, 1, 2, 3, 4, 5, 6, 7, 8, 0, 9, 10, 11, 12, 13, 14, 15, 16,
  ]);
});

describe('umberpan field', { timeout: 30_000 }, () => {
  test('prints EBC over both levers, darkest to the right', async () => {
    const { code, stdout, stderr } = await umberpan('field --columns 4 --rows 3');
    expect([code, stderr]).toEqual([0, '']);
    expect(stdout).toContain('dose, g/kg');
    const rows = stdout.split('\n').filter((line) => /^\s*[\d.]+(\s+[\d.]+){4}$/.test(line));
    const table = rows.map((line) => line.trim().split(/\s+/).map(Number));
    expect(table).toHaveLength(3);
    for (const [, ...ebc] of table) expect(ebc).toEqual([...ebc].sort((a, b) => a - b));
  });

  test('as JSON has colour, taste, inversion and time of every sugar', async () => {
    const { stdout } = await umberpan('field --route bright --columns 3 --rows 2 --json');
    const { rows, x, format } = JSON.parse(stdout);
    expect([format, x.lever, rows.length, rows[0].length]).toEqual(['umberpan-field-1', 'alkaliGPerKg', 2, 3]);
    expect(rows[1][2].made).toMatchObject({ taste: { roast: expect.any(Number) }, glass: { r: expect.any(Number) } });
  });

  test('as JSON says how sure each colour is', async () => {
    const { stdout } = await umberpan('field --columns 3 --rows 2 --across-from 4 --across-to 12 --json');
    const [[within, , past]] = JSON.parse(stdout).rows;
    expect(within.a430Range.mid).toBe(within.made.a430);
    expect(within.a430Range.high / within.a430Range.low).toBeGreaterThan(2);
    expect([past.made, past.a430Range]).toEqual([null, null]);
  });

  test('draws the lines of taste, both levers with their units, what the marks mean, and the reach of a limit', async () => {
    const svg = join(folder, 'field.svg');
    expect((await umberpan(`field --columns 12 --rows 6 --svg ${svg}`)).code).toBe(0);
    const drawing = readFileSync(svg, 'utf8');
    const named = (name: string) => drawing.match(new RegExp(`<text class="line"[^>]*>${name} \\d</text>`, 'g'));
    for (const name of ['fruit', 'toffee', 'burnt', 'alkali']) expect(named(name), name).not.toBeNull();
    // No line of roast crosses this field: its span is told.
    expect(named('roast')).toBeNull();
    expect(drawing).toMatch(/>roast \d\.\d to \d\.\d</);
    for (const words of ['Alkali dose, g/kg', 'Browning hold, min', 'past the limit', '45 EBC', 'the colour is unsure'])
      expect(drawing).toContain(words);
  });

  test('a PNG is the same drawing, with its letters, and grained where the colour is unsure', async () => {
    const picture = join(folder, 'field.png');
    expect((await umberpan(`field --columns 6 --rows 4 --png ${picture}`)).code).toBe(0);
    const { width, height, data } = pngPixels(readFileSync(picture));
    expect([width, height]).toEqual([1616, 1376]);
    const at = (x: number, y: number) => [0, 1, 2].map((sample) => data[4 * (y * width + x) + sample]);
    // Along a row in the middle of the field, and along one through the title.
    const row = (y: number, from: number, to: number) =>
      new Set(Array.from({ length: to - from }, (_, x) => at(from + x, y).join()));
    expect(row(500, 500, 600).size).toBeGreaterThan(10);
    const title = Array.from({ length: 20 }, (_, y) => [...row(44 + y, 48, 400)]).flat();
    expect(title.some((paint) => Number(paint.split(',')[0]) < 60)).toBe(true);
  });

  test.each([
    ['--across dose --up dose', 2, 'two different ones'],
    ['--route pale --across dose', 2, 'malt, invert-time'],
    ['--dose 4', 2, 'is a lever'],
    ['--across-to 99', 2, '0.2 to 12'],
    ['--columns 1', 2, '2 to 128'],
    ['--mass 3kg --columns 2 --rows 2', 7, 'LIM-FILL'],
    ['--columns 2 --rows 2 --png /does/not/exist.png', 1, 'ENOENT'],
  ])('%s ends with %i, and says what is allowed', async (line, code, words) => {
    const said = await umberpan(`field ${line}`);
    expect([said.code, said.stdout]).toEqual([code, '']);
    expect(said.stderr).toContain(words);
  });
});
