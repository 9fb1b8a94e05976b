/** Runs a plan many times with numbers drawn from the model's spreads, and once with the most likely ones. */
import { courseColour } from '../../core/colour/courseColour.ts';
import { dropColour } from '../../core/colour/drop.ts';
import { ratingBases } from '../../core/colour/rating.ts';
import type { Srgb } from '../../core/colour/srgb.ts';
import { centralValues } from '../../core/pan/model.ts';
import { simulate } from '../../core/pan/simulate.ts';
import { describe, drawOf, type Forecast, summarise } from '../../core/planning/forecast.ts';
import type { Range } from '../../core/twin/range.ts';
import type { Planning } from '../plan/makePlan.ts';

export interface RunOptions {
  readonly draws: number;
  readonly seed: number;
  readonly everyS: number;
}

export interface Rehearsed extends Planning {
  readonly run: RunOptions;
  readonly forecast: Forecast;
  /** What a drop on a white plate looks like at each step's end. */
  readonly drops: readonly Srgb[];
}

export function rehearse(planning: Planning, run: RunOptions): Rehearsed {
  const { plan, prepared, kit } = planning;
  const draws = Array.from({ length: run.draws }, (_, number) => drawOf(plan, prepared, run.seed, number));
  const forecast = summarise(plan, describe(planning.course, centralValues(kit), 1), draws);
  const values = centralValues(kit);
  const recipe = { charge: plan.amounts.charge, steps: plan.steps };
  const course = simulate(recipe, prepared, values, { everyS: run.everyS });
  const { hueIndex } = courseColour(course, values.absorptivity420);
  const drops = course.steps.map(({ endS }, at) => {
    const row = Math.min(hueIndex.length - 1, Math.floor(endS / run.everyS));
    const end = forecast.steps[at];
    return dropOf(end?.a430, end?.waterShare, hueIndex[row] ?? Number.NaN);
  });
  return { ...planning, course, run, forecast, drops };
}

function dropOf(a430: Range | undefined, water: Range | undefined, hueIndex: number): Srgb {
  const specific430 = (a430?.mid ?? 0) / ratingBases.tenPercentByWeight.gramsPerLitre;
  return dropColour(specific430, hueIndex, water?.mid ?? 0);
}
