/** Cooks in one hidden kitchen, one after the other: what is told of each to who wants to learn the kitchen, and what was true. */
import { courseColour } from '../../src/core/colour/courseColour.ts';
import { ratingA430 } from '../../src/core/colour/rating.ts';
import { type Course, waterShare } from '../../src/core/pan/course.ts';
import { drawnValues } from '../../src/core/pan/model.ts';
import type { ModelValues } from '../../src/core/pan/physics.ts';
import { simulate } from '../../src/core/pan/simulate.ts';
import { normalNumbers } from '../../src/core/reactions/normal.ts';
import type { TwinEvent } from '../../src/core/twin/twin.ts';
import { hiddenWidening, noiseC, readEveryS } from './hiddenCook.ts';
import { type Cook, cookOf } from './referenceCook.ts';

/** Five different sugars, and a sixth that is only foretold. */
const requests = [
  {},
  { invertMinutes: 20, brownMinutes: 35 },
  { massKg: 0.5 },
  { invertMinutes: 40, brownMinutes: 20 },
  { massKg: 0.35, brownMinutes: 25 },
  { brownMinutes: 40 },
] as const;
export const cooks: readonly Cook[] = requests.map((request) => cookOf(request));

/** Errors of a colour told by swatches and by a weighed dilution, as logarithms: those that the twin takes. */
const swatchSd = 0.3;
const dilutionSd = 0.11;
const spoonTestEveryS = 900;

export const hiddenValues = (kitchen: number): ModelValues => {
  const normal = normalNumbers(kitchen * 31 + 7);
  return drawnValues(cooks[0].prepared.kit, () => hiddenWidening * normal());
};

export interface Cooked {
  readonly told: readonly TwinEvent[];
  readonly truth: {
    readonly temperatureC: Float64Array;
    readonly waterShare: Float64Array;
    readonly a430: readonly number[];
  };
  readonly course: Course;
}

/** @param values the kitchen's */
export function cookedIn({ prepared, recipe }: Cook, values: ModelValues, seed: number): Cooked {
  const { kit } = prepared;
  const course = simulate(recipe, prepared, values, { normal: normalNumbers(seed * 13) });
  const a430 = [...courseColour(course, values.absorptivity420).specific430].map((e) =>
    ratingA430(e, 'tenPercentByWeight'),
  );
  const noise = normalNumbers(seed * 17 + 1);
  const told: TwinEvent[] = course.deeds
    .filter(({ deed }) => deed.kind !== 'step' && deed.kind !== 'pour')
    .map(({ timeS, deed }) =>
      deed.kind === 'water' && deed.spoonfuls > 0
        ? { timeS, deed: { ...deed, waterKg: deed.spoonfuls * kit.spoonM3 * 1000 } }
        : { timeS, deed },
    );
  const last = course.timeS.length - 1;
  for (let t = readEveryS; t <= last; t += readEveryS) {
    told.push({
      timeS: t,
      observation: { kind: 'reading', valueC: course.readingC[t] + noiseC * noise(), byHand: false },
    });
  }
  const browned = course.steps.find(({ kind }) => kind === 'brown')?.startS ?? last;
  for (let t = Math.ceil(browned) + spoonTestEveryS; t < last; t += spoonTestEveryS) {
    told.push({ timeS: t, observation: { kind: 'spoonColour', a430: a430[t] * Math.exp(swatchSd * noise()) } });
  }
  told.push({
    timeS: last,
    observation: { kind: 'dilutionColour', a430: a430[last] * Math.exp(dilutionSd * noise()) },
  });
  const truth = { temperatureC: course.temperatureC, waterShare: waterShare(course), a430 };
  return { told: told.sort((a, b) => a.timeS - b.timeS), truth, course };
}
