/** Kept glasses: the list, one by its id, keeping and changing, taking away and putting back. */
import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import type { GlassRecord, NewGlass } from '../../api/glass.ts';
import type { TastingRecord } from '../../api/tasting.ts';
import { answerTo } from './answer.ts';
import { newId } from './newId.ts';
import { forgetTastedBeers } from './useTastedBeers.ts';

const key = ['glasses'];
const addressOf = (id: string) => `/api/glasses/${encodeURIComponent(id)}`;

export function useGlasses() {
  return useQuery({
    queryKey: key,
    queryFn: async () => (await answerTo<{ glasses: GlassRecord[] }>('/api/glasses')).glasses,
  });
}

export function fetchGlass(id: string): Promise<GlassRecord> {
  return answerTo<GlassRecord>(addressOf(id));
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
        ? answerTo<GlassRecord>(addressOf(base.id), {
            method: 'PUT',
            headers: { 'if-match': `"${base.version}"` },
            body: glass,
          })
        : answerTo<GlassRecord>('/api/glasses', {
            method: 'POST',
            headers: { 'idempotency-key': newId() },
            body: glass,
          }),
    onSuccess(saved) {
      void forgetTastedBeers(client);
      client.setQueryData<GlassRecord[]>(key, (glasses = []) =>
        glasses.some(({ id }) => id === saved.id)
          ? glasses.map((each) => (each.id === saved.id ? saved : each))
          : [saved, ...glasses],
      );
    },
  });
}

/** What the server had of a glass that was taken away. */
export interface TakenAway {
  readonly glass: GlassRecord;
  readonly tastings: readonly TastingRecord[];
}

export function useRemoveGlass() {
  return useGlassesChanged(({ id, version }: Pick<GlassRecord, 'id' | 'version'>) =>
    answerTo<TakenAway>(addressOf(id), { method: 'DELETE', headers: { 'if-match': `"${version}"` } }),
  );
}

/** Under the ids that they had: sent twice, each is there once. */
export function usePutBackGlass() {
  return useGlassesChanged(async ({ glass, tastings }: TakenAway) => {
    const make = <T>(address: string, id: string, body: unknown) =>
      answerTo<T>(address, { method: 'POST', headers: { 'idempotency-key': id }, body });
    const record = await make<GlassRecord>('/api/glasses', glass.id, glass.glass);
    for (const { id, tasting } of tastings) await make(`${addressOf(record.id)}/tastings`, id, tasting);
    return record;
  });
}

/** A question after which glasses and what hangs on them are read anew. */
function useGlassesChanged<Told, Answer>(ask: (told: Told) => Promise<Answer>) {
  const client = useQueryClient();
  return useMutation({
    mutationFn: ask,
    async onSettled() {
      client.removeQueries({ queryKey: ['tastings'] });
      await Promise.all([client.invalidateQueries({ queryKey: key }), forgetTastedBeers(client)]);
    },
  });
}
