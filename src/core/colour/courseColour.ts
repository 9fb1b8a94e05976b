/** The colour of a simulated cook over time: from its pigments to specific absorbance and hue index. */
import { type Course, dryKg, pigmentMol } from '../pan/course.ts';
import { place } from '../pan/state.ts';
import { pigmentColour } from './stateColour.ts';

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
    const colour = pigmentColour(mol, maillard[i], dry[i], absorptivity420);
    hueIndex[i] = colour.hueIndex;
    return colour.specific430;
  });
  return { specific430, hueIndex };
}
