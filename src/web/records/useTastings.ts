/** Tastings of a kept glass: the list, keeping one under an id made here, taking one away. */
import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import type { NewTasting, TastingRecord } from '../../api/tasting.ts';
import { answerTo } from './answer.ts';
import { forgetTastedBeers } from './useTastedBeers.ts';

const keyOf = (glassId: string) => ['tastings', glassId];
const addressOf = (glassId: string) => `/api/glasses/${glassId}/tastings`;

export function useTastings(glassId: string) {
  return useQuery({
    queryKey: keyOf(glassId),
    queryFn: async () => (await answerTo<{ tastings: TastingRecord[] }>(addressOf(glassId))).tastings,
  });
}

export function useKeepTasting(glassId: string) {
  const client = useQueryClient();
  return useMutation({
    mutationFn: ({ id, tasting }: { readonly id: string; readonly tasting: NewTasting }) =>
      answerTo<TastingRecord>(addressOf(glassId), {
        method: 'POST',
        headers: { 'idempotency-key': id },
        body: tasting,
      }),
    onSuccess(saved) {
      void forgetTastedBeers(client);
      client.setQueryData<TastingRecord[]>(keyOf(glassId), (tastings = []) =>
        [saved, ...tastings.filter(({ id }) => id !== saved.id)].toSorted((a, b) =>
          b.tasting.tastedAt.localeCompare(a.tasting.tastedAt),
        ),
      );
    },
  });
}

export function useRemoveTasting(glassId: string) {
  const client = useQueryClient();
  return useMutation({
    mutationFn: ({ id }: TastingRecord) => answerTo<void>(`${addressOf(glassId)}/${id}`, { method: 'DELETE' }),
    onSuccess(_, removed) {
      void forgetTastedBeers(client);
      client.setQueryData<TastingRecord[]>(keyOf(glassId), (tastings = []) =>
        tastings.filter(({ id }) => id !== removed.id),
      );
    },
  });
}
