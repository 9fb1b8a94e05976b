/** The draft in hand, kept over reloads, with the saved kits it may follow. */
import { useEffect, useState } from 'react';
import type { KitRecord } from '../../../api/kit.ts';
import { type Draft, freshDraft, keepDraft, keptDraft, kitIsChanged, withKit } from './draft.ts';
import { entryDraft } from './entryDraft.ts';

export function useDraft(kits: readonly KitRecord[] | undefined) {
  const [start] = useState(() => entryDraft() ?? keptDraft());
  const [draft, setDraft] = useState<Draft>(start ?? freshDraft);

  useEffect(() => keepDraft(draft), [draft]);

  // A kit changed elsewhere is followed, unless it is being changed here too: then saving tells of the conflict.
  useEffect(() => {
    if (!kits) return;
    setDraft((now) => {
      const record = kits.find(({ id }) => id === now.base?.id);
      if (record && record.version !== now.base?.version && !kitIsChanged(now)) return withKit(now, record);
      const first = kits[0];
      return !start && !now.base && !kitIsChanged(now) && first ? withKit(now, first) : now;
    });
  }, [kits, start]);

  return [draft, setDraft] as const;
}
