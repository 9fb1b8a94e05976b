/** A cook as it is looked back at: its log, what the log comes to, and what the twin made of it. */
import { useQuery } from '@tanstack/react-query';
import { useMemo } from 'react';
import { type Doings, doingsOf } from '../../../../core/book/doings.ts';
import type { CookState } from '../../../../core/log/fold.ts';
import { foldCook } from '../../../../core/log/fold.ts';
import { type ReadEvent, readLog } from '../../../records/readLog.ts';
import type { Row } from '../../stove/view.ts';
import { rowOf } from '../../stove/view.ts';
import type { LookedBack } from '../book.worker.ts';
import { type Answer, useAsked } from '../useAsked.ts';

export interface Cooked {
  readonly id: string;
  readonly name: string;
  readonly events: readonly ReadEvent[];
  readonly state: CookState;
  readonly doings: Doings;
}

export function useCook(id: string) {
  const log = useQuery({ queryKey: ['log', id], queryFn: () => readLog(id), staleTime: 60_000 });
  const events = log.data;
  const cooked = useMemo((): Cooked | undefined => {
    if (!events) return undefined;
    const state = foldCook(events);
    const request = state.begun?.body.request ?? {};
    const name = 'name' in request ? String(request.name) : 'A cook';
    return { id, name, events, state, doings: doingsOf(state) };
  }, [id, events]);
  const looked = useAsked(events && `${id} ${events.length}`, (book, onPart) => book.lookBack(events ?? [], onPart));
  return { cooked, looked, error: log.error };
}

/** What the twin believed, as pan lines draw it. */
export function rowsOf(looked: Answer<LookedBack | undefined>): readonly Row[] {
  return looked.kind === 'done' ? (looked.value?.beliefs.map(rowOf) ?? []) : [];
}
