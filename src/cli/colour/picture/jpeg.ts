/** Pixels of a JPEG as they are stored (ITU T.81, annex B: markers), and the colour profile beside them (ICC.1, annex B.4). */
import { decode } from 'jpeg-js';
import { NoPicture, type Pixels, requireSize } from './pixels.ts';

const startOfScan = 0xda;
const endOfImage = 0xd9;
const withProfile = 0xe2;
/** What the decoder may hold at once, MB: one picture of 56 million pixels took 1.2 GB in all. */
const mostMemory = 2048;

export function jpegPixels(file: Buffer): Pixels {
  const segments = segmentsOf(file);
  const frame = segments.find(({ marker }) => isFrame(marker))?.body;
  if (frame === undefined || frame.length < 6) throw new NoPicture('is a JPEG without a header');
  requireSize(frame.readUInt16BE(3), frame.readUInt16BE(1));
  if (frame[5] !== 3) throw new NoPicture('is a JPEG in grey or of four inks; allowed: three channels');
  const { width, height, data } = decoded(file);
  return { width, height, data, profile: profileIn(segments) };
}

interface Segment {
  readonly marker: number;
  readonly body: Buffer;
}

/** All that stands before the first scan. */
function segmentsOf(file: Buffer): Segment[] {
  const segments: Segment[] = [];
  for (let at = 2; at + 4 <= file.length && file[at] === 0xff; ) {
    const marker = file[at + 1] ?? 0;
    if (marker === startOfScan || marker === endOfImage) break;
    const end = at + 2 + file.readUInt16BE(at + 2);
    segments.push({ marker, body: file.subarray(at + 4, end) });
    at = end;
  }
  return segments;
}

/** Start of a frame of any process; three numbers among them are tables. */
function isFrame(marker: number): boolean {
  return marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);
}

function decoded(file: Buffer) {
  try {
    return decode(file, { useTArray: true, tolerantDecoding: false, maxMemoryUsageInMB: mostMemory });
  } catch (error) {
    throw new NoPicture(`is a JPEG that can't be read (${error instanceof Error ? error.message : error})`);
  }
}

/** Parts of it are numbered, since a segment holds 64 kB. */
function profileIn(segments: readonly Segment[]): Buffer | undefined {
  const name = 'ICC_PROFILE\0';
  const parts = segments
    .filter(({ marker, body }) => marker === withProfile && body.toString('latin1', 0, name.length) === name)
    .map(({ body }) => body)
    .sort((a, b) => (a[name.length] ?? 0) - (b[name.length] ?? 0));
  return parts.length === 0 ? undefined : Buffer.concat(parts.map((body) => body.subarray(name.length + 2)));
}
