import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { deflateSync } from 'node:zlib';
import { convertP3ToXyz65, convertRgbToXyz65, convertXyz65ToP3, convertXyz65ToXyz50 } from 'culori/fn';
import { encode } from 'jpeg-js';
import { afterAll, describe, expect, it } from 'vitest';
import { cutOut } from './cutOut.ts';
import { pictureIn } from './pictureIn.ts';
import { pngPixels } from './png.ts';

const folder = mkdtempSync(join(tmpdir(), 'umberpan-'));
afterAll(() => rmSync(folder, { recursive: true }));

function file(content: Uint8Array): string {
  const path = join(folder, 'picture');
  writeFileSync(path, content);
  return path;
}

const side = 32;
const all = { left: 0, top: 0, width: side, height: side };
/** One even colour, channels 0 to 1. */
function jpegOf({ r, g, b }: { readonly r: number; readonly g: number; readonly b: number }, profile?: Buffer): Buffer {
  const data = Buffer.from(Array.from({ length: side * side }, () => [255 * r, 255 * g, 255 * b, 255]).flat());
  const { data: jpeg } = encode({ width: side, height: side, data }, 100);
  if (!profile) return jpeg;
  const body = Buffer.concat([Buffer.from('ICC_PROFILE\0\x01\x01', 'latin1'), profile]);
  const segment = Buffer.from([0xff, 0xe2, 0, body.length + 2]);
  return Buffer.concat([jpeg.subarray(0, 2), segment, body, jpeg.subarray(2)]);
}

/** As much of an ICC profile as tells its space: the columns of its matrix. */
function profileOf(columns: Readonly<Record<string, { readonly x: number; readonly y: number; readonly z: number }>>) {
  const tags = Object.entries(columns);
  const profile = Buffer.alloc(132 + 12 * tags.length + 20 * tags.length);
  profile.writeUInt32BE(tags.length, 128);
  tags.forEach(([tag, { x, y, z }], place) => {
    const data = 132 + 12 * tags.length + 20 * place;
    profile.write(tag, 132 + 12 * place, 'latin1');
    profile.writeUInt32BE(data, 132 + 12 * place + 4);
    profile.writeUInt32BE(20, 132 + 12 * place + 8);
    [x, y, z].forEach((value, at) => {
      profile.writeInt32BE(Math.round(65536 * value), data + 8 + 4 * at);
    });
  });
  return profile;
}

const inD50 = (toXyz: typeof convertP3ToXyz65) =>
  profileOf({
    rXYZ: convertXyz65ToXyz50(toXyz({ r: 1, g: 0, b: 0 })),
    gXYZ: convertXyz65ToXyz50(toXyz({ r: 0, g: 1, b: 0 })),
  });

describe('a colour profile in a JPEG', () => {
  const brown = { r: 0.7, g: 0.5, b: 0.3 };
  const inP3 = convertXyz65ToP3(convertRgbToXyz65(brown));

  it('of Display P3 is heeded: the picture comes to the same bytes as its sRGB', async () => {
    const { bytes } = (await pictureIn(file(jpegOf(inP3, inD50(convertP3ToXyz65))))).patch(all);
    for (const channel of ['r', 'g', 'b'] as const)
      expect(Math.abs(bytes[channel] - 255 * brown[channel])).toBeLessThan(2.5);
    expect(255 * Math.abs(inP3.b - brown.b)).toBeGreaterThan(5);
  });

  it('of sRGB changes nothing', async () => {
    const plain = (await pictureIn(file(jpegOf(brown)))).patch(all);
    const named = await pictureIn(file(jpegOf(brown, inD50(convertRgbToXyz65))));
    expect(named.patch(all)).toEqual(plain);
  });

  it('of another space, or that says nothing, is refused', async () => {
    const wide = profileOf({ rXYZ: { x: 0.61, y: 0.31, z: 0.02 }, gXYZ: { x: 0.21, y: 0.63, z: 0.06 } });
    await expect(pictureIn(file(jpegOf(brown, wide)))).rejects.toThrow(/another profile; allowed: sRGB, Display P3/);
    await expect(pictureIn(file(jpegOf(brown, Buffer.alloc(40))))).rejects.toThrow(/another profile/);
  });
});

