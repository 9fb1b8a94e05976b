/** Saved plans: the list, saving, taking away. */
import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import type { NewPlan, PlanRecord } from '../../api/plan.ts';
import { answerTo } from './answer.ts';

const key = ['plans'];

export function usePlans() {
  return useQuery({
    queryKey: key,
    queryFn: async () => (await answerTo<{ plans: PlanRecord[] }>('/api/plans')).plans,
  });
}

export function fetchPlan(id: string): Promise<PlanRecord> {
  return answerTo<PlanRecord>(`/api/plans/${encodeURIComponent(id)}`);
}

/** Saving under an id made here: sent twice, it is kept once. */
export function useSavePlan() {
  const client = useQueryClient();
  return useMutation({
    mutationFn: ({ id, plan }: { readonly id: string; readonly plan: NewPlan }) =>
      answerTo<PlanRecord>('/api/plans', { method: 'POST', headers: { 'idempotency-key': id }, body: plan }),
    onSuccess: (saved) =>
      client.setQueryData<PlanRecord[]>(key, (plans = []) => [saved, ...plans.filter(({ id }) => id !== saved.id)]),
  });
}

export function useRemovePlan() {
  const client = useQueryClient();
  return useMutation({
    mutationFn: ({ id }: PlanRecord) => answerTo<void>(`/api/plans/${id}`, { method: 'DELETE' }),
    onSuccess: (_, removed) =>
      client.setQueryData<PlanRecord[]>(key, (plans = []) => plans.filter(({ id }) => id !== removed.id)),
  });
}
