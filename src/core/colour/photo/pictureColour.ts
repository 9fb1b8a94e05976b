/** What a single picture tells of its dilution's colour. */
import { normalNumbers } from '../../reactions/normal.ts';
import type { ChannelAbsorbance } from './photoAbsorbance.ts';
import { type PhotoColour, photoColour, type Standard } from './photoColour.ts';
import type { LightKind } from './viewer.ts';

/** Standard deviations from the middle of a normal spread to its 95 % mark. */
export const z95 = 1.6448536269514722;
/** The same picture always comes to the same figures. */
const seed = 430;

export interface PictureColour extends Pick<PhotoColour, 'a430Path'> {
  /** 1 sd of the logarithm of the absorbance at 430 nm. */
  readonly within: number;
}

/** @param standards dilutions of known colour by the same phone in the same light; none for any phone */
export function pictureColour(
  { absorbance, sd }: ChannelAbsorbance,
  light: LightKind,
  standards: readonly Standard[],
): PictureColour {
  const { a430Path } = photoColour([{ absorbance, sd, strength: 1 }], standards, light, normalNumbers(seed));
  return { a430Path, within: Math.log(a430Path.high / a430Path.low) / (2 * z95) };
}
