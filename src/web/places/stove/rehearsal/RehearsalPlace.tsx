/** A rehearsal of the plan on the Desk, on a simulated pan whose properties nobody is told. */
import { type ReactNode, useEffect, useState, useSyncExternalStore } from 'react';
import { Link, useSearch } from 'wouter';
import { useCookUnderWay } from '../../../parts/cookUnderWay.ts';
import { useTitle } from '../../../parts/useTitle.ts';
import { freshDraft, keptDraft } from '../../desk/draft.ts';
import { Refused } from '../../desk/Refused.tsx';
import { ActsProvider } from '../acts.ts';
import { CookLine } from '../CookLine.tsx';
import { CookView } from '../CookView.tsx';
import type { Cooked } from '../cooked.ts';
import { FoamButton } from '../FoamButton.tsx';
import { anySeed, wishesOf } from './address.ts';
import { ClockControls } from './ClockControls.tsx';
import { Frame } from './Frame.tsx';
import { RevealView } from './RevealView.tsx';
import { SurprisesChoice } from './SurprisesChoice.tsx';
import { acts, clockActs, rehearse, sessionNow, subscribe } from './session.ts';

const usualSpeed = 10;

export function RehearsalPlace() {
  const session = useSyncExternalStore(subscribe, sessionNow);
  const wishes = wishesOf(useSearch());
  const ready = session.kind === 'ready' ? session.cooked : undefined;
  const [surprises, setSurprises] = useState(ready?.planned.begun.rehearsal?.surprises ?? false);
  const begin = (anew: boolean, seed = anySeed(), surprised = surprises) => {
    const draft = keptDraft() ?? freshDraft;
    const speed = wishes.speed ?? usualSpeed;
    rehearse({ request: draft.aim.good, kit: draft.kit.good, seed, surprises: surprised, speed }, anew);
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: once, when the place is opened; what the Desk holds can't change meanwhile
  useEffect(() => {
    begin(false, wishes.seed);
    // Nobody is at a stove that is out of view.
    return () => clockActs.run(false);
  }, []);

  useTitle(ready ? `Rehearsal: ${ready.planned.name} · Stove` : 'Rehearsal · Stove');
  const choose = (surprised: boolean) => {
    setSurprises(surprised);
    if (ready && !ready.view.begun) begin(true, ready.planned.begun.rehearsal?.seed, surprised);
  };
  const cook = useCookUnderWay();
  if (cook && !cook.over) {
    return (
      <main id="main" className="stove">
        <p className="preparing">
          A real cook is under way: {cook.name}. Nobody should rehearse beside a pan on the heat.{' '}
          <Link href={`/stove/cook/${cook.id}`}>Back to the cook</Link>
        </p>
      </main>
    );
  }
  return (
    <ActsProvider value={acts}>
      <main id="main" className="stove">
        <Frame planned={ready?.planned} foam={ready && !ready.reveal && <FoamButton begun={ready.view.begun} />} />
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
        {ready && (
          <Rehearsal
            cooked={ready}
            onAgain={() => begin(true)}
            choice={<SurprisesChoice chosen={surprises} onChoose={choose} fixed={ready.view.begun && !ready.reveal} />}
          />
        )}
      </main>
    </ActsProvider>
  );
}

interface RehearsalProps {
  readonly cooked: Cooked;
  readonly onAgain: () => void;
  /** With surprises or without, for the one that is not begun yet. */
  readonly choice: ReactNode;
}

function Rehearsal({ cooked, onAgain, choice }: RehearsalProps) {
  const { reveal, pace, view } = cooked;
  if (reveal) {
    return (
      <>
        <RevealView cooked={cooked} reveal={reveal} onAgain={onAgain} choice={choice} />
        <div className="watching">
          <CookLine cooked={cooked} />
        </div>
      </>
    );
  }
  return (
    <CookView
      cooked={cooked}
      below={
        <>
          {pace && <ClockControls pace={pace} begun={view.begun} />}
          {choice}
        </>
      }
      ending={
        <p className="buttons ending">
          <button type="button" onClick={onAgain}>
            Start over on another pan
          </button>
          <Link className="button" href="/stove/cook">
            Cook it for real
          </Link>
        </p>
      }
    />
  );
}
