/** Does the recorded deeds of a course again at their times, with any integrator in between: equal equations for all. */
import type { Course } from '../../src/core/pan/course.ts';
import { filledPan, perform } from '../../src/core/pan/deeds.ts';
import { createPan, type Pan } from '../../src/core/pan/physics.ts';
import { createRecorder, type Sampled } from '../../src/core/pan/recorder.ts';
import { createStepper, nextStep } from '../../src/core/pan/rosenbrock.ts';
import { stateSize } from '../../src/core/pan/state.ts';
import type { Cook } from '../measure/referenceCook.ts';

/** Time between two deeds. */
export interface Stretch {
  readonly fromS: number;
  readonly toS: number;
  /** Does the deeds at its start. */
  begin(y: Float64Array, pan: Pan): void;
}

export function stretchesOf(course: Course, { prepared }: Cook): Stretch[] {
  const endS = course.steps[course.steps.length - 1].endS;
  const times = [...new Set(course.deeds.map(({ timeS }) => timeS))].filter((timeS) => timeS < endS);
  return times.map((fromS, i) => ({
    fromS,
    toS: times[i + 1] ?? endS,
    begin(y, pan) {
      for (const { timeS, deed } of course.deeds) if (timeS === fromS) perform(deed, y, pan, prepared.kit);
    },
  }));
}

/** The whole seconds from `fromS` up to, not at, `toS`: there the next stretch begins with its deeds. */
export function wholeSeconds(fromS: number, toS: number): number[] {
  const first = Math.ceil(fromS);
  return Array.from({ length: Math.max(0, Math.ceil(toS) - first) }, (_, i) => first + i);
}

/** States at each whole second of a course, in columns. */
export interface Rows {
  readonly states: Float64Array[];
  keep(second: number, y: ArrayLike<number>): void;
}

export function rowsFor(course: Course): Rows {
  const states = Array.from({ length: stateSize }, () => new Float64Array(course.timeS.length));
  return {
    states,
    keep(second, y) {
      for (let i = 0; i < y.length; i++) if (second < course.timeS.length) states[i][second] = y[i];
    },
  };
}

/** Temperatures of states in columns, each by an evaluation. */
export function temperaturesOf(states: readonly Float64Array[], { prepared, values }: Cook): Float64Array {
  const pan = createPan(prepared, values);
  const dy = new Float64Array(stateSize);
  return states[0].map((_, row) => {
    pan.derivatives(
      Float64Array.from(states, (column) => column[row]),
      dy,
    );
    return pan.view.temperatureC;
  });
}

/** Our own integrator at any tolerance, with its own rows. */
export function replayOurs(course: Course, cook: Cook, tolerance: number): Sampled {
  const { prepared, values, recipe } = cook;
  const pan = createPan(prepared, values);
  const stepper = createStepper(pan, tolerance);
  const recorder = createRecorder();
  const dy = new Float64Array(stateSize);
  const next = new Float64Array(stateSize);
  const y = filledPan(recipe.charge, prepared.kit, values);
  for (const { fromS, toS, begin } of stretchesOf(course, cook)) {
    begin(y, pan);
    pan.derivatives(y, dy);
    recorder.keep(fromS, y, dy, pan);
    let t = fromS;
    let h = 0.01;
    while (t < toS) {
      const isLast = t + h >= toS;
      const length = isLast ? toS - t : h;
      const error = stepper.step(y, dy, length, next);
      h = nextStep(length, Math.max(error, 1e-6));
      if (error > 1) continue;
      t = isLast ? toS : t + length;
      y.set(next);
      pan.derivatives(y, dy);
      recorder.keep(t, y, dy, pan);
    }
  }
  return recorder.sample(1);
}
