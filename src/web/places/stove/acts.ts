/** What can be done at the Stove, whether the cook is real or rehearsed: views act through this and know nothing of which it is. */
import { createContext, useContext } from 'react';
import type { EventBodies, EventKind } from '../../../core/log/bodies.ts';
import type { AnyEntry } from '../../../core/log/corrections.ts';
import type { Deed } from '../../../core/pan/steps.ts';

export interface Acts {
  perform(deeds: readonly Deed[]): void;
  /** Whatever is noted beside deeds of the pan: stirring, spoon tests, readings, answers, alarms seen. */
  say<K extends EventKind>(kind: K, body: EventBodies[K]): void;
  /** Puts the advice aside for a while. */
  putAside(): void;
  /** A guest, who may see everything and note nothing. */
  readonly looksOn?: true;
  /** Says what an entry should have said; null: it never happened. Not in a rehearsal, whose pan has felt it. */
  readonly correct?: (entry: AnyEntry, body: AnyEntry['body'] | null) => void;
  /** Saves the log as a file. Not in a rehearsal, which is kept in the Book or not at all. */
  readonly saveLog?: () => void;
}

const ActsContext = createContext<Acts | undefined>(undefined);

export const ActsProvider = ActsContext.Provider;

export function useActs(): Acts {
  const acts = useContext(ActsContext);
  if (!acts) throw new Error('acts are used outside of a cook');
  return acts;
}
