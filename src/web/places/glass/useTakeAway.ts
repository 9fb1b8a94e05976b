/** Taking the open glass away with its tastings, and putting all of it back. */
import type { Notice } from '../../parts/NoticeLine.tsx';
import { failureOf } from '../../records/failureOf.ts';
import { type TakenAway, usePutBackGlass, useRemoveGlass } from '../../records/useGlasses.ts';
import { freshDraft, type GlassDraft } from './draft.ts';

interface TakeAway {
  readonly draft: GlassDraft;
  readonly lay: (draft: GlassDraft) => void;
  readonly setNotice: (notice: Notice) => void;
  /** Tells why it was not done, and of a glass that was changed elsewhere. */
  readonly refuse: (error: unknown, what: string) => void;
}

export function useTakeAway({ draft, lay, setNotice, refuse }: TakeAway) {
  const removing = useRemoveGlass();
  const puttingBack = usePutBackGlass();

  /** What was changed of it since it was kept goes too, and comes back with it. */
  function remove() {
    const before = draft;
    if (!before.base) return;
    removing.mutate(before.base, {
      onSuccess(taken) {
        lay(freshDraft);
        const undo = () => putBack(taken, before);
        setNotice({ says: `Taken away “${taken.glass.glass.name}”${withTastings(taken)}.`, undo });
      },
      onError: (error) => refuse(error, 'Not taken away'),
    });
  }

  function putBack(taken: TakenAway, before: GlassDraft) {
    puttingBack.mutate(taken, {
      onSuccess({ id, version, glass }) {
        lay({ ...before, base: { id, version, glass } });
        setNotice({ says: `“${glass.name}” is there again.` });
      },
      onError: (error) =>
        setNotice({ says: failureOf(error, 'Not put back whole'), undo: () => putBack(taken, before) }),
    });
  }

  return { remove, isBusy: removing.isPending || puttingBack.isPending };
}

function withTastings({ tastings: { length } }: TakenAway): string {
  if (length === 0) return '';
  return length === 1 ? ' with its tasting' : ` with its ${length} tastings`;
}
