/**
 * One hidden kit cooked by a person with the thermometer alone, and what a twin would be told of it. Every uncertain number is drawn
 * wider than stated, of stove, pan and thermometer and of every reaction: the model's kinetics are wrong for each cook, too.
 */
import type { Course } from '../../src/core/pan/course.ts';
import { drawnValues } from '../../src/core/pan/model.ts';
import type { ModelValues } from '../../src/core/pan/physics.ts';
import { simulate } from '../../src/core/pan/simulate.ts';
import { normalNumbers } from '../../src/core/reactions/normal.ts';
import type { TwinEvent } from '../../src/core/twin/twin.ts';
import type { Cook } from './referenceCook.ts';

/** Hidden numbers are drawn this much wider than their stated spread; readings each 10 s with this noise, C. */
export const hiddenWidening = 1.25;
export const noiseC = 0.4;
export const readEveryS = 10;

export interface HiddenCook {
  readonly course: Course;
  readonly values: ModelValues;
  /** Deeds as the cook notes them (a spoonful as it should be) and readings, in the order of time. */
  readonly told: readonly TwinEvent[];
}

export function hiddenCook({ prepared, recipe }: Cook, seed: number): HiddenCook {
  const { kit } = prepared;
  const normal = normalNumbers(seed * 13);
  const values = drawnValues(kit, () => hiddenWidening * normal());
  const course = simulate(recipe, prepared, values, { normal });
  const noise = normalNumbers(seed * 17 + 1);
  const told: TwinEvent[] = course.deeds
    .filter(({ deed }) => deed.kind !== 'step' && deed.kind !== 'pour')
    .map(({ timeS, deed }) =>
      deed.kind === 'water' && deed.spoonfuls > 0
        ? { timeS, deed: { ...deed, waterKg: deed.spoonfuls * kit.spoonM3 * 1000 } }
        : { timeS, deed },
    );
  for (let t = readEveryS; t < course.timeS.length; t += readEveryS) {
    const valueC = course.readingC[t] + noiseC * noise();
    told.push({ timeS: t, observation: { kind: 'reading', valueC, byHand: false } });
  }
  return { course, values, told: told.sort((a, b) => a.timeS - b.timeS) };
}
