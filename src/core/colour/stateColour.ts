/** The colour of a pan's state: from its pigments to specific absorbance and hue index. */
import { dissolvedKg, place } from '../pan/state.ts';
import { expectedHueIndex } from './hueIndex.ts';

export interface PigmentColour {
  /** Absorbance at 430 nm of the dry sugar, L/(g cm). */
  readonly specific430: number;
  readonly hueIndex: number;
}

/**
 * @param pigmentMol all pigment, and `melanoidinMol` what of it came from sugar with amino acids, mol of hexose units
 * @param absorptivity420 molar absorptivity of the pigments at 420 nm, L/(mmol cm)
 */
export function pigmentColour(
  pigmentMol: number,
  melanoidinMol: number,
  dryKg: number,
  absorptivity420: number,
): PigmentColour {
  const specific420 = Math.max(0, (absorptivity420 * pigmentMol) / dryKg);
  const share = pigmentMol > 0 ? Math.min(1, Math.max(0, melanoidinMol / pigmentMol)) : 0;
  // The hue index hardly moves over the 10 nm between the two wavelengths: one round settles it.
  const hueIndex = expectedHueIndex(specific420, share).mean;
  return { specific430: specific420 * 10 ** (-hueIndex / 100), hueIndex };
}

/** Colour of a state of the pan; see `pigmentColour`. */
export function stateColour(y: Float64Array, absorptivity420: number): PigmentColour {
  return pigmentColour(y[place.melanoidin] + y[place.caramel], y[place.melanoidin], dissolvedKg(y), absorptivity420);
}
