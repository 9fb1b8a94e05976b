/** The saved kit that a page is about, and how something learned is kept with it. */
import { useState } from 'react';
import type { KitRecord } from '../../../api/kit.ts';
import type { Kit } from '../../../core/pan/kit.ts';
import { ProblemError } from '../../records/answer.ts';
import { failureOf } from '../../records/failureOf.ts';
import { type Reach, reachOf } from '../../records/reach.ts';
import { useKits, useSaveKit } from '../../records/useKits.ts';

export interface Keeping {
  readonly state: 'idle' | 'busy' | 'kept' | 'failed';
  readonly message: string | undefined;
  /** Keeps the kit as changed; on failure nothing is changed. */
  keep(kit: Kit, said: string, then?: (record: KitRecord) => void): void;
}

export interface KitHand {
  readonly kits: readonly KitRecord[];
  /** None before a first one is saved. */
  readonly record: KitRecord | undefined;
  /** Unless the server is reached, what is shown may be old, and nothing can be kept. */
  readonly reach: Reach;
}

/** @param id of the kit; the first one otherwise */
export function useKitInHand(id: string | undefined) {
  const kits = useKits();
  const records = kits.data ?? [];
  const record = id && id !== 'new' ? records.find((each) => each.id === id) : undefined;
  const [first] = records;
  const hand: KitHand = {
    kits: records,
    record: id === undefined ? first : record,
    reach: reachOf(kits.failureReason),
  };
  return {
    hand,
    isWaiting: kits.isPending && hand.reach === 'reached',
    isMissing: !!id && id !== 'new' && !record && !kits.isPending,
  };
}

export function useKeeping({ record }: KitHand): Keeping {
  const saving = useSaveKit();
  const [told, setTold] = useState<Pick<Keeping, 'state' | 'message'>>({ state: 'idle', message: undefined });
  return {
    ...told,
    keep(kit, said, then) {
      if (!record) return;
      setTold({ state: 'busy', message: 'Keeping it …' });
      saving.mutate(
        { kit, base: record },
        {
          onSuccess(saved) {
            setTold({ state: 'kept', message: said });
            then?.(saved);
          },
          onError: (error) => setTold({ state: 'failed', message: messageOf(error) }),
        },
      );
    },
  };
}

function messageOf(error: Error): string {
  const changed = error instanceof ProblemError && error.problem.current !== undefined;
  return changed
    ? 'Not kept: this kit was changed elsewhere in the meantime. Load the page again, then keep it.'
    : failureOf(error, 'Not kept');
}
