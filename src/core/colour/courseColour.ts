/** The colour of a simulated cook over time: from its pigments to specific absorbance and hue index. */
import { type Course, dryKg, pigmentMol } from '../pan/course.ts';
import { place } from '../pan/state.ts';
import { expectedHueIndex } from './hueIndex.ts';

export interface CourseColour {
  /** Absorbance at 430 nm of the dry sugar, L/(g cm). */
  readonly specific430: Float64Array;
  readonly hueIndex: Float64Array;
}

/**
 * @param absorptivity420 molar absorptivity of the pigments at 420 nm, L/(mmol cm)
 */
export function courseColour(course: Course, absorptivity420: number): CourseColour {
  const pigment = pigmentMol(course);
  const dry = dryKg(course);
  const maillard = course.states[place.melanoidin];
  const hueIndex = new Float64Array(pigment.length);
  const specific430 = pigment.map((mol, i) => {
    const specific420 = (absorptivity420 * mol) / dry[i];
    const share = mol > 0 ? Math.min(1, Math.max(0, maillard[i] / mol)) : 0;
    // The hue index hardly moves over the 10 nm between the two wavelengths: one round settles it.
    const { mean } = expectedHueIndex(Math.max(0, specific420), share);
    hueIndex[i] = mean;
    return Math.max(0, specific420) * 10 ** (-mean / 100);
  });
  return { specific430, hueIndex };
}
