/** The Desk: from an aim and a kit to a plan, at once. */
import { useDeferredValue, useState } from 'react';
import { useSearch } from 'wouter';
import { TemperatureUnitProvider } from '../../parts/TemperatureUnit.tsx';
import { useTitle } from '../../parts/useTitle.ts';
import { Actions } from './Actions.tsx';
import { AimForm } from './AimForm.tsx';
import { useBehind } from './behind/useBehind.ts';
import { FieldPlace } from './field/FieldPlace.tsx';
import { KitForm } from './KitForm.tsx';
import { PlanView } from './PlanView.tsx';
import { PrintSheet } from './PrintSheet.tsx';
import { Refused } from './Refused.tsx';
import { SavedPlans } from './SavedPlans.tsx';
import { useDesk } from './useDesk.ts';
import { ColourWish, sentWish } from './wish/ColourWish.tsx';
import './desk.css';

export default function DeskPlace() {
  return (
    <TemperatureUnitProvider>
      <Desk />
    </TemperatureUnitProvider>
  );
}

function Desk() {
  const desk = useDesk();
  const { draft, kept, planning } = desk;
  const { outcome, bands, account } = planning;
  // The sheet for paper is not seen yet: it may come a moment after the screen.
  const sheet = useDeferredValue(planning);
  const { name, massKg, form, route } = draft.aim.good;
  const possible = outcome?.kind === 'plan' && !desk.wrong;
  useTitle(`${name} · Desk`);
  const laying = useBehind(desk.plans, desk.kits, {
    kit: draft.kit.good,
    kitId: draft.base?.id,
    savedId: kept.saved ? draft.plan?.id : undefined,
  });
  const query = useSearch();
  const [wished, setWished] = useState(() => sentWish(query));

  return (
    <main id="main" className="desk">
      <header className="heading">
        <h1>{name}</h1>
        <p className="quiet">
          {(massKg * 1000).toFixed(0)} g, {form}, {route} route, cooked with {draft.kit.good.name}
        </p>
        <Actions
          saved={kept.saved}
          saving={kept.saving}
          possible={possible}
          reach={desk.reach}
          notice={kept.notice}
          onSave={kept.save}
        />
      </header>
      <div className="entering">
        <ColourWish request={draft.aim.good} kit={draft.kit.good} onFound={desk.takeRequest} onWish={setWished} />
        <AimForm
          sheet={draft.aim}
          entries={desk.aims}
          refusals={desk.refusals}
          hints={desk.hints}
          onText={desk.typeAim}
          onChange={desk.changeAim}
        />
        <KitForm
          sheet={draft.kit}
          entries={desk.facts}
          refusals={desk.refusals}
          onText={desk.typeKit}
          onChange={desk.changeKit}
          kits={desk.kits}
          chosen={draft.base?.id}
          onChoose={desk.chooseKit}
          keeping={desk.keeping}
        />
        <SavedPlans plans={desk.plans} openId={draft.plan?.id} onOpen={kept.open} onRemove={kept.remove} />
      </div>
      <FieldPlace request={draft.aim.good} kit={draft.kit.good} wished={wished} onChoose={desk.changeAim} />
      {outcome?.kind === 'refused' && <Refused refusals={outcome.refusals} labelOf={desk.labelOf} />}
      {outcome?.kind === 'failed' && (
        <p className="refused" role="alert">
          This cook could not be computed to its end. Change the aim or the kit and it is tried again at once.
          <span className="small quiet"> {outcome.message}</span>
        </p>
      )}
      {outcome?.kind === 'plan' && (
        <>
          <PlanView
            picture={outcome.picture}
            bands={bands}
            account={account}
            laying={laying}
            kit={draft.kit.good}
            kitId={draft.base?.id}
            stale={desk.wrong}
            request={draft.aim.good}
            onChange={desk.changeAim}
          />
          {sheet.outcome?.kind === 'plan' && (
            <PrintSheet
              picture={sheet.outcome.picture}
              bands={sheet.bands}
              account={sheet.account}
              kit={draft.kit.good}
            />
          )}
        </>
      )}
      {outcome === undefined && <div className="picture waiting" role="status" aria-label="Computing the plan" />}
    </main>
  );
}
