/** All that the Desk holds together: the draft, its fields, the newest plan, and what is kept on the server. */
import { useEffect, useMemo, useState } from 'react';
import type { Kit } from '../../../core/pan/kit.ts';
import type { PlanRequest } from '../../../core/planning/request.ts';
import { replaced, rewritten, troubles, typed } from '../../parts/entry.ts';
import { kitEntries } from '../../parts/kit/kitEntries.ts';
import { useTemperatureUnit } from '../../parts/TemperatureUnit.tsx';
import { reachOf } from '../../records/reach.ts';
import { useKits } from '../../records/useKits.ts';
import { usePlans } from '../../records/usePlans.ts';
import { aimEntries, temperatureFields, typedAim } from './aimEntries.ts';
import { withKit } from './draft.ts';
import { sentence } from './sentence.ts';
import { useDraft } from './useDraft.ts';
import { useKeptKits } from './useKeptKits.ts';
import { useKeptPlans } from './useKeptPlans.ts';
import { usePlanner } from './usePlanner.ts';

const none: readonly never[] = [];

export function useDesk() {
  const { unit } = useTemperatureUnit();
  const kits = useKits();
  const plans = usePlans();
  const [draft, setDraft] = useDraft(kits.data);
  const keeping = useKeptKits(draft, setDraft);
  // Without a server a plan named in the address can't be had anyway.
  const kept = useKeptPlans(draft, setDraft, kits.data);
  const planning = usePlanner(draft.aim.good, draft.kit.good);

  const aims = useMemo(() => aimEntries(unit), [unit]);
  const facts = useMemo(() => kitEntries(unit), [unit]);
  const [writtenIn, setWrittenIn] = useState(unit);
  useEffect(() => {
    if (writtenIn === unit) return;
    setWrittenIn(unit);
    const before = { aim: aimEntries(writtenIn), kit: kitEntries(writtenIn) };
    setDraft((now) => ({
      ...now,
      aim: rewritten(now.aim, before.aim, temperatureFields),
      kit: rewritten(now.kit, before.kit, ['roomC']),
    }));
  }, [unit, writtenIn, setDraft]);

  const refused = planning.outcome?.kind === 'refused' ? planning.outcome.refusals : [];
  const refusals = Object.fromEntries(refused.map(({ field, message }) => [field, sentence(message, unit)]));
  const plan = planning.outcome?.kind === 'plan' ? planning.outcome.picture.plan : undefined;
  const hints = Object.fromEntries(
    (plan?.cautions ?? []).map(({ field, message }) => [field, sentence(message, unit)]),
  );
  const wrong = Object.keys(troubles(draft.aim, aims)).length > 0 || Object.keys(troubles(draft.kit, facts)).length > 0;

  return {
    draft,
    aims,
    facts,
    planning,
    refusals,
    hints,
    labelOf: (field: string) => aims[field as keyof typeof aims]?.label ?? facts[field]?.label ?? 'Pan material',
    /** A field can't be read: what is shown is the last plan that could be made. */
    wrong,
    kits: kits.data ?? none,
    plans: plans.data ?? none,
    reach: reachOf(kits.failureReason),
    keeping,
    kept,
    typeAim: (field: string, text: string) =>
      setDraft((now) => ({ ...now, aim: typedAim(now.aim, aims, field, text) })),
    /** What was typed into the fields that change gives way. */
    changeAim: (change: Partial<PlanRequest>) => setDraft((now) => ({ ...now, aim: replaced(now.aim, change) })),
    /** All of the aim at once, as it was found; what was typed gives way. */
    takeRequest: (good: PlanRequest) => setDraft((now) => ({ ...now, aim: { good, texts: {} } })),
    typeKit: (field: string, text: string) => setDraft((now) => ({ ...now, kit: typed(now.kit, facts, field, text) })),
    changeKit: (kit: Kit) => setDraft((now) => ({ ...now, kit: { ...now.kit, good: kit } })),
    chooseKit(id: string) {
      const record = kits.data?.find((each) => each.id === id);
      if (record) setDraft((now) => withKit(now, record));
    },
  };
}
