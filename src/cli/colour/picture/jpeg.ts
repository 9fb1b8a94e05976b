/** Pixels of a JPEG as they are stored (ITU T.81, annex B: markers), and the colour profile beside them (ICC.1, annex B.4). */
import codec from '@cornerstonejs/codec-libjpeg-turbo-8bit/decodewasmjs';
import type { Picture } from '../../../core/colour/photo/patch.ts';
import { NoPicture, type Pixels, requireSize } from './pixels.ts';

const startOfScan = 0xda;
const endOfImage = 0xd9;
const withProfile = 0xe2;
const components = 3;

export async function jpegPixels(file: Buffer): Promise<Pixels> {
  const segments = segmentsOf(file);
  const frame = segments.find(({ marker }) => isFrame(marker))?.body;
  if (frame === undefined || frame.length < 6) throw new NoPicture('is a JPEG without a header');
  requireSize(frame.readUInt16BE(3), frame.readUInt16BE(1));
  if (frame[5] !== components) throw new NoPicture('is a JPEG in grey or of four inks; allowed: three channels');
  return { ...(await decoded(file)), profile: profileIn(segments) };
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

/** The decoder is a machine of its own that has up to 2 GB; what it throws is the number of a place in there. */
async function decoded(file: Buffer): Promise<Picture> {
  const { JPEGDecoder } = await codec();
  const decoder = new JPEGDecoder();
  try {
    decoder.getEncodedBuffer(file.length).set(file);
    decoder.decode();
    const { width, height } = decoder.getFrameInfo();
    return { width, height, data: withAlpha(decoder.getDecodedBuffer(), width * height) };
  } catch {
    throw new NoPicture("is a JPEG that can't be read: it is broken, or breaks off");
  } finally {
    decoder.delete();
  }
}

function withAlpha(rgb: Uint8Array, pixels: number): Uint8Array {
  const rgba = new Uint8Array(4 * pixels).fill(255);
  for (let at = 0; at < pixels; at++)
    for (let channel = 0; channel < components; channel++) rgba[4 * at + channel] = rgb[components * at + channel];
  return rgba;
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
