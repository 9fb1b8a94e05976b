/** A cook on the screen: alarms, the glance, one piece of advice, deeds, and what can't be seen. Real and rehearsed cooks look alike. */
import { type ReactNode, useState } from 'react';
import { useTemperatureUnit } from '../../parts/TemperatureUnit.tsx';
import { inUnit } from '../../parts/temperature.ts';
import { AdviceCard } from './AdviceCard.tsx';
import { Arrival } from './Arrival.tsx';
import { useActs } from './acts.ts';
import { alarmActions, alarmAnswers } from './alarmAnswers.ts';
import { AlarmStrip } from './alarms/AlarmStrip.tsx';
import { Beside } from './Beside.tsx';
import { CookLine } from './CookLine.tsx';
import { cardOf } from './card.ts';
import { type Cooked, cookIn } from './cooked.ts';
import { DeedButtons } from './DeedButtons.tsx';
import { Glance, GlanceDetail } from './Glance.tsx';
import { LogBook } from './LogBook.tsx';
import { SpoonTest } from './SpoonTest.tsx';
import { TellingSwitches } from './telling/TellingSwitches.tsx';
import { useTelling } from './telling/useTelling.ts';
import { Unseen } from './Unseen.tsx';
import { WipeLock } from './WipeLock.tsx';

interface CookViewProps {
  readonly cooked: Cooked;
  /** Right below the card: the clock of a rehearsal, the thermometer of a real cook. */
  readonly below: ReactNode;
  /** After the deeds: what a real cook may note beside them. */
  readonly beside?: ReactNode;
  /** At the very end. */
  readonly ending: ReactNode;
}

export function CookView({ cooked, below, beside, ending }: CookViewProps) {
  const { unit } = useTemperatureUnit();
  const acts = useActs();
  const [held, setHeld] = useState<Cooked>();
  const { view, planned } = cooked;
  const { begun } = planned;
  const cook = cookIn(cooked);
  const card = cardOf(view, cook, cooked.ahead, unit);
  const telling = useTelling({
    alarms: view.alarms,
    cardKey: card.key,
    cardUrgency: card.urgency,
    cardWords: `${card.title}.`,
    numberWords: `${inUnit(view.believedC.mid, unit).toFixed(0)} degrees.`,
  });
  const shown = held ?? cooked;
  return (
    <>
      <AlarmStrip
        alarms={view.alarms}
        timeS={view.timeS}
        actions={acts.looksOn ? undefined : alarmActions(acts)}
        answers={alarmAnswers(view, acts, unit)}
      />
      <div className="cooking">
        <div className="leading">
          <Glance view={shown.view} steps={begun.steps} heldForS={held && view.timeS - held.view.timeS} />
          <AdviceCard card={card} aside={view.aside} />
          <Beside
            last={cooked.entries.at(-1)}
            cook={cook}
            timeS={view.timeS}
            heldAtS={held?.view.timeS}
            onHold={() => setHeld(held ? undefined : cooked)}
          />
          <GlanceDetail view={shown.view} mode={begun.mode} />
        </div>
        <div className="doing">
          {!acts.looksOn && below}
          <TellingSwitches telling={telling} />
          <WipeLock />
          {!acts.looksOn && (
            <>
              <DeedButtons view={view} cook={cook} mode={begun.mode} />
              {beside}
              <SpoonTest view={view} />
            </>
          )}
        </div>
      </div>
      <div className="watching">
        <Arrival ahead={shown.ahead} begun={view.begun} />
        <Unseen view={shown.view} />
        <CookLine cooked={shown} />
        <LogBook entries={cooked.entries} cook={cook} />
        {!acts.looksOn && ending}
      </div>
    </>
  );
}
