/** The alarms of a real cook, and the way back to it, while another place is looked at. */
import { useSyncExternalStore } from 'react';
import { Link } from 'wouter';
import { TemperatureUnitProvider, useTemperatureUnit } from '../../../parts/TemperatureUnit.tsx';
import { degrees } from '../../../parts/temperature.ts';
import { useLooksOn } from '../../../records/useStanding.ts';
import { alarmActions, alarmAnswers } from '../alarmAnswers.ts';
import { AlarmStrip } from '../alarms/AlarmStrip.tsx';
import { cardOf } from '../card.ts';
import { type Cooked, cookIn } from '../cooked.ts';
import { useTelling } from '../telling/useTelling.ts';
import { acts, liveNow, subscribe } from './session.ts';
import '../stove.css';

export default function Watch() {
  const live = useSyncExternalStore(subscribe, liveNow);
  if (!live?.cooked || live.cooked.view.poured) return null;
  return (
    <TemperatureUnitProvider>
      <Standing id={live.id} cooked={live.cooked} />
    </TemperatureUnitProvider>
  );
}

function Standing({ id, cooked }: { readonly id: string; readonly cooked: Cooked }) {
  const { unit } = useTemperatureUnit();
  const looksOn = useLooksOn();
  const { view, ahead } = cooked;
  const card = cardOf(view, cookIn(cooked), ahead, unit);
  useTelling({ alarms: view.alarms, cardKey: card.key, cardUrgency: card.urgency, cardWords: `${card.title}.` });
  return (
    <aside className="watch" aria-label="The cook under way">
      <AlarmStrip
        alarms={view.alarms}
        timeS={view.timeS}
        actions={looksOn ? undefined : alarmActions(acts)}
        answers={alarmAnswers(view, acts, unit)}
        whenCalm={
          <span>
            {degrees(view.believedC.mid, unit)}. {card.title}.
          </span>
        }
      />
      <Link className="button" href={`/stove/cook/${id}`}>
        Back to the cook
      </Link>
    </aside>
  );
}
