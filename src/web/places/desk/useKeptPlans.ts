/** Saving the plan on the Desk, opening a saved one (also from the address), taking one away and back. */
import { useEffect, useEffectEvent, useRef, useState } from 'react';
import { useSearchParams } from 'wouter';
import type { KitRecord } from '../../../api/kit.ts';
import type { PlanRecord } from '../../../api/plan.ts';
import { failureOf } from '../../records/failureOf.ts';
import { newId } from '../../records/newId.ts';
import { reachOf } from '../../records/reach.ts';
import { fetchPlan, useRemovePlan, useSavePlan } from '../../records/usePlans.ts';
import { type Draft, holdsPlan, isSaved, withPlan } from './draft.ts';
import { entryDraft, keepInEntry } from './entryDraft.ts';

/** Something that was done, and how to take it back. */
export interface Notice {
  readonly says: string;
  /** True of what is saved alone: a change on the Desk ends it. */
  readonly whileSaved?: true;
  readonly undo?: { readonly name: string; run(): void };
}

type SetDraft = (change: (draft: Draft) => Draft) => void;

export function useKeptPlans(draft: Draft, setDraft: SetDraft, kits: readonly KitRecord[] | undefined) {
  const [params, setParams] = useSearchParams();
  const asked = params.get('plan');
  const saving = useSavePlan();
  const removing = useRemovePlan();
  const [notice, setNotice] = useState<Notice>();
  const before = useRef(draft);
  before.current = draft;
  const saved = isSaved(draft);

  /** A new entry of the history, so that Back leads to what was here before. */
  const goTo = (id: string | undefined) => setParams(id ? { plan: id } : {});
  /** The same entry under another address. */
  const rename = (id: string | undefined) => setParams(id ? { plan: id } : {}, { replace: true, state: history.state });

  function open(plan: PlanRecord) {
    if (plan.id === asked && holdsPlan(before.current, kits ?? [])) return;
    goTo(plan.id);
    put(plan, () => history.back());
  }

  /** @param back leads to what was on the Desk before */
  function put(plan: PlanRecord, back: () => void) {
    const left = before.current;
    setDraft((now) => withPlan(now, plan, kits ?? []));
    const says = `Opened “${plan.request.name}”.`;
    const undo = { name: 'Back to what was here', run: back };
    setNotice(isSaved(left) ? { says, whileSaved: true } : { says, undo });
  }

  const putAsked = useEffectEvent((plan: PlanRecord) => {
    const left = before.current;
    put(plan, () => {
      goTo(undefined);
      setDraft(() => left);
      setNotice(undefined);
    });
  });
  const refuseAsked = useEffectEvent((error: unknown) => {
    const stay = () => {
      rename(undefined);
      setNotice(undefined);
    };
    setNotice({
      says: isUnknown(error)
        ? `There is no saved plan “${asked?.slice(0, 36)}”: it was deleted, or its address is incomplete. Below is what this Desk last had; your saved plans are listed after the kit.`
        : failureOf(error, 'Not opened'),
      undo: { name: 'Go on with this plan', run: stay },
    });
  });

  // What this browser remembers as saved may be deleted by now.
  useEffect(() => {
    const remembered = before.current.plan?.id;
    if (!remembered) return;
    fetchPlan(remembered).catch((error) => {
      if (!isUnknown(error)) return;
      setDraft((now) => (now.plan?.id === remembered ? { ...now, plan: null } : now));
    });
  }, [setDraft]);

  // The address may name a plan that is not on the Desk yet.
  useEffect(() => {
    if (!asked || !kits || before.current.plan?.id === asked) return;
    let wanted = true;
    fetchPlan(asked).then(
      (plan) => wanted && putAsked(plan),
      (error) => wanted && refuseAsked(error),
    );
    return () => {
      wanted = false;
    };
  }, [asked, kits]);

  // A changed plan is no longer the one of the address: it gets an entry of its own, and Back leads to the plan as saved.
  const follow = useEffectEvent((now: Draft) => {
    if (now.plan && now.plan.id === asked && !holdsPlan(now, kits ?? [])) goTo(undefined);
    keepInEntry(now);
  });
  useEffect(() => follow(draft), [draft]);

  // Back and Forward bring back what was on the Desk. First of all listeners: the address and the draft must change at once.
  const restore = useEffectEvent(() => {
    const there = entryDraft();
    if (there) setDraft(() => there);
    setNotice(undefined);
  });
  useEffect(() => {
    const listener = () => restore();
    window.addEventListener('popstate', listener, { capture: true });
    return () => window.removeEventListener('popstate', listener, { capture: true });
  }, []);

  function save() {
    const plan = { kitId: draft.base?.id ?? null, request: draft.aim.good };
    saving.mutate(
      { id: newId(), plan },
      {
        onSuccess(record) {
          setDraft((now) => ({ ...now, plan: record }));
          rename(record.id);
          setNotice({ says: `Saved “${record.request.name}”.`, whileSaved: true });
        },
        onError: (error) => setNotice({ says: failureOf(error, 'Not saved') }),
      },
    );
  }

  function remove(plan: PlanRecord) {
    const { id, kitId, request } = plan;
    const putBack = () => {
      saving.mutate({ id, plan: { kitId, request } });
      setNotice(undefined);
    };
    removing.mutate(plan, {
      onSuccess() {
        setDraft((now) => (now.plan?.id === id ? { ...now, plan: null } : now));
        if (asked === id) rename(undefined);
        setNotice({ says: `Deleted “${request.name}”.`, undo: { name: 'Undo', run: putBack } });
      },
      onError: (error) => setNotice({ says: failureOf(error, 'Not deleted') }),
    });
  }

  const current = notice?.whileSaved && !saved ? undefined : notice;
  return { saved, saving: saving.isPending, notice: current, open, save, remove };
}

function isUnknown(error: unknown): boolean {
  return reachOf(error) === 'reached';
}
