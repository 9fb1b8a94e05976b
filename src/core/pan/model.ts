/** All uncertain numbers of the model for a kit, and values of them: the centre, or a draw. */
import { type Parameters, valuesOf } from '../reactions/parameter.ts';
import { reactionParameters } from '../reactions/parameters.ts';
import type { Kit } from './kit.ts';
import { kitParameters } from './kitParameters.ts';
import type { ModelParameter, ModelValues } from './physics.ts';

export function modelParameters(kit: Kit): Parameters<ModelParameter> {
  return { ...reactionParameters, ...kitParameters(kit) };
}

/** The centre of every spread. */
export function centralValues(kit: Kit): ModelValues {
  return valuesOf(modelParameters(kit));
}

/** One draw from every spread; `normal` gives independent standard normal numbers. */
export function drawnValues(kit: Kit, normal: () => number): ModelValues {
  return valuesOf(modelParameters(kit), normal);
}
