/** The cook that the simulation is measured on: the Desk's first request with longer holds, about two hours on the default kit. */
import { defaultKit } from '../../src/core/pan/kit.ts';
import { centralValues } from '../../src/core/pan/model.ts';
import type { ModelValues } from '../../src/core/pan/physics.ts';
import { type PreparedKit, prepareKit } from '../../src/core/pan/preparedKit.ts';
import type { Charge, Step } from '../../src/core/pan/steps.ts';
import { type Plan, planFor } from '../../src/core/planning/plan.ts';
import { defaultRequest, type PlanRequest } from '../../src/core/planning/request.ts';

export interface Cook {
  readonly prepared: PreparedKit;
  readonly values: ModelValues;
  readonly plan: Plan;
  readonly recipe: { readonly charge: Charge; readonly steps: readonly Step[] };
}

/** The default request with changes, planned for a kit with its central values. */
export function cookOf(changes: Partial<PlanRequest>, kit = defaultKit): Cook {
  const prepared = prepareKit(kit);
  const planned = planFor({ ...defaultRequest, ...changes }, prepared);
  if (planned.kind === 'refused') throw new Error(`the bench's plan is refused: ${planned.refusals[0].message}`);
  const { plan } = planned;
  return { prepared, values: centralValues(kit), plan, recipe: { charge: plan.amounts.charge, steps: plan.steps } };
}

export const referenceCook = (): Cook => cookOf({ invertMinutes: 50, brownMinutes: 30 });