describe('a region of a picture', () => {
  const side = 3200;
  const data = new Uint8Array(4 * side * side);
  for (let at = 0; at < side * side; at++)
    data.set(((at % side) + Math.floor(at / side)) % 2 ? [90, 60, 30] : [110, 80, 50], 4 * at);
  const picture = { width: side, height: side, data };

  it('of a large one is averaged to what the page reads', () => {
    const part = cutOut(picture, { left: 200, top: 100, width: 60, height: 50 });
    expect([part.width, part.height]).toEqual([30, 25]);
    expect(Array.from({ length: 4 }, (_, at) => part.data[at])).toEqual([100, 70, 40, 255]);
  });

  it('that would get too small by that is left as it is, and one beyond the edge is refused', () => {
    const part = cutOut(picture, { left: 3175, top: 0, width: 25, height: 20 });
    expect([part.width, part.height, part.data[0]]).toEqual([25, 20, 90]);
    expect(() => cutOut(picture, { left: 3176, top: 0, width: 25, height: 20 })).toThrow(/not within 3200 × 3200/);
  });
});

/** Rows written by one filter each, as the standard defines them: a byte less its prediction. */
function filteredPng(width: number, pixelBytes: number, colour: readonly number[], rows: readonly Uint8Array[]) {
  const written = rows.flatMap((row, y) => {
    const filter = y % 5;
    return [
      filter,
      ...Array.from(row, (byte, at) => {
        const left = row[at - pixelBytes] ?? 0;
        const up = rows[y - 1]?.[at] ?? 0;
        const corner = (at >= pixelBytes && rows[y - 1]?.[at - pixelBytes]) || 0;
        const nearest = [left, up, corner].reduce((best, each) => {
          const off = (value: number) => Math.abs(left + up - corner - value);
          return off(each) < off(best) ? each : best;
        });
        return (byte - ([0, left, up, Math.floor((left + up) / 2), nearest][filter] ?? 0)) & 255;
      }),
    ];
  });
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(rows.length, 4);
  header.set(colour, 8);
  const chunk = (type: string, data: Uint8Array) => {
    const length = Buffer.alloc(4);
    length.writeUInt32BE(data.length);
    return Buffer.concat([length, Buffer.from(type, 'latin1'), data, Buffer.alloc(4)]);
  };
  return Buffer.concat([Buffer.alloc(8), chunk('IHDR', header), chunk('IDAT', deflateSync(Buffer.from(written)))]);
}

describe('a PNG', () => {
  it.each([
    ['8 bits', 3, 1, [8, 2, 0, 0, 0]],
    ['8 bits and alpha', 4, 1, [8, 6, 0, 0, 0]],
    ['16 bits', 6, 2, [16, 2, 0, 0, 0]],
    ['16 bits and alpha', 8, 2, [16, 6, 0, 0, 0]],
  ] as const)('of %s, each row by another filter, gives back its pixels', (_, pixelBytes, sampleBytes, colour) => {
    const [width, height] = [7, 11];
    const rows = Array.from({ length: height }, (_, y) =>
      Uint8Array.from({ length: width * pixelBytes }, (_, at) => (at * at * 31 + y * y * 57 + at * y * 13) % 256),
    );
    const { data } = pngPixels(filteredPng(width, pixelBytes, colour, rows));
    const wanted = rows.flatMap((row) =>
      Array.from({ length: width }, (_, x) => [
        ...[0, 1, 2].map((sample) => row[x * pixelBytes + sample * sampleBytes] ?? 0),
        255,
      ]).flat(),
    );
    expect(Array.from(data)).toEqual(wanted);
  });

  it.each([
    ['grey', [8, 0, 0, 0, 0]],
    ['of a palette', [8, 3, 0, 0, 0]],
    ['interlaced', [8, 2, 0, 0, 1]],
  ])('that is %s is refused', (_, colour) => {
    expect(() => pngPixels(filteredPng(2, 3, colour, [new Uint8Array(6)]))).toThrow(/allowed: red, green and blue/);
  });
});
