/** The least of a PNG: one image of 8-bit colour with alpha, unfiltered rows (W3C Portable Network Graphics, 3rd edition: chunks 5.3, IHDR 11.2.1, filters 9). */
import { crc32, deflateSync } from 'node:zlib';

interface Pixels {
  readonly width: number;
  readonly height: number;
  /** Red, green, blue and alpha of each pixel, row by row from the top. */
  readonly data: Uint8Array;
}

const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
const trueColourWithAlpha = 6;

/** Length, type, data, and a checksum over type and data. */
function chunk(type: string, data: Uint8Array): Buffer {
  const body = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const framed = Buffer.alloc(body.length + 8);
  framed.writeUInt32BE(data.length, 0);
  body.copy(framed, 4);
  framed.writeUInt32BE(crc32(body), body.length + 4);
  return framed;
}

export function png({ width, height, data }: Pixels): Buffer {
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  header[8] = 8;
  header[9] = trueColourWithAlpha;
  const stride = 4 * width;
  // Each row begins with the number of its filter: 0, none.
  const rows = Buffer.alloc(height * (stride + 1));
  for (let row = 0; row < height; row++)
    rows.set(data.subarray(row * stride, (row + 1) * stride), row * (stride + 1) + 1);
  return Buffer.concat([
    signature,
    chunk('IHDR', header),
    chunk('IDAT', deflateSync(rows)),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}
