/** The Stove: a rehearsal of the plan on the Desk, on a simulated pan whose properties nobody is told. */
import { useEffect } from 'react';
import { Link, useSearch } from 'wouter';
import { TemperatureUnitProvider, useTemperatureUnit } from '../../parts/TemperatureUnit.tsx';
import { useTitle } from '../../parts/useTitle.ts';
import { freshDraft, keptDraft } from '../desk/draft.ts';
import { Refused } from '../desk/Refused.tsx';
import { AdviceCard } from './AdviceCard.tsx';
import { anySeed, wishesOf } from './address.ts';
import { ClockControls } from './ClockControls.tsx';
import { cardOf } from './card.ts';
import { DeedButtons } from './DeedButtons.tsx';
import { Frame } from './Frame.tsx';
import { Glance } from './Glance.tsx';
import { RehearsalLine } from './RehearsalLine.tsx';
import { RevealView } from './RevealView.tsx';
import { SoundSwitch } from './SoundSwitch.tsx';
import { actions, type Rehearsed, rehearse } from './session.ts';
import { Unseen } from './Unseen.tsx';
import { useSession } from './useSession.ts';
import './stove.css';

const usualSpeed = 10;

export default function StovePlace() {
  return (
    <TemperatureUnitProvider>
      <Stove />
    </TemperatureUnitProvider>
  );
}

function Stove() {
  const session = useSession();
  const wishes = wishesOf(useSearch());
  const begin = (anew: boolean) => {
    const draft = keptDraft() ?? freshDraft;
    const seed = (anew ? undefined : wishes.seed) ?? anySeed();
    rehearse({ request: draft.aim.good, kit: draft.kit.good, seed, speed: wishes.speed ?? usualSpeed }, anew);
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: once, when the place is opened; what the Desk holds can't change meanwhile
  useEffect(() => {
    begin(false);
    // Nobody is at a stove that is out of view.
    return () => actions.run(false);
  }, []);

  const ready = session.kind === 'ready' ? session.rehearsed : undefined;
  useTitle(ready ? `Rehearsal: ${ready.planned.plan.request.name} · Stove` : 'Rehearsal · Stove');
  return (
    <main id="main" className="stove">
      <Frame planned={ready?.planned} />
      {session.kind === 'refused' && (
        <>
          <Refused refusals={session.refusals} />
          <p className="to-desk">
            <Link href="/">Change it on the Desk</Link>
          </p>
        </>
      )}
      {session.kind === 'failed' && <p role="alert">This could not be computed: {session.message}</p>}
      {(session.kind === 'none' || session.kind === 'preparing') && (
        <p className="preparing" role="status">
          The hidden pan and its twin are being made.
        </p>
      )}
      {ready && <Rehearsal rehearsed={ready} onAgain={() => begin(true)} />}
    </main>
  );
}

function Rehearsal({ rehearsed, onAgain }: { readonly rehearsed: Rehearsed; readonly onAgain: () => void }) {
  const { unit } = useTemperatureUnit();
  const { planned, view, reveal } = rehearsed;
  const { kit, plan } = planned;
  const { notch, progress } = view;
  const cook = { kit, steps: plan.steps, notch, partsGiven: progress.partsGiven, stepIndex: progress.stepIndex };
  const card = cardOf(view, cook, rehearsed.ahead, unit);
  return (
    <>
      {reveal ? (
        <RevealView reveal={reveal} seed={planned.seed} members={planned.members} onAgain={onAgain} />
      ) : (
        <div className="cooking">
          <Glance view={view} steps={plan.steps} />
          <AdviceCard card={card} aside={view.aside} />
          <ClockControls view={view} />
          <SoundSwitch cardKey={card.key} urgency={card.urgency} />
          <DeedButtons view={view} cook={cook} />
        </div>
      )}
      <div className="watching">
        {!reveal && <Unseen view={view} />}
        <RehearsalLine rehearsed={rehearsed} />
        {!reveal && (
          <p className="buttons ending">
            <button type="button" onClick={onAgain}>
              Start over on another pan
            </button>
          </p>
        )}
      </div>
    </>
  );
}
