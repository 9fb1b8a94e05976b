/** How an imported cook began: by a kept plan, in this kit. */
import type { PlanRecord } from '../../../../api/plan.ts';
import type { Begun } from '../../../../core/log/bodies.ts';
import type { Kit } from '../../../../core/pan/kit.ts';
import { prepareKit } from '../../../../core/pan/preparedKit.ts';
import { begunOf } from '../../../../core/planning/begunOf.ts';
import { planFor } from '../../../../core/planning/plan.ts';

export type Beginning =
  | { readonly kind: 'begun'; readonly begun: Begun }
  | { readonly kind: 'refused'; readonly message: string };

export function begunFrom({ id, request }: PlanRecord, kit: Kit): Beginning {
  const planned = planFor(request, prepareKit(kit));
  if (planned.kind === 'refused') return { kind: 'refused', message: planned.refusals[0]?.message ?? '' };
  return { kind: 'begun', begun: begunOf(planned.plan, kit, { mode: 'live', rehearsal: null, planId: id }) };
}
