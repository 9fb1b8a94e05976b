/** What a file's decoder gives, and what it may not exceed. */
import type { Picture } from '../../../core/colour/photo/patch.ts';

export interface Pixels extends Picture {
  /** The colour profile that the file carries, as ICC.1 lays it out. */
  readonly profile: Buffer | undefined;
}

/** A file that can't be read as a picture, in words that follow its name. */
export class NoPicture extends Error {}

/** More than phones take at once: a file that claims more is refused before anything is made room for. */
const mostPixels = 64e6;

export function requireSize(width: number, height: number): void {
  if (width * height === 0) throw new NoPicture('holds no pixels');
  if (width * height > mostPixels)
    throw new NoPicture(`has ${width} × ${height} pixels; allowed is ${mostPixels / 1e6} million of them`);
}
