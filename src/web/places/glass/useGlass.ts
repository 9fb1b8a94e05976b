/** All that the Glass holds together: the draft with its fields, the lots, and the beer that it makes. */
import { useEffect, useMemo, useState } from 'react';
import { glassOf, type KeptDose, type KeptGlass, type KeptSugar } from '../../../core/beer/keptGlass.ts';
import { rewritten, type Sheet, troubles, typed } from '../../parts/entry.ts';
import { fetchPlan } from '../../records/usePlans.ts';
import { doseEntries, type PrintedAs, withDose } from './doseEntries.ts';
import { freshDraft, type GlassDraft, keepDraft, keptDraft, usualPrints } from './draft.ts';
import { restEntries } from './restEntries.ts';
import { usualDoseKg } from './sentLot.ts';
import type { GlassUnits } from './shown.ts';
import { alkaliOfPlan, glassLot, newBoughtSugar } from './sugars.ts';
import { useGlassUnits } from './useGlassUnits.ts';
import { useShelf } from './useShelf.ts';

export function useGlass() {
  const [start] = useState(() => keptDraft() ?? { draft: freshDraft, as: usualPrints, lots: [] });
  const [draft, setDraft] = useState<GlassDraft>(start.draft);
  const { units, choose } = useGlassUnits();
  const [as, setAs] = useState<PrintedAs>(start.as);
  const { lots, reach } = useShelf(start.lots);
  const { good } = draft.sheet;
  useEffect(() => keepDraft({ draft, as, lots }), [draft, as, lots]);

  const entriesFor = (units: GlassUnits, as: PrintedAs, glass = good) => ({
    ...restEntries(units),
    ...doseEntries(glass, units, as),
  });
  const entries = entriesFor(units, as);
  const poured = useMemo(() => glassOf(good, (id) => glassLot(lots, id)), [good, lots]);

  const change = (make: (glass: KeptGlass) => KeptGlass) =>
    setDraft((now) => ({ ...now, sheet: { ...now.sheet, good: make(now.sheet.good) } }));
  const replace = (glass: KeptGlass) => setDraft((now) => ({ ...now, sheet: { good: glass, texts: {} } }));
  const setDoses = (doses: readonly KeptDose[]) => {
    setDraft((now) => ({ ...now, sheet: withDoses(now.sheet, doses) }));
    for (const { sugar } of doses) void askAlkali(sugar);
  };

  /** What alkali went into a lot, it says itself; of an early one its plan does. */
  async function askAlkali(sugar: KeptSugar): Promise<void> {
    if (sugar.kind !== 'lot' || sugar.alkali !== null) return;
    const lot = lots.find(({ id }) => id === sugar.lotId)?.lot;
    const alkali = lot?.alkali ?? (await alkaliByPlan(lot?.planId));
    if (!alkali) return;
    const tell = (dose: KeptDose): KeptDose =>
      dose.sugar.kind === 'lot' && dose.sugar.lotId === sugar.lotId && dose.sugar.alkali === null
        ? { ...dose, sugar: { ...dose.sugar, alkali } }
        : dose;
    change((glass) => ({ ...glass, doses: glass.doses.map(tell) }));
  }

  const rewrite = (units_: GlassUnits, as_: PrintedAs) =>
    setDraft((now) => {
      const before = entriesFor(units_, as_, now.sheet.good);
      return { ...now, sheet: rewritten(now.sheet, before, Object.keys(before)) };
    });

  return {
    draft,
    setDraft,
    entries,
    units,
    as,
    lots,
    reach,
    poured,
    wrong: Object.keys(troubles(draft.sheet, entries)).length > 0,
    type: (field: string, text: string) =>
      setDraft((now) => ({ ...now, sheet: typed(now.sheet, entriesFor(units, as, now.sheet.good), field, text) })),
    change,
    replace,
    setDoses,
    chooseUnits(change: Partial<GlassUnits>) {
      rewrite(units, as);
      choose(change);
    },
    printedAs(change: Partial<PrintedAs>) {
      rewrite(units, as);
      setAs({ ...as, ...change });
    },
    changeDose: (at: number, dose: Partial<KeptDose>) => change((glass) => withDose(glass, at, dose)),
    chooseSugar: (at: number, sugar: KeptSugar) =>
      setDoses(good.doses.map((dose, i) => (i === at ? { ...dose, sugar } : dose))),
    addSugar: (sugar: KeptSugar = newBoughtSugar) =>
      setDoses([...good.doses, { sugar, massKg: usualDoseKg, added: 'kettle' }]),
    removeDose: (at: number) => setDoses(good.doses.filter((_, i) => i !== at)),
  };
}

async function alkaliByPlan(planId: string | null | undefined) {
  const plan = planId ? await fetchPlan(planId).catch(() => undefined) : undefined;
  return plan && alkaliOfPlan(plan);
}

/** Fields carry the place of their sugar: when the places move, their texts are written anew. */
function withDoses({ good, texts }: Sheet<KeptGlass>, doses: readonly KeptDose[]): Sheet<KeptGlass> {
  const others = Object.entries(texts).filter(([field]) => !field.startsWith('doses.'));
  return { good: { ...good, doses }, texts: Object.fromEntries(others) };
}

export type GlassHand = ReturnType<typeof useGlass>;
