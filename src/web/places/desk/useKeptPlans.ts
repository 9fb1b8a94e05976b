/** Saving the plan on the Desk, opening a saved one (also from the address), taking one away and back. */
import { useEffect, useEffectEvent, useRef, useState } from 'react';
import { useSearchParams } from 'wouter';
import type { KitRecord } from '../../../api/kit.ts';
import type { PlanRecord } from '../../../api/plan.ts';
import { ProblemError } from '../../records/answer.ts';
import { newId } from '../../records/newId.ts';
import { fetchPlan, useRemovePlan, useSavePlan } from '../../records/usePlans.ts';
import { type Draft, isSaved, withPlan } from './draft.ts';
import { failureOf } from './useKeptKits.ts';

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

  const address = (id: string | undefined) => setParams(id ? { plan: id } : {}, { replace: true });

  function open(plan: PlanRecord) {
    const left = before.current;
    setDraft((now) => withPlan(now, plan, kits ?? []));
    address(plan.id);
    const says = `Opened “${plan.request.name}”.`;
    const back = () => {
      setDraft(() => left);
      address(undefined);
      setNotice(undefined);
    };
    setNotice(
      isSaved(left) ? { says, whileSaved: true } : { says, undo: { name: 'Back to what was here', run: back } },
    );
  }

  const openAsked = useEffectEvent(open);
  const refuseAsked = useEffectEvent((error: unknown) =>
    setNotice({ says: error instanceof ProblemError ? error.message : failureOf(error) }),
  );
  const leaveAddress = useEffectEvent(() => address(undefined));

  // The address may name a plan: on arrival, and when the person walks back and forth.
  useEffect(() => {
    if (!asked || !kits || before.current.plan?.id === asked) return;
    let wanted = true;
    fetchPlan(asked).then(
      (plan) => wanted && openAsked(plan),
      (error) => wanted && refuseAsked(error),
    );
    return () => {
      wanted = false;
    };
  }, [asked, kits]);

  // Once something is changed, the address is no longer that of the saved plan; a reload must not undo the change.
  useEffect(() => {
    if (draft.plan && !saved && asked === draft.plan.id) leaveAddress();
  }, [draft.plan, saved, asked]);

  function save() {
    const plan = { kitId: draft.base?.id ?? null, request: draft.aim.good };
    saving.mutate(
      { id: newId(), plan },
      {
        onSuccess(record) {
          setDraft((now) => ({ ...now, plan: record }));
          address(record.id);
          setNotice({ says: `Saved “${record.request.name}”.`, whileSaved: true });
        },
        onError: (error) => setNotice({ says: failureOf(error) }),
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
        if (asked === id) address(undefined);
        setNotice({ says: `Deleted “${request.name}”.`, undo: { name: 'Undo', run: putBack } });
      },
      onError: (error) => setNotice({ says: failureOf(error).replace('Not saved', 'Not deleted') }),
    });
  }

  const current = notice?.whileSaved && !saved ? undefined : notice;
  return { saved, saving: saving.isPending, notice: current, open, save, remove };
}
