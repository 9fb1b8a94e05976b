/** A saved plan that is laid behind the one on the Desk: which, and its course, cooked with the kit that it was made for. */
import { useQuery } from '@tanstack/react-query';
import { useMemo, useState } from 'react';
import type { KitRecord } from '../../../../api/kit.ts';
import type { PlanRecord } from '../../../../api/plan.ts';
import type { Kit } from '../../../../core/pan/kit.ts';
import { lay } from '../planner.ts';
import type { Outcome } from '../planner.worker.ts';

export interface Behind {
  readonly id: string;
  readonly name: string;
  /** The kit that it is cooked with, where it isn't the one on the Desk. */
  readonly kitName: string | undefined;
  readonly outcome: Outcome | undefined;
}

export interface Laying {
  /** Plans that can be laid behind: all but the one that lies on the Desk unchanged. */
  readonly plans: readonly PlanRecord[];
  readonly behind: Behind | undefined;
  readonly choose: (id: string | undefined) => void;
}

interface OnDesk {
  readonly kit: Kit;
  readonly kitId: string | undefined;
  /** The saved plan that is on the Desk just as it was saved. */
  readonly savedId: string | undefined;
}

export function useBehind(saved: readonly PlanRecord[], kits: readonly KitRecord[], on: OnDesk): Laying {
  const [id, choose] = useState<string>();
  const plans = useMemo(() => saved.filter((plan) => plan.id !== on.savedId), [saved, on.savedId]);
  const plan = plans.find((each) => each.id === id);
  const own = kits.find((each) => each.id === plan?.kitId && each.id !== on.kitId);
  const kit = own?.kit ?? on.kit;
  const kitName = own?.kit.name;
  const { data: outcome } = useQuery({
    queryKey: ['laid behind', plan?.id, kit],
    queryFn: () => (plan ? lay(plan.request, kit) : Promise.reject(new Error('no plan'))),
    enabled: plan !== undefined,
    staleTime: Number.POSITIVE_INFINITY,
    gcTime: 60_000,
  });
  return useMemo(
    () => ({ plans, behind: plan && { id: plan.id, name: plan.request.name, kitName, outcome }, choose }),
    [plans, plan, kitName, outcome],
  );
}
