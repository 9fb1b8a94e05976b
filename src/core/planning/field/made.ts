/** What a simulated cook makes: its colour, taste, inversion and time, from where it ended. */
import { ratingA430 } from '../../colour/rating.ts';
import { pigmentShape } from '../../colour/spectrum.ts';
import { stateColour } from '../../colour/stateColour.ts';
import type { Course } from '../../pan/course.ts';
import { centralValues } from '../../pan/model.ts';
import type { ModelValues } from '../../pan/physics.ts';
import { pouredKg } from '../../pan/poured.ts';
import type { PreparedKit } from '../../pan/preparedKit.ts';
import { contentsKg, place, solidsIn, stateSize } from '../../pan/state.ts';
import { amount, amountMassKg } from '../../reactions/rates.ts';
import type { Amounts } from '../amounts.ts';
import { mineralsOf } from '../minerals.ts';
import type { Plan } from '../plan.ts';
import { createExposureMeter, type Taste, tasteOf, unexposed } from '../taste.ts';
import type { Reached } from './branches.ts';

export interface Made {
  /** A430 per cm of a 10 % w/w solution of its solids. */
  readonly a430: number;
  /** Absorbance at 430 nm of the dry sugar, L/(g cm). */
  readonly specific430: number;
  readonly hueIndex: number;
  readonly waterShare: number;
  /** Share of the sucrose that is inverted or gone further. */
  readonly inverted: number;
  readonly minutes: number;
  /** Out of the pan, kg. */
  readonly yieldKg: number;
  readonly taste: Taste;
}

/** What went in, as far as it counts for what came out. */
interface WentIn {
  readonly charge: Amounts['charge'];
  readonly alkali: Pick<NonNullable<Amounts['alkali']>, 'substance' | 'equivalents'> | undefined;
}

export function madeOf({ y, timeS, exposure }: Reached, { charge, alkali }: WentIn, values: ModelValues): Made {
  const { specific430, hueIndex } = stateColour(y, values.absorptivity420);
  const a430 = ratingA430(specific430, 'tenPercentByWeight');
  const { sodiumGPerKg, calciumGPerKg } = mineralsOf(alkali, contentsKg(y));
  return {
    a430,
    specific430,
    hueIndex,
    waterShare: 1 - solidsIn(y),
    inverted: 1 - ((y[place.sucrose] + y[place.crystals]) * amountMassKg[amount.sucrose]) / charge.sucroseKg,
    minutes: timeS / 60,
    yieldKg: pouredKg(y),
    taste: tasteOf({
      exposure,
      sucroseKg: charge.sucroseKg,
      a420: a430 * pigmentShape(420, hueIndex),
      mineralGPerKg: sodiumGPerKg + calciumGPerKg,
    }),
  };
}

/** Rows of a course that taste is reckoned by, s apart. */
const rowS = 10;

/** The same of a plan's own central course. */
export function madeByCourse(course: Course, { amounts }: Pick<Plan, 'amounts'>, prepared: PreparedKit): Made {
  const values = centralValues(prepared.kit);
  const meter = createExposureMeter(values, unexposed);
  const y = new Float64Array(stateSize);
  for (let row = 0; row < course.timeS.length; row++) {
    if (course.timeS[row] % rowS !== 0) continue;
    for (let i = 0; i < stateSize; i++) y[i] = course.states[i][row];
    meter.take(course.timeS[row], y, course.temperatureC[row]);
  }
  const timeS = course.steps.at(-1)?.endS ?? 0;
  return madeOf({ y: course.last, timeS, exposure: meter.exposure, poured: true }, amounts, values);
}
