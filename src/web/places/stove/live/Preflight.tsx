/** Before a real cook: cooks that are under way, what must be ready, what this device can do, and the start. */
import { useQuery } from '@tanstack/react-query';
import { useMemo, useState } from 'react';
import { Link, useLocation } from 'wouter';
import type { CookRecord } from '../../../../api/cook.ts';
import { noAlarms } from '../../../../core/advice/alarms/engine.ts';
import type { Kit } from '../../../../core/pan/kit.ts';
import { prepareKit } from '../../../../core/pan/preparedKit.ts';
import { neutraliserOf, neutralisingAmounts } from '../../../../core/planning/account/neutraliser.ts';
import { begunOf } from '../../../../core/planning/begunOf.ts';
import { alkaliFacts } from '../../../../core/planning/handling.ts';
import { type Plan, planFor } from '../../../../core/planning/plan.ts';
import { checksFor } from '../../../../core/planning/preflight.ts';
import { momentText } from '../../../parts/dayText.ts';
import { grams } from '../../../parts/figures.ts';
import { Sources } from '../../../parts/Sources.tsx';
import { Unreached } from '../../../parts/Unreached.tsx';
import { useTitle } from '../../../parts/useTitle.ts';
import { answerTo } from '../../../records/answer.ts';
import { beginCook, cooksHere } from '../../../records/cookLog/openCookLog.ts';
import { reachOf } from '../../../records/reach.ts';
import { freshDraft, keptDraft } from '../../desk/draft.ts';
import { Refused } from '../../desk/Refused.tsx';
import { CapabilityPanel } from '../telling/CapabilityPanel.tsx';
import { useTelling } from '../telling/useTelling.ts';
import { pickUp } from './session.ts';

export default function Preflight() {
  useTitle('Before the heat is on · Stove');
  const outcome = useMemo(() => {
    const draft = keptDraft() ?? freshDraft;
    const kit = draft.kit.good;
    return { kit, planned: planFor(draft.aim.good, prepareKit(kit)), planId: draft.plan?.id ?? null };
  }, []);
  const { planned, kit, planId } = outcome;
  const underWay = useUnderWay();
  return (
    <main id="main" className="stove preflight">
      <header className="strip">
        <div>
          <h1>Before the heat is on</h1>
          <p className="small">A real cook. To try it first without heat or lye, rehearse it.</p>
        </div>
        <Link className="button first-aid" href="/care">
          First aid
        </Link>
      </header>
      <UnderWay {...underWay} />
      {planned.kind === 'refused' ? (
        <>
          <Refused refusals={planned.refusals} />
          <p className="to-desk">
            <Link href="/">Change it on the Desk</Link>
          </p>
        </>
      ) : (
        <Start
          plan={planned.plan}
          kit={kit}
          another={underWay.list.length > 0}
          begin={() => begunOf(planned.plan, kit, { mode: 'live', rehearsal: null, planId })}
        />
      )}
    </main>
  );
}

interface StartProps {
  readonly plan: Plan;
  readonly kit: Kit;
  readonly another: boolean;
  readonly begin: () => ReturnType<typeof begunOf>;
}

