/** Runs a cook from the filled pan to the pour. */

import type { Course, Ending, StepSpan } from './course.ts';
import { filledPan } from './deeds.ts';
import type { PersonHabits } from './person.ts';
import { createPan, type ModelValues } from './physics.ts';
import type { PreparedKit } from './preparedKit.ts';
import { createRecorder } from './recorder.ts';
import { createRun } from './run.ts';
import { place } from './state.ts';
import type { Charge, Step, TimedDeed } from './steps.ts';

export interface SimulationOptions {
  /** Standard normal numbers for the scatter of spoonfuls; none: every spoonful is exact. */
  readonly normal?: () => number;
  readonly habits?: PersonHabits;
  /** Distance of the output rows, s. */
  readonly everyS?: number;
  /** Relative error allowed in one step of the integrator. */
  readonly tolerance?: number;
  /** The cook is broken off after this time, s. */
  readonly longestS?: number;
}

/**
 * Keeps every row of the reference cook within 4e-5 of a tight reference, and draws of all parameters within about 1e-4
 * (bench/results/simulate.md).
 */
const defaultTolerance = 3e-5;
/** The rows between two points are read from slopes, and in longer steps the stiff ones (boiling) would show too much of the error. */
const longestStepS = 20;

interface Recipe {
  readonly charge: Charge;
  readonly steps: readonly Step[];
}

/**
 * Simulates a cook.
 *
 * @param recipe what is in the pan and the steps to follow
 * @param prepared the kit, tabulated by `prepareKit`
 * @param values one value of each model parameter
 * @returns the course with a row each `everyS` seconds (1 s unless asked otherwise)
 */
export function simulate(
  recipe: Recipe,
  prepared: PreparedKit,
  values: ModelValues,
  options: SimulationOptions = {},
): Course {
  const { everyS = 1, longestS = 6 * 3600, tolerance = defaultTolerance, normal, habits } = options;
  const { kit } = prepared;
  const pan = createPan(prepared, values);
  const recorder = createRecorder();
  let hottestC = kit.roomC;
  const run = createRun({
    pan,
    kit,
    y: filledPan(recipe.charge, kit, values),
    steps: recipe.steps,
    tolerance,
    longestStepS,
    normal,
    habits,
    keep: (timeS, y, dy) => {
      recorder.keep(timeS, y, dy, pan);
      if (pan.view.temperatureC > hottestC) hottestC = pan.view.temperatureC;
    },
  });
  while (run.timeS < longestS && run.act()) run.go(longestS);

  const { deeds, timeS, y, over } = run;
  const ending: Ending = over ? 'poured' : 'out of time';
  const sampled = recorder.sample(everyS);
  return {
    ...sampled,
    readingC: shifted(sampled.states[place.tipC], values.thermometerOffsetC),
    steps: spans(recipe.steps, deeds, timeS),
    deeds,
    ending,
    last: y,
    hottestC,
  };
}

/** A column with `by` added. */
function shifted(column: Float64Array, by: number): Float64Array {
  const out = new Float64Array(column.length);
  for (let i = 0; i < out.length; i++) out[i] = column[i] + by;
  return out;
}

/** Start, end and spoonfuls of each step from the deeds. */
function spans(steps: readonly Step[], deeds: readonly TimedDeed[], endS: number): StepSpan[] {
  const starts = deeds.filter(({ deed }) => deed.kind === 'step').map(({ timeS }) => timeS);
  return starts.map((startS, i) => {
    const stepEndS = starts[i + 1] ?? endS;
    const inStep = deeds.filter(({ timeS }) => timeS >= startS && timeS < stepEndS);
    const spoonfuls = inStep.reduce((sum, { deed }) => sum + (deed.kind === 'water' ? deed.spoonfuls : 0), 0);
    return { kind: steps[i].kind, startS, endS: stepEndS, spoonfuls };
  });
}
