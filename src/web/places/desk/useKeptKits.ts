/** Keeping a kit's changes: as a change of the saved one, or as another kit; and the conflict when somebody else was first. */
import { useState } from 'react';
import type { KitRecord } from '../../../api/kit.ts';
import { ProblemError } from '../../records/answer.ts';
import { failureOf } from '../../records/failureOf.ts';
import { useSaveKit } from '../../records/useKits.ts';
import { type Draft, kitIsChanged, withKit } from './draft.ts';

export interface KeptKits {
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

export function useKeptKits(draft: Draft, setDraft: (change: (draft: Draft) => Draft) => void): KeptKits {
  const saving = useSaveKit();
  const [message, setMessage] = useState<string>();
  const [conflict, setConflict] = useState<KitRecord>();
  const kit = draft.kit.good;

  const send = (base: { readonly id: string; readonly version: number } | undefined) =>
    saving.mutate(
      { kit, base },
      {
        onSuccess(saved) {
          setConflict(undefined);
          setMessage(`Saved “${saved.kit.name}”.`);
          // What was typed while the answer was on its way stays.
          setDraft((now) => ({ ...now, base: { id: saved.id, version: saved.version, kit: saved.kit } }));
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
    changed: kitIsChanged(draft),
    isSaved: draft.base !== null,
    message,
    conflict,
    save: () => send(draft.base ?? undefined),
    saveAsNew: () => send(undefined),
    takeTheirs() {
      if (conflict) setDraft((now) => withKit(now, conflict));
      setConflict(undefined);
    },
    keepMine: () => conflict && send({ id: conflict.id, version: conflict.version }),
  };
}
