/** From an aim to a plan: which route, dose and holds give this colour and taste in this kit, or what comes nearest, and why no nearer. */

import type { Refusal } from '../advice/limits.ts';
import { ebcFromA430 } from '../colour/scales.ts';
import type { Course } from '../pan/course.ts';
import type { PreparedKit } from '../pan/preparedKit.ts';
import { type Aim, aimedColour, requireAim } from './aim.ts';
import { leverRange } from './field/levers.ts';
import { type Made, madeByCourse } from './field/made.ts';
import { type Plan, planFor } from './plan.ts';
import { type PlanRequest, type Route, requireRequest } from './request.ts';
import { chosen, reaches } from './solve/choose.ts';
import { tuned } from './solve/tune.ts';
import { tunedOn, type Way, waysTo } from './solve/ways.ts';

export interface Landed {
  readonly request: PlanRequest;
  readonly plan: Plan;
  readonly course: Course;
  readonly made: Made;
  /** The colour aimed at, A430 per cm of a 10 % w/w solution, and the plan's as a factor of it. */
  readonly aimA430: number;
  readonly offBy: number;
  /** Difference from the swatch that no sugar can close, dE00; 0 for an aim in numbers. */
  readonly hueLeft: number;
  /** Why it comes no nearer; nothing when it lands within 2 EBC or 3 %. */
  readonly short: string | undefined;
}

export type Solved =
  | ({ readonly kind: 'solved' } & Landed)
  | { readonly kind: 'refused'; readonly refusals: readonly Refusal[] };

/** A plan this near is as asked: EBC, or share of the colour. */
const nearEbc = 2;
const nearShare = 0.03;

export function landsNear(a430: number, aimA430: number): boolean {
  return Math.abs(ebcFromA430(a430 - aimA430)) <= nearEbc || Math.abs(a430 / aimA430 - 1) <= nearShare;
}

/**
 * @param request mass, form, malt and temperatures; its dose and holds are kept as far as the aim lets them
 * @param routes to choose among; all three unless given
 * @throws RangeError naming a number of the aim or the request that is out of its range
 */
export function solve(
  aim: Aim,
  request: PlanRequest,
  prepared: PreparedKit,
  routes: readonly Route[] = ['pale', 'bright', 'deep'],
): Solved {
  requireAim(aim);
  requireRequest(request);
  const { a430: aimA430, hueLeft } = aimedColour(aim);
  const open: Way[] = [];
  const refusals: Refusal[] = [];
  for (const route of routes) {
    const asked = startOf({ ...request, route });
    const planned = planFor(asked, prepared);
    if (planned.kind === 'refused') refusals.push(...planned.refusals.filter((each) => !known(refusals, each)));
    else open.push(...waysTo(aimA430, asked, prepared));
  }
  if (open.length === 0) return { kind: 'refused', refusals };
  const way = chosen(open, aimA430, aim.taste, request);
  const plan = tuned(way, aimA430, prepared);
  if (plan.kind === 'refused') return plan;
  return {
    kind: 'solved',
    request: plan.plan.request,
    plan: plan.plan,
    course: plan.course,
    made: madeByCourse(plan.course, plan.plan, prepared),
    aimA430,
    offBy: plan.a430 / aimA430,
    hueLeft,
    short: landsNear(plan.a430, aimA430) ? undefined : why(plan.a430, aimA430, way, refusals),
  };
}

/** A dose that is refused by itself says nothing against the route: the solver is about to choose another. */
function startOf(request: PlanRequest): PlanRequest {
  const [low, high] = leverRange('alkaliGPerKg', request);
  return { ...request, alkaliGPerKg: Math.min(high, Math.max(low, request.alkaliGPerKg)) };
}

function known(refusals: readonly Refusal[], { limit, field }: Refusal): boolean {
  return refusals.some((each) => each.limit === limit && each.field === field);
}

function why(a430: number, aimA430: number, way: Way, refusals: readonly Refusal[]): string {
  const { request } = way;
  const landed = `${ebcFromA430(a430).toFixed(0)} EBC`;
  const darker = a430 < aimA430;
  const barred =
    refusals.length > 0 ? `; other routes are barred: ${refusals.map(({ message }) => message).join('; ')}` : '';
  if (reaches(way, aimA430)) return `the cook jumps over this colour: its hand acts in whole spoonfuls${barred}`;
  if (!darker) {
    const least =
      tunedOn(request) === 'invertMinutes' ? 'the shortest hold' : 'the least alkali and the shortest holds';
    return `paler than ${landed} is out of reach with ${least} of the ${request.route} route${barred}`;
  }
  const [, most] = leverRange(tunedOn(request), request);
  const end =
    tunedOn(request) === 'invertMinutes'
      ? `${most} minutes of inverting`
      : `${most.toFixed(1)} g/kg of alkali (LIM-ALKALI-DOSE) and the longest holds that are tried`;
  return `darker than ${landed} is out of reach on the ${request.route} route even with ${end}${barred}`;
}
