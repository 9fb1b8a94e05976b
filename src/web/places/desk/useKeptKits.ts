/** The kit on the Desk, kept. */
import { type KitKeeping, useKitKeeping } from '../../parts/kit/useKitKeeping.ts';
import { type Draft, kitIsChanged, withKit } from './draft.ts';

export function useKeptKits(draft: Draft, setDraft: (change: (draft: Draft) => Draft) => void): KitKeeping {
  return useKitKeeping({
    kit: draft.kit.good,
    base: draft.base,
    changed: kitIsChanged(draft),
    // What was typed while the answer was on its way stays; what is known of the kit is what was saved.
    saved: (record) =>
      setDraft((now) => {
        const { learned: _, ...typed } = now.kit.good;
        const { learned } = record.kit;
        const good = learned ? { ...typed, learned } : typed;
        return { ...now, kit: { ...now.kit, good }, base: { id: record.id, version: record.version, kit: record.kit } };
      }),
    theirs: (record) => setDraft((now) => withKit(now, record)),
  });
}
