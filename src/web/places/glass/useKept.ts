/** Keeping the glass on the server and opening another: what became of it, what to undo, and a conflict when somebody else was first. */

import { useEffect, useState } from 'react';
import { useLocation, useRoute } from 'wouter';
import type { GlassRecord } from '../../../api/glass.ts';
import type { Notice } from '../../parts/NoticeLine.tsx';
import { ProblemError } from '../../records/answer.ts';
import { failureOf } from '../../records/failureOf.ts';
import { reachOf } from '../../records/reach.ts';
import { fetchGlass, useGlasses, useKeepGlass } from '../../records/useGlasses.ts';
import { freshDraft, type GlassDraft, isFresh, isKept, opened } from './draft.ts';
import { useTakeAway } from './useTakeAway.ts';

export function useKept(draft: GlassDraft, setDraft: (change: GlassDraft | ((now: GlassDraft) => GlassDraft)) => void) {
  const glasses = useGlasses();
  const keeping = useKeepGlass();
  const [notice, setNotice] = useState<Notice>();
  const [conflict, setConflict] = useState<GlassRecord>();
  const [, go] = useLocation();
  const [, params] = useRoute('/glass/:id');
  const asked = params?.id;
  const baseId = draft.base?.id;
  const isOpen = asked === baseId;

  function show(record: GlassRecord) {
    const before = draft;
    lay(opened(record));
    if (isKept(before) || isFresh(before)) return;
    const says = `Opened “${record.glass.name}”. What was in the glass before was not kept.`;
    setNotice({ says, undo: () => lay(before) });
  }

  /** Lays another draft before one, and what was said of the one before is over. */
  function lay(next: GlassDraft, { replace = false } = {}) {
    setConflict(undefined);
    setNotice(undefined);
    setDraft(next);
    // Opened by its address, it is there already: that is no further step back.
    go(next.base ? `/glass/${next.base.id}` : '/glass', { replace: replace || asked === next.base?.id });
  }

  // The address names a glass: it is opened; or it names none and one is open: it follows.
  // biome-ignore lint/correctness/useExhaustiveDependencies: what is shown then is the newest
  useEffect(() => {
    if (isOpen) return;
    if (asked === undefined) {
      go(`/glass/${baseId}`, { replace: true });
      return;
    }
    let still = true;
    fetchGlass(asked)
      .then((record) => still && show(record))
      .catch((error) => still && setNotice({ says: failureOf(error, 'Not opened') }));
    return () => {
      still = false;
    };
  }, [asked, isOpen]);

  // Changed elsewhere, and not here: it is followed. Changed here too, keeping tells of the conflict.
  const newest = glasses.data?.find(({ id }) => id === baseId);
  useEffect(() => {
    if (!newest) return;
    setDraft((now) =>
      now.base?.id === newest.id && now.base.version < newest.version && isKept(now) ? opened(newest) : now,
    );
  }, [newest, setDraft]);

  const send = (base: { readonly id: string; readonly version: number } | undefined) =>
    keeping.mutate(
      { glass: draft.sheet.good, base },
      {
        onSuccess(record) {
          setConflict(undefined);
          setNotice({ says: `Kept “${record.glass.name}”.` });
          // What was typed while the answer was on its way stays.
          setDraft((now) => ({ ...now, base: { id: record.id, version: record.version, glass: record.glass } }));
          go(`/glass/${record.id}`, { replace: base !== undefined });
        },
        onError: (error) => refuse(error, 'Not kept'),
      },
    );

  function refuse(error: unknown, what: string) {
    const left = error instanceof ProblemError ? error.problem.current : undefined;
    const current = left && 'glass' in left ? left : undefined;
    setConflict(current);
    setNotice(current ? undefined : { says: failureOf(error, what) });
  }

  const { remove, isBusy } = useTakeAway({ draft, lay, setNotice, refuse });

  return {
    glasses: glasses.data ?? [],
    reach: reachOf(glasses.failureReason),
    kept: isKept(draft),
    busy: keeping.isPending || isBusy,
    notice,
    conflict,
    keep: () => send(draft.base ?? undefined),
    keepAsNew: () => send(undefined),
    takeTheirs: () => conflict && show(conflict),
    keepMine: () => conflict && send({ id: conflict.id, version: conflict.version }),
    say: setNotice,
    open: show,
    lay,
    remove,
    empty() {
      const before = draft;
      lay(freshDraft);
      if (!isKept(before)) setNotice({ says: 'A new beer.', undo: () => lay(before) });
    },
  };
}

export type Keeping = ReturnType<typeof useKept>;
