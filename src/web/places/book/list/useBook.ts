/** Cooks of the server with what they came to, and those that only this device holds. */
import { useQuery } from '@tanstack/react-query';
import type { BookEntry } from '../../../../api/book.ts';
import { answerTo } from '../../../records/answer.ts';
import { cooksHere } from '../../../records/cookLog/openCookLog.ts';
import { reachOf } from '../../../records/reach.ts';

export interface Entry extends BookEntry {
  /** The server does not have it, or is not reached. */
  readonly onlyHere: boolean;
}

/** As many as are listed at once. */
const most = 1000;
/** While summaries are being made, it is asked again after this, ms. */
const againMs = 2000;

export function useBook() {
  const there = useQuery({
    queryKey: ['book'],
    queryFn: async () => (await answerTo<{ entries: BookEntry[] }>(`/api/book?limit=${most}`)).entries,
    refetchInterval: ({ state }) => (state.data?.some(({ due }) => due) ? againMs : false),
  });
  const here = useQuery({ queryKey: ['cooks', 'here'], queryFn: cooksHere });
  const known = new Set(there.data?.map(({ cook }) => cook.id));
  const only = (here.data ?? [])
    .filter(({ id }) => !known.has(id))
    .map(({ id, name, mode, beganAt, ended }): Entry => {
      const cook = { id, name, mode, begun: beganAt, ended, lastSeq: 0 };
      return { cook, summary: null, due: false, onlyHere: true };
    });
  const entries = [...only, ...(there.data ?? []).map((entry): Entry => ({ ...entry, onlyHere: false }))].toSorted(
    (a, b) => (a.cook.begun < b.cook.begun ? 1 : -1),
  );
  return { entries, isLoading: there.isPending || here.isPending, reach: reachOf(there.error) };
}
