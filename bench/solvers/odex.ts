/** The same equations by odex, an extrapolation method of variable order (Hairer, Norsett & Wanner, Solving ODEs I, II.9), as published on npm. */
import { Solver } from 'odex';
import type { Course } from '../../src/core/pan/course.ts';
import { filledPan } from '../../src/core/pan/deeds.ts';
import { createPan } from '../../src/core/pan/physics.ts';
import { movingCount, stateSize } from '../../src/core/pan/state.ts';
import type { Cook } from '../measure/referenceCook.ts';
import { rowsFor, stretchesOf, wholeSeconds } from './replay.ts';

export interface OdexRun {
  readonly states: Float64Array[];
  readonly evaluations: number;
}

export function replayOdex(course: Course, cook: Cook, tolerance: number): OdexRun {
  const { prepared, values, recipe } = cook;
  const pan = createPan(prepared, values);
  const rows = rowsFor(course);
  const y = filledPan(recipe.charge, prepared.kit, values);
  const at = new Float64Array(stateSize);
  const dy = new Float64Array(stateSize);
  const row = new Float64Array(stateSize);
  let evaluations = 0;

  const solver = new Solver(movingCount);
  solver.relativeTolerance = Array.from({ length: movingCount }, () => tolerance);
  solver.absoluteTolerance = Array.from(pan.scale.subarray(0, movingCount), (scale) => tolerance * scale);
  solver.denseOutput = true;
  solver.maxSteps = 1e6;
  solver.initialStepSize = 0.1;

  const derivative = (_t: number, state: number[]): number[] => {
    for (let i = 0; i < movingCount; i++) at[i] = state[i];
    pan.derivatives(at, dy);
    evaluations++;
    return Array.from(dy.subarray(0, movingCount));
  };

  for (const { fromS, toS, begin } of stretchesOf(course, cook)) {
    begin(y, pan);
    at.set(y);
    row.set(y);
    const seconds = wholeSeconds(fromS, toS);
    let waiting = 0;
    const out = (
      _step: number,
      _before: number,
      now: number,
      state: number[],
      dense?: (i: number, t: number) => number,
    ) => {
      for (; waiting < seconds.length && seconds[waiting] <= now; waiting++) {
        const second = seconds[waiting];
        for (let i = 0; i < movingCount; i++) row[i] = dense && second > fromS ? dense(i, second) : state[i];
        rows.keep(second, row);
      }
      return undefined;
    };
    const { y: end, outcome } = solver.solve(derivative, fromS, Array.from(y.subarray(0, movingCount)), toS, out);
    if (outcome !== 0) throw new Error(`odex gave up between ${fromS} and ${toS} s`);
    y.set(end);
  }
  return { states: rows.states, evaluations };
}
