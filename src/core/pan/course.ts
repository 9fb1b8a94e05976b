/** The course of a simulated cook: columns over time, deeds and steps. */
import { amount, amountMassKg } from '../reactions/rates.ts';
import { dissolvedKg, place, stateSize } from './state.ts';
import type { StepKind, TimedDeed } from './steps.ts';

export interface StepSpan {
  readonly kind: StepKind;
  readonly startS: number;
  readonly endS: number;
  readonly spoonfuls: number;
}

/** How a simulation ended: poured as planned, or stopped because the time allowed ran out. */
export type Ending = 'poured' | 'out of time';

export interface Course {
  readonly timeS: Float64Array;
  /** Every value of the state, in the order of `place`. */
  readonly states: readonly Float64Array[];
  readonly temperatureC: Float64Array;
  /** What the thermometer shows. */
  readonly readingC: Float64Array;
  readonly ph: Float64Array;
  readonly boilsC: Float64Array;
  /** Steam leaving, kg/s. */
  readonly steamKgPerS: Float64Array;
  readonly steps: readonly StepSpan[];
  readonly deeds: readonly TimedDeed[];
  readonly ending: Ending;
  /** State at the end, before pouring. */
  readonly last: Float64Array;
  /** Highest temperature of the syrup, C. */
  readonly hottestC: number;
}

/** Sum of columns of the state by place. */
function combine(course: Course, weights: Readonly<Record<number, number>>): Float64Array {
  const out = new Float64Array(course.timeS.length);
  for (const [index, weight] of Object.entries(weights)) {
    const column = course.states[Number(index)];
    for (let i = 0; i < out.length; i++) out[i] += weight * column[i];
  }
  return out;
}

const scratch = new Float64Array(stateSize);

/** Dissolved dry matter over time, kg. */
export function dryKg(course: Course): Float64Array {
  const out = new Float64Array(course.timeS.length);
  for (let i = 0; i < out.length; i++) {
    for (let j = 0; j < stateSize; j++) scratch[j] = course.states[j][i];
    out[i] = dissolvedKg(scratch);
  }
  return out;
}

/** Water as a share of all that is in the pan, crystals too, over time; a trace below none, left by the integrator's error, counts as none. */
export function waterShare(course: Course): Float64Array {
  const water = course.states[place.waterKg];
  const crystals = course.states[place.crystals];
  return dryKg(course).map((dry, i) => {
    const waterKg = Math.max(0, water[i]);
    return waterKg / (dry + crystals[i] * amountMassKg[amount.sucrose] + waterKg);
  });
}

/** Share of the sucrose that is inverted or gone further, by moles. */
export function inverted(course: Course): Float64Array {
  const left = combine(course, { [place.sucrose]: 1, [place.crystals]: 1 });
  const start = left[0];
  return left.map((value) => 1 - value / start);
}

/** Pigment over time, mol of hexose units. */
export function pigmentMol(course: Course): Float64Array {
  return combine(course, { [amount.melanoidin]: 1, [amount.caramel]: 1 });
}
