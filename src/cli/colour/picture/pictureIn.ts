/** A picture out of a JPEG or PNG file, its pixels as they are stored: a note in it on which way is up is left aside. */
import { readFileSync, statSync } from 'node:fs';
import { type Patch, patchOf, type Region } from '../../../core/colour/photo/patch.ts';
import { cutOut } from './cutOut.ts';
import { jpegPixels } from './jpeg.ts';
import { NoPicture, type Pixels } from './pixels.ts';
import { pngPixels } from './png.ts';
import { inSrgb, spaceOf } from './profile.ts';

/** Bytes of a file at most. */
const longest = 200e6;
const kinds: readonly { readonly begins: string; readonly pixels: (file: Buffer) => Pixels }[] = [
  { begins: '\xff\xd8\xff', pixels: jpegPixels },
  { begins: '\x89PNG\r\n\x1a\n', pixels: pngPixels },
];

/**
 * @returns what a region of it holds; that throws RangeError when it is too small or not within the picture
 * @throws NoPicture
 */
export function pictureIn(path: string): (region: Region) => Patch {
  const file = bytesOf(path);
  const kind = kinds.find(({ begins }) => file.toString('latin1', 0, begins.length) === begins);
  if (!kind) throw new NoPicture('is no JPEG and no PNG');
  const picture = kind.pixels(file);
  const space = spaceOf(picture.profile);
  return (region) => {
    const part = inSrgb(cutOut(picture, region), space);
    return patchOf(part, { ...part, left: 0, top: 0 });
  };
}

function bytesOf(path: string): Buffer {
  try {
    if (statSync(path).size > longest) throw new NoPicture(`is larger than ${longest / 1e6} MB`);
    return readFileSync(path);
  } catch (error) {
    if (error instanceof NoPicture) throw error;
    throw new NoPicture(`can't be read (${(error as NodeJS.ErrnoException).code ?? error})`);
  }
}
