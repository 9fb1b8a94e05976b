/** Saved kits: the list, which also tells whether the server is there, making and changing. */
import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import type { KitRecord } from '../../api/kit.ts';
import type { Kit } from '../../core/pan/kit.ts';
import { answerTo } from './answer.ts';
import { newId } from './newId.ts';
import { reachOf } from './reach.ts';

const key = ['kits'];
/** While the server is away it is asked this often whether it is back, ms. */
const askAgainMs = 10_000;

export function useKits() {
  return useQuery({
    queryKey: key,
    queryFn: async () => (await answerTo<{ kits: KitRecord[] }>('/api/kits')).kits,
    refetchInterval: ({ state }) => (reachOf(state.fetchFailureReason) === 'away' ? askAgainMs : false),
  });
}

export interface KitChange {
  readonly kit: Kit;
  /** What is changed; without it a kit is made. */
  readonly base: { readonly id: string; readonly version: number } | undefined;
}

export function useSaveKit() {
  const client = useQueryClient();
  return useMutation({
    mutationFn: ({ kit, base }: KitChange) =>
      base
        ? answerTo<KitRecord>(`/api/kits/${base.id}`, {
            method: 'PUT',
            headers: { 'if-match': `"${base.version}"` },
            body: kit,
          })
        : answerTo<KitRecord>('/api/kits', { method: 'POST', headers: { 'idempotency-key': newId() }, body: kit }),
    onSuccess: (saved) =>
      client.setQueryData<KitRecord[]>(key, (kits = []) =>
        [...kits.filter(({ id }) => id !== saved.id), saved].sort((a, b) => a.kit.name.localeCompare(b.kit.name)),
      ),
  });
}
