/** All uncertain numbers of the model for a kit, and values of them: the centre, or a draw. */
import { type Parameters, valueAt, valuesOf } from '../reactions/parameter.ts';
import { reactionParameters } from '../reactions/parameters.ts';
import type { Kit } from './kit.ts';
import { kitParameters } from './kitParameters.ts';
import { asLearned, goingTogether } from './learned.ts';
import type { ModelParameter, ModelValues } from './physics.ts';

/** With what was learned of the kit: cooks on it teach of the sugar's reactions, too. */
export function modelParameters(kit: Kit): Parameters<ModelParameter> {
  return { ...asLearned(reactionParameters, kit.learned), ...kitParameters(kit) };
}

/** The centre of every spread. */
export function centralValues(kit: Kit): ModelValues {
  return valuesOf(modelParameters(kit));
}

/** One standard score of each parameter; independent but for what was learned to go together. */
export function drawnScores(kit: Kit, normal: () => number): Readonly<Record<ModelParameter, number>> {
  const scores = {} as Record<ModelParameter, number>;
  for (const name of Object.keys(modelParameters(kit)) as ModelParameter[]) scores[name] = normal();
  return kit.learned ? goingTogether(scores, kit.learned) : scores;
}

/** One draw from every spread; `normal` gives independent standard normal numbers. */
export function drawnValues(kit: Kit, normal: () => number): ModelValues {
  const parameters = modelParameters(kit);
  const values: Record<ModelParameter, number> = { ...drawnScores(kit, normal) };
  for (const name of Object.keys(values) as ModelParameter[]) values[name] = valueAt(parameters[name], values[name]);
  return values;
}
