/** From a picture with its frames to what the dilution absorbs and how dark that makes it, or to why the picture can't tell. */
import { type Picture, patchOf } from '../../../../../core/colour/photo/patch.ts';
import {
  type ChannelAbsorbance,
  photoAbsorbance,
  type Seen,
} from '../../../../../core/colour/photo/photoAbsorbance.ts';
import type { Standard } from '../../../../../core/colour/photo/photoColour.ts';
import { pictureColour } from '../../../../../core/colour/photo/pictureColour.ts';
import type { LightKind } from '../../../../../core/colour/photo/viewer.ts';
import type { Frames } from './frames.ts';

export type Refused = Extract<Seen, { readonly kind: 'refused' }>;
export interface Told extends ChannelAbsorbance {
  readonly kind: 'told';
  /** Absorbance at 430 nm over the light's path, and 1 sd of its logarithm. */
  readonly a430Path: number;
  readonly within: number;
  readonly taught: boolean;
}
export type PictureRead = Told | Refused;

export function readPicture(
  picture: Picture,
  frames: Frames,
  light: LightKind,
  standards: readonly Standard[],
): PictureRead {
  const whites = [patchOf(picture, frames.white1), patchOf(picture, frames.white2)];
  const seen = photoAbsorbance(patchOf(picture, frames.sample), whites);
  if (seen.kind === 'refused') return seen;
  const { absorbance, sd } = seen;
  const { a430Path, within } = pictureColour(seen, light, standards);
  return { kind: 'told', absorbance, sd, a430Path: a430Path.mid, within, taught: standards.length > 0 };
}
