/** A picture out of a JPEG or PNG file, its pixels as they are stored: a note in it on which way is up is left aside. */
import { readFileSync, statSync } from 'node:fs';
import { type Guess, guessedFrames } from '../../../core/colour/photo/guessedFrames.ts';
import { type Patch, patchOf, type Region } from '../../../core/colour/photo/patch.ts';
import { cutOut } from './cutOut.ts';
import { jpegPixels } from './jpeg.ts';
import { NoPicture, type Pixels } from './pixels.ts';
import { pngPixels } from './png.ts';
import { inSrgb, spaceOf } from './profile.ts';

/** Bytes of a file at most. */
const longest = 200e6;
const kinds: readonly { readonly begins: string; readonly pixels: (file: Buffer) => Pixels | Promise<Pixels> }[] = [
  { begins: '\xff\xd8\xff', pixels: jpegPixels },
  { begins: '\x89PNG\r\n\x1a\n', pixels: pngPixels },
];

export interface OpenPicture {
  /** @throws RangeError when the region is too small or not within the picture */
  patch(region: Region): Patch;
  /** Where the dilution and the white beside it may be. */
  guess(): Guess;
}

/** @throws NoPicture */
export async function pictureIn(path: string): Promise<OpenPicture> {
  const file = bytesOf(path);
  const kind = kinds.find(({ begins }) => file.toString('latin1', 0, begins.length) === begins);
  if (!kind) throw new NoPicture('is no JPEG and no PNG');
  const picture = await kind.pixels(file);
  const space = spaceOf(picture.profile);
  return {
    patch(region) {
      const part = inSrgb(cutOut(picture, region), space);
      return patchOf(part, { ...part, left: 0, top: 0 });
    },
    guess: () => guessedFrames(picture),
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
