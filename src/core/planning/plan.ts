/** From a request and a kit to a plan: amounts sized so that the pour is what was asked for, steps, and how the batch fits the pan. */
import type { Refusal } from '../advice/limits.ts';
import type { Course } from '../pan/course.ts';
import { centralValues } from '../pan/model.ts';
import { pouredKg } from '../pan/poured.ts';
import type { PreparedKit } from '../pan/preparedKit.ts';
import { simulate } from '../pan/simulate.ts';
import type { Step } from '../pan/steps.ts';
import { type Amounts, amountsFor } from './amounts.ts';
import { type PlanCaution, planCautions } from './cautions.ts';
import { contentsOf, type PanFit, panFit } from './panFit.ts';
import { refusalsOf } from './refusals.ts';
import { type PlanRequest, requireRequest } from './request.ts';
import { stepsFor } from './steps.ts';

export interface Plan {
  readonly request: PlanRequest;
  readonly amounts: Amounts;
  readonly steps: readonly Step[];
  readonly fit: PanFit;
  /** Finished sugar expected, kg. */
  readonly yieldKg: number;
  /** The most finished sugar of this kind that the pan takes, kg: what comes of `fit.mostSugarKg` weighed in. */
  readonly mostFinishedKg: number;
  /** Hot water expected to let a syrup down, kg; none for hard sugar. */
  readonly letDownWaterKg: number;
  /** What can be done, but would better be done otherwise. */
  readonly cautions: readonly PlanCaution[];
}

export type Planned =
  | { readonly kind: 'plan'; readonly plan: Plan; readonly course: Course }
  | { readonly kind: 'refused'; readonly refusals: readonly Refusal[] };

function recipeFor(request: PlanRequest, prepared: PreparedKit, sucroseKg: number) {
  const values = centralValues(prepared.kit);
  const amounts = amountsFor(request, sucroseKg);
  return { amounts, steps: stepsFor({ request, amounts, prepared, values }), charge: amounts.charge, values };
}

/**
 * Makes the plan. The sugar to weigh follows from simulating the cook with the kit's central values, twice.
 *
 * @param request within `requestRanges`
 * @param prepared the kit, from `prepareKit`
 * @returns the plan and its central course, or the limits that it would break
 * @throws RangeError naming a number of the request outside `requestRanges`
 */
export function planFor(request: PlanRequest, prepared: PreparedKit): Planned {
  requireRequest(request);
  let sucroseKg = request.massKg * (request.form === 'hard' ? 1 : request.syrupSolids);
  let tried = refusable(request, prepared, sucroseKg);
  if (tried.refusals.length > 0) return { kind: 'refused', refusals: tried.refusals };
  for (let round = 0; round < 2; round++) {
    const { steps, charge, values } = tried.recipe;
    const course = simulate({ charge, steps }, prepared, values, { everyS: 60 });
    sucroseKg *= request.massKg / poured(course);
    tried = refusable(request, prepared, sucroseKg);
    if (tried.refusals.length > 0) return { kind: 'refused', refusals: tried.refusals };
  }
  const { amounts, steps, charge, values } = tried.recipe;
  const course = simulate({ charge, steps }, prepared, values);
  const mostSteam = course.steamKgPerS.reduce((most, steam) => Math.max(most, steam), 0);
  const fit = panFit(prepared.kit.pan, contentsOf(charge), charge.sucroseKg, mostSteam);
  const yieldKg = poured(course);
  const plan = {
    request,
    amounts,
    steps,
    fit,
    yieldKg,
    mostFinishedKg: (yieldKg * fit.mostSugarKg) / charge.sucroseKg,
    letDownWaterKg: letDownWater(course),
    cautions: planCautions(request),
  };
  return { kind: 'plan', plan, course };
}

/** Sugar out of the pan, kg. */
export function poured(course: Course): number {
  return pouredKg(course.last);
}

/** Water that went in by portions, not by spoonfuls, kg. */
function letDownWater({ deeds }: Course): number {
  return deeds.reduce((sum, { deed }) => sum + (deed.kind === 'water' && deed.spoonfuls === 0 ? deed.waterKg : 0), 0);
}

function refusable(request: PlanRequest, prepared: PreparedKit, sucroseKg: number) {
  const recipe = recipeFor(request, prepared, sucroseKg);
  const fit = panFit(prepared.kit.pan, contentsOf(recipe.charge), sucroseKg);
  return { recipe, refusals: refusalsOf(request, prepared.kit, recipe.amounts, fit) };
}
