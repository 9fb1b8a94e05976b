/** How a planned cook begins: the first event of its log, with all that the cook goes by. */
import type { Begun } from '../log/bodies.ts';
import type { Kit } from '../pan/kit.ts';
import type { Plan } from './plan.ts';

export function begunOf(plan: Plan, kit: Kit, how: Pick<Begun, 'mode' | 'rehearsal' | 'planId'>): Begun {
  const { request, steps } = plan;
  const { charge, alkali = null } = plan.amounts;
  return { ...how, request, amounts: { charge, alkali }, steps, kit };
}
