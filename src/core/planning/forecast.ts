/**
 * What a planned cook may turn out like. The middle is the plan's own central course, whoever asks; draws from every uncertain
 * number give the 10 % and 90 % marks around it.
 */
import { courseColour } from '../colour/courseColour.ts';
import { ratingA430 } from '../colour/rating.ts';
import { type Course, inverted, waterShare } from '../pan/course.ts';
import { drawnValues } from '../pan/model.ts';
import type { ModelValues } from '../pan/physics.ts';
import type { PreparedKit } from '../pan/preparedKit.ts';
import { simulate } from '../pan/simulate.ts';
import type { StepKind } from '../pan/steps.ts';
import { normalNumbers } from '../reactions/normal.ts';
import { type Range, rangeOf } from '../twin/range.ts';
import { type Plan, poured } from './plan.ts';

/** What is followed over time. Colour is A430 of a 10 % w/w solution. */
export const traceNames = ['readingC', 'waterShare', 'ph', 'inverted', 'a430'] as const;
export type TraceName = (typeof traceNames)[number];
export type Traces = Readonly<Record<TraceName, Float64Array>>;

/** The followed columns of a course. */
export function tracesOf(course: Course, values: ModelValues): Traces {
  return {
    readingC: course.readingC,
    waterShare: waterShare(course),
    ph: course.ph,
    inverted: inverted(course),
    a430: courseColour(course, values.absorptivity420).specific430.map((e) => ratingA430(e, 'tenPercentByWeight')),
  };
}

/** The step's end as found in one course. */
export interface StepEnd extends Readonly<Record<TraceName, number>> {
  readonly minutes: number;
  readonly endMinute: number;
  readonly spoonfuls: number;
}

export interface Draw {
  readonly traces: Traces;
  readonly ends: readonly StepEnd[];
  readonly yieldKg: number;
}

/** Distance of the rows that draws are compared on, s. */
export const drawEveryS = 15;

/** How many draws a forecast rests on, and their seed, unless asked otherwise: the same plan has the same band everywhere. */
export const forecastDraws = 64;
export const forecastSeed = 1;

/**
 * One possible cook. The same seed and number give the same parameters whatever happens in the cook, so that plans can be compared.
 *
 * @param number which of the draws, from 0
 */
export function drawOf(plan: Plan, prepared: PreparedKit, seed: number, number: number): Draw {
  const stream = 2 * (seed * 100_003 + number);
  const values = drawnValues(prepared.kit, normalNumbers(stream));
  const recipe = { charge: plan.amounts.charge, steps: plan.steps };
  const course = simulate(recipe, prepared, values, { everyS: drawEveryS, normal: normalNumbers(stream + 1) });
  return describe(course, values, drawEveryS);
}

/** A course as a draw: its traces and what each step ended with. */
export function describe(course: Course, values: ModelValues, everyS: number): Draw {
  const traces = tracesOf(course, values);
  const ends = course.steps.map(({ startS, endS, spoonfuls }) => {
    const row = Math.min(course.timeS.length - 1, Math.floor(endS / everyS));
    const at = Object.fromEntries(traceNames.map((name) => [name, traces[name][row]])) as Record<TraceName, number>;
    return { ...at, minutes: (endS - startS) / 60, endMinute: endS / 60, spoonfuls };
  });
  return { traces, ends, yieldKg: poured(course) };
}

export type StepForecast = Readonly<Record<keyof StepEnd, Range>> & { readonly kind: StepKind };

export interface Forecast {
  readonly draws: number;
  readonly steps: readonly StepForecast[];
  readonly yieldKg: Range;
  /** Bands over time, a row each `drawEveryS`, while at least half of the draws are still cooking. */
  readonly bands: Readonly<Record<TraceName, { readonly low: Float64Array; readonly high: Float64Array }>>;
}

/**
 * @param middle the plan's central course, described at its own rows: its figures are the `mid` of every range
 * @param draws possible cooks of the plan, at least one; `low` and `high` are their 10 % and 90 % marks, or the middle where it lies beyond
 */
export function summarise(plan: Plan, middle: Draw, draws: readonly Draw[]): Forecast {
  const endNames: (keyof StepEnd)[] = [...traceNames, 'minutes', 'endMinute', 'spoonfuls'];
  const steps = plan.steps.map(({ kind }, index) => {
    const ends = draws.map((draw) => draw.ends[index]).filter((end) => end !== undefined);
    const ranges = endNames.map((name) => {
      const mid = middle.ends[index]?.[name] ?? Number.NaN;
      return [
        name,
        around(
          mid,
          ends.map((end) => end[name]),
        ),
      ] as const;
    });
    return { kind, ...(Object.fromEntries(ranges) as Record<keyof StepEnd, Range>) };
  });
  const lengths = draws.map(({ traces }) => traces.readingC.length).sort((a, b) => a - b);
  const rows = lengths[Math.floor(lengths.length / 2)];
  const bands = Object.fromEntries(
    traceNames.map((name) => {
      const low = new Float64Array(rows);
      const high = new Float64Array(rows);
      for (let row = 0; row < rows; row++) {
        const going = draws.filter(({ traces }) => row < traces[name].length);
        const range = rangeOf(going.map(({ traces }) => traces[name][row]));
        low[row] = range.low;
        high[row] = range.high;
      }
      return [name, { low, high }];
    }),
  ) as unknown as Forecast['bands'];
  const yields = draws.map((draw) => draw.yieldKg);
  return { draws: draws.length, steps, yieldKg: around(middle.yieldKg, yields), bands };
}

/** The marks of the draws, around the middle that was planned: where a cook saws to and fro in its band, it may end beyond them. */
function around(mid: number, drawn: readonly number[]): Range {
  const { low, high } = rangeOf(drawn);
  return { low: Math.min(low, mid), mid, high: Math.max(high, mid) };
}
