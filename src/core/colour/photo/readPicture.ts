/** From a picture with its frames to what the dilution absorbs and how dark that makes it, or to why the picture can't tell. */
import type { Frames } from './frames.ts';
import { type Patch, type Picture, patchOf } from './patch.ts';
import { type ChannelAbsorbance, photoAbsorbance, type Seen } from './photoAbsorbance.ts';
import type { PhotoColour, Standard } from './photoColour.ts';
import { pictureColour } from './pictureColour.ts';
import type { LightKind } from './viewer.ts';

export type Refused = Extract<Seen, { readonly kind: 'refused' }>;
export interface Told extends ChannelAbsorbance {
  readonly kind: 'told';
  /** Absorbance at 430 nm over the light's path: nine in ten, and 1 sd of its logarithm. */
  readonly a430Path: PhotoColour['a430Path'];
  readonly within: number;
  readonly taught: boolean;
}
export type PictureRead = Told | Refused;

export function readPicture(
  picture: Picture,
  { sample, white1, white2 }: Frames,
  light: LightKind,
  standards: readonly Standard[],
): PictureRead {
  const whites = [patchOf(picture, white1), patchOf(picture, white2)];
  return readPatches(patchOf(picture, sample), whites, light, standards);
}

/** @param whites one or more */
export function readPatches(
  sample: Patch,
  whites: readonly Patch[],
  light: LightKind,
  standards: readonly Standard[],
): PictureRead {
  const seen = photoAbsorbance(sample, whites);
  if (seen.kind === 'refused') return seen;
  const { absorbance, sd } = seen;
  return { kind: 'told', absorbance, sd, ...pictureColour(seen, light, standards), taught: standards.length > 0 };
}
