/** What a lesson changes in the next plan of the same sugar: how each step goes, where it lands, and what it takes to land there again. */
import type { Kit } from '../pan/kit.ts';
import { centralValues } from '../pan/model.ts';
import { prepareKit } from '../pan/preparedKit.ts';
import type { StepKind } from '../pan/steps.ts';
import type { Range } from '../twin/range.ts';
import { dialText } from './dial.ts';
import { describe, drawOf, forecastSeed, summarise } from './forecast.ts';
import { planFor } from './plan.ts';
import type { PlanRequest } from './request.ts';
import { solve } from './solve.ts';

export interface StepForeseen {
  readonly kind: StepKind;
  readonly dial: string;
  readonly minutes: Range;
  readonly spoonfuls: Range;
}

/** Of the same request, with one state of knowledge. */
export interface Foreseen {
  readonly steps: readonly StepForeseen[];
  readonly minutes: Range;
  /** Of the finished sugar, per cm of a 10 % w/w solution. */
  readonly a430: Range;
  readonly waterShare: Range;
}

/** Levers of the request that were changed to land at the same colour. */
const levers = ['brownMinutes', 'alkaliGPerKg', 'brownC', 'roastMinutes', 'roastC', 'invertMinutes'] as const;
export type Lever = (typeof levers)[number];

export interface NextPlan {
  readonly before: Foreseen;
  readonly after: Foreseen;
  /** What the request needs now to land where it was thought to land before; nothing when no plan does. */
  readonly again: readonly { readonly lever: Lever; readonly from: number; readonly to: number }[] | undefined;
}

/** Enough to see a band narrow: a tenth of its width is within the error of its ends. */
const draws = 48;

/** @returns nothing when a limit refuses the request with one of the kits */
export function nextPlan(request: PlanRequest, before: Kit, after: Kit): NextPlan | undefined {
  const then = foreseen(request, before);
  const now = foreseen(request, after);
  if (!then || !now) return undefined;
  const solved = solve({ colour: { a430: then.a430.mid } }, request, prepareKit(after), [request.route]);
  const changed =
    solved.kind === 'refused' || solved.short !== undefined
      ? undefined
      : levers.map((lever) => ({ lever, from: request[lever], to: solved.request[lever] }));
  return { before: then, after: now, again: changed?.filter(({ from, to }) => from !== to) };
}

function foreseen(request: PlanRequest, kit: Kit): Foreseen | undefined {
  const prepared = prepareKit(kit);
  const planned = planFor(request, prepared);
  if (planned.kind === 'refused') return undefined;
  const { plan, course } = planned;
  const each = Array.from({ length: draws }, (_, i) => drawOf(plan, prepared, forecastSeed, i));
  const { steps } = summarise(plan, describe(course, centralValues(kit), 1), each);
  const last = steps[steps.length - 1];
  return {
    steps: steps.map(({ kind, minutes, spoonfuls }, i) => ({ kind, dial: dialText(course, i), minutes, spoonfuls })),
    minutes: last.endMinute,
    a430: last.a430,
    waterShare: last.waterShare,
  };
}
