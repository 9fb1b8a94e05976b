/** Kept glasses: the list, one by its id, keeping and changing. */
import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import type { GlassRecord, NewGlass } from '../../api/glass.ts';
import { answerTo } from './answer.ts';
import { newId } from './newId.ts';

const key = ['glasses'];

export function useGlasses() {
  return useQuery({
    queryKey: key,
    queryFn: async () => (await answerTo<{ glasses: GlassRecord[] }>('/api/glasses')).glasses,
  });
}

export function fetchGlass(id: string): Promise<GlassRecord> {
  return answerTo<GlassRecord>(`/api/glasses/${encodeURIComponent(id)}`);
}

export interface GlassChange {
  readonly glass: NewGlass;
  /** What is changed; without it a glass is made. */
  readonly base: { readonly id: string; readonly version: number } | undefined;
}

export function useKeepGlass() {
  const client = useQueryClient();
  return useMutation({
    mutationFn: ({ glass, base }: GlassChange) =>
      base
        ? answerTo<GlassRecord>(`/api/glasses/${base.id}`, {
            method: 'PUT',
            headers: { 'if-match': `"${base.version}"` },
            body: glass,
          })
        : answerTo<GlassRecord>('/api/glasses', {
            method: 'POST',
            headers: { 'idempotency-key': newId() },
            body: glass,
          }),
    onSuccess: (saved) =>
      client.setQueryData<GlassRecord[]>(key, (glasses = []) =>
        glasses.some(({ id }) => id === saved.id)
          ? glasses.map((each) => (each.id === saved.id ? saved : each))
          : [saved, ...glasses],
      ),
  });
}