function Start({ plan, kit, another, begin }: StartProps) {
  const [, go] = useLocation();
  const [ticked, setTicked] = useState<ReadonlySet<string>>(new Set());
  const [trouble, setTrouble] = useState<string>();
  const telling = useTelling({ alarms: noAlarms, cardKey: '', cardUrgency: 'go on', cardWords: '' });
  const checks = checksFor(plan, another);
  const { charge, alkali } = plan.amounts;
  const { alkali: substance } = plan.request;
  const neutraliser = neutraliserOf(plan, kit);
  const neutralising = neutraliser && neutralisingAmounts(substance, neutraliser);
  const open = checks.filter(({ id }) => !ticked.has(id)).length;
  const start = async () => {
    try {
      const log = await beginCook(begin());
      pickUp(log);
      go(`/stove/cook/${log.cook}`);
    } catch (error) {
      setTrouble(error instanceof Error ? error.message : String(error));
    }
  };
  return (
    <>
      <section aria-labelledby="preflight-plan">
        <h2 id="preflight-plan">{plan.request.name}</h2>
        <p>
          {grams(charge.sucroseKg)} g sugar, {grams(charge.waterKg)} g water, {grams(charge.maltExtractKg)} g dry malt
          extract
          {charge.citricAcidKg > 0 && `, ${grams(charge.citricAcidKg)} g citric acid`} in the pan
          {alkali &&
            `; ${grams(alkali.weighedKg)} g ${alkaliFacts(substance).name} in ${grams(alkali.waterKg)} g of cold water, in ${alkali.parts.length} parts`}
          {neutralising &&
            `; ${grams(neutralising.pureKg)} g ${alkaliFacts(substance).name}, pure, in ${grams(neutralising.waterKg)} g of cold water, to neutralise the syrup when it has cooled`}
          .
        </p>
        <p className="buttons">
          <Link className="button" href="/">
            Change or print it on the Desk
          </Link>
          <Link className="button" href="/stove">
            Rehearse it first
          </Link>
        </p>
      </section>
      <section aria-labelledby="preflight-checks">
        <h2 id="preflight-checks">Ready?</h2>
        <ul className="checks">
          {checks.map(({ id, text }) => (
            <li key={id} data-statement={id}>
              <label>
                <input
                  type="checkbox"
                  checked={ticked.has(id)}
                  onChange={({ target }) =>
                    setTicked((now) => new Set(target.checked ? [...now, id] : [...now].filter((one) => one !== id)))
                  }
                />
                {text}
              </label>
            </li>
          ))}
        </ul>
        <Sources of={checks} />
      </section>
      <CapabilityPanel telling={telling} />
      <p className="small">
        Umberpan advises by a model and by what it is told. It does not watch the stove: you do. Local rules, the safety
        data sheet of your alkali and medical help go before anything it says.
      </p>
      {trouble !== undefined && <p role="alert">The cook could not be begun: {trouble}</p>}
      <p className="buttons">
        <button type="button" className="main start-cook" disabled={open > 0} onClick={() => void start()}>
          Start the cook
        </button>
        <span role="status">{open > 0 && `${open} of ${checks.length} still to be ticked.`}</span>
      </p>
    </>
  );
}

/** Cooks that were begun and not ended, here or on the server. */
function useUnderWay() {
  const here = useQuery({ queryKey: ['cooks', 'here'], queryFn: cooksHere });
  const there = useQuery({
    queryKey: ['cooks', 'server'],
    queryFn: async () => (await answerTo<{ cooks: CookRecord[] }>('/api/cooks')).cooks,
  });
  const open = new Map<string, { readonly name: string; readonly began: string }>();
  for (const { id, name, mode, ended, begun } of there.data ?? [])
    if (ended === null && mode === 'live') open.set(id, { name, began: begun });
  const endedHere = new Set(here.data?.filter(({ ended }) => ended !== null).map(({ id }) => id));
  for (const { id, name, beganAt, ended } of here.data ?? [])
    if (ended === null) open.set(id, { name, began: beganAt });
  return { list: [...open].filter(([id]) => !endedHere.has(id)), reach: reachOf(there.error) };
}

function UnderWay({ list, reach }: ReturnType<typeof useUnderWay>) {
  if (list.length === 0 && reach === 'reached') return null;
  return (
    <section aria-labelledby="under-way">
      <h2 id="under-way">Under way</h2>
      {reach !== 'reached' && (
        <p role="status">
          <Unreached reach={reach} so="only cooks that this device holds are listed." />
        </p>
      )}
      <ul className="under-way">
        {list.map(([id, { name, began }]) => (
          <li key={id}>
            <Link className="button main" href={`/stove/cook/${id}`}>
              Go on: {name}
            </Link>
            <span className="small quiet">begun {momentText(began)}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}
