/** Lots on the shelf: those that the server has, one by its id, and what is done to them. */
import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import type { LotChange, LotRecord, NewLot } from '../../api/lot.ts';
import type { NewNote, NoteRecord } from '../../api/lotNote.ts';
import { answerTo } from './answer.ts';

/** As many as the server lists at once. */
const most = 500;
const key = ['lots'];
const addressOf = (id: string) => `/api/lots/${encodeURIComponent(id)}`;

export function useLots() {
  return useQuery({
    queryKey: key,
    queryFn: async () => (await answerTo<{ lots: LotRecord[] }>(`/api/lots?limit=${most}`)).lots,
  });
}

/** Also one that was taken off the shelf. What the list has of it is shown until the answer is there. */
export function useLot(id: string) {
  const client = useQueryClient();
  return useQuery({
    queryKey: [...key, id],
    queryFn: () => answerTo<LotRecord>(addressOf(id)),
    placeholderData: () => client.getQueryData<LotRecord[]>(key)?.find((each) => each.id === id),
  });
}

/** A question that changes lots; it is done when they have been read anew. */
function useLotQuestion<Told, Answer>(ask: (told: Told) => Promise<Answer>) {
  const client = useQueryClient();
  return useMutation({ mutationFn: ask, onSuccess: () => client.invalidateQueries({ queryKey: key }) });
}

export function useMakeLot() {
  return useLotQuestion(({ id, lot }: { readonly id: string; readonly lot: NewLot }) =>
    answerTo<LotRecord>('/api/lots', { method: 'POST', headers: { 'idempotency-key': id }, body: lot }),
  );
}

export function useChangeLot({ id, version }: Pick<LotRecord, 'id' | 'version'>) {
  return useLotQuestion((change: LotChange) =>
    answerTo<LotRecord>(addressOf(id), { method: 'PUT', headers: { 'if-match': `"${version}"` }, body: change }),
  );
}

/** Takes a lot off the shelf, or puts it back. */
export function useShelveLot(id: string) {
  return useLotQuestion((to: 'off' | 'back') =>
    to === 'off'
      ? answerTo<unknown>(addressOf(id), { method: 'DELETE' })
      : answerTo<unknown>(`${addressOf(id)}/restore`, { method: 'POST' }),
  );
}

export interface NoteToKeep {
  readonly lotId: string;
  readonly id: string;
  readonly note: NewNote;
}

/** Keeping under an id made here: sent twice, it is kept once. */
export function useKeepNote() {
  return useLotQuestion(({ lotId, id, note }: NoteToKeep) =>
    answerTo<NoteRecord>(`${addressOf(lotId)}/notes`, {
      method: 'POST',
      headers: { 'idempotency-key': id },
      body: note,
    }),
  );
}

export function useRemoveNote(lotId: string) {
  return useLotQuestion((id: string) => answerTo<void>(`${addressOf(lotId)}/notes/${id}`, { method: 'DELETE' }));
}
