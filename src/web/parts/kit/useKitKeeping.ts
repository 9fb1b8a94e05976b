/** Keeping a kit's changes: as a change of the saved one, or as another kit; and the conflict when somebody else was first. */
import { useState } from 'react';
import type { KitRecord } from '../../../api/kit.ts';
import type { Kit } from '../../../core/pan/kit.ts';
import { ProblemError } from '../../records/answer.ts';
import { failureOf } from '../../records/failureOf.ts';
import { useSaveKit } from '../../records/useKits.ts';
import { kitToKeep } from './kitToKeep.ts';

/** The saved kit that one in hand was made from. */
export type KitBase = Pick<KitRecord, 'id' | 'version' | 'kit'>;

export interface KitKeeping {
  readonly changed: boolean;
  readonly isSaved: boolean;
  readonly message: string | undefined;
  /** The kit as somebody else left it. */
  readonly conflict: KitRecord | undefined;
  save(): void;
  saveAsNew(): void;
  takeTheirs(): void;
  keepMine(): void;
}

export interface KitInHand {
  readonly kit: Kit;
  readonly base: KitBase | null;
  readonly changed: boolean;
  /** It was saved; what was typed while the answer was on its way should stay. */
  readonly saved: (record: KitRecord) => void;
  readonly theirs: (record: KitRecord) => void;
}

export function useKitKeeping({ kit, base, changed, saved, theirs }: KitInHand): KitKeeping {
  const saving = useSaveKit();
  const [message, setMessage] = useState<string>();
  const [conflict, setConflict] = useState<KitRecord>();

  const send = (from: KitBase | null, over: KitBase | undefined) =>
    saving.mutate(
      { kit: kitToKeep(kit, from?.kit), base: over },
      {
        onSuccess(record) {
          setConflict(undefined);
          setMessage(`Saved “${record.kit.name}”.`);
          saved(record);
        },
        onError(error) {
          const left = error instanceof ProblemError ? error.problem.current : undefined;
          const current = left && 'kit' in left ? left : undefined;
          setConflict(current);
          setMessage(current ? undefined : failureOf(error, 'Not saved'));
        },
      },
    );

  return {
    changed,
    isSaved: base !== null,
    message,
    conflict,
    save: () => send(base, base ?? undefined),
    saveAsNew: () => send(base, undefined),
    takeTheirs() {
      if (conflict) theirs(conflict);
      setConflict(undefined);
    },
    keepMine: () => conflict && send(conflict, conflict),
  };
}
