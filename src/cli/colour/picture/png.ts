/** Pixels of a PNG of red, green and blue, with or without alpha (W3C Portable Network Graphics, 3rd edition: chunks 5.3, filters 9). */
import { inflateSync } from 'node:zlib';
import { NoPicture, type Pixels, requireSize } from './pixels.ts';

const firstChunk = 8;
/** Samples of a pixel, by colour type. */
const samplesOf: Readonly<Record<number, number>> = { 2: 3, 6: 4 };
const longestProfile = 4e6;

export function pngPixels(file: Buffer): Pixels {
  const chunks = chunksOf(file);
  const header = chunks.find(({ type }) => type === 'IHDR')?.data;
  if (header?.length !== 13) throw new NoPicture('is a PNG without a header');
  const [width, height] = [header.readUInt32BE(0), header.readUInt32BE(4)];
  requireSize(width, height);
  const [depth = 0, colourType = 0, , , interlaced] = header.subarray(8);
  const samples = samplesOf[colourType];
  if (samples === undefined || depth < 8 || interlaced !== 0)
    throw new NoPicture('is a PNG in grey, of a palette, or interlaced; allowed: red, green and blue, row by row');
  const pixelBytes = (samples * depth) / 8;
  const rowBytes = width * pixelBytes;
  const data = chunks.filter(({ type }) => type === 'IDAT').map((chunk) => chunk.data);
  const rows = inflated(Buffer.concat(data), height * (rowBytes + 1));
  if (rows.length !== height * (rowBytes + 1)) throw new NoPicture('is a PNG that breaks off');
  unfilter(rows, rowBytes, pixelBytes);
  const pixels = new Uint8Array(4 * width * height).fill(255);
  for (let at = 0; at < width * height; at++) {
    const from = Math.floor(at / width) * (rowBytes + 1) + 1 + (at % width) * pixelBytes;
    // Of two bytes the first one counts.
    for (let sample = 0; sample < 3; sample++) pixels[4 * at + sample] = rows[from + (sample * depth) / 8];
  }
  return { width, height, data: pixels, profile: profileIn(chunks) };
}

interface Chunk {
  readonly type: string;
  readonly data: Buffer;
}

function chunksOf(file: Buffer): Chunk[] {
  const chunks: Chunk[] = [];
  for (let at = firstChunk; at + 12 <= file.length; ) {
    const end = at + 8 + file.readUInt32BE(at);
    chunks.push({ type: file.toString('latin1', at + 4, at + 8), data: file.subarray(at + 8, end) });
    at = end + 4;
  }
  return chunks;
}

/** A name, a zero, the way of compression, and the profile. */
function profileIn(chunks: readonly Chunk[]): Buffer | undefined {
  const data = chunks.find(({ type }) => type === 'iCCP')?.data;
  return data && inflated(data.subarray(data.indexOf(0) + 2), longestProfile);
}

/** What grows beyond its room is not unpacked further. */
function inflated(data: Buffer, most: number): Buffer {
  try {
    return inflateSync(data, { maxOutputLength: most });
  } catch {
    throw new NoPicture('is a PNG whose data is broken, or is more than its header says');
  }
}

/** Each row begins with the number of its filter: what a byte was told as a difference from. */
function unfilter(rows: Buffer, rowBytes: number, pixelBytes: number): void {
  for (let start = 0; start < rows.length; start += rowBytes + 1) {
    const filter = rows[start] ?? 0;
    if (filter > 4) throw new NoPicture('is a PNG whose data is broken');
    for (let at = start + 1; filter > 0 && at <= start + rowBytes; at++) {
      const isFirst = at - start <= pixelBytes;
      const left = isFirst ? 0 : rows[at - pixelBytes];
      const up = start === 0 ? 0 : rows[at - rowBytes - 1];
      const upLeft = isFirst || start === 0 ? 0 : rows[at - rowBytes - 1 - pixelBytes];
      rows[at] += predicted(filter, left, up, upLeft);
    }
  }
}

/** The fourth is Paeth's: that neighbour which is nearest to left + up - upLeft. */
function predicted(filter: number, left: number, up: number, upLeft: number): number {
  if (filter === 1) return left;
  if (filter === 2) return up;
  if (filter === 3) return (left + up) >> 1;
  const byLeft = Math.abs(up - upLeft);
  const byUp = Math.abs(left - upLeft);
  const byBoth = Math.abs(left + up - 2 * upLeft);
  if (byLeft <= byUp && byLeft <= byBoth) return left;
  return byUp <= byBoth ? up : upLeft;
}
