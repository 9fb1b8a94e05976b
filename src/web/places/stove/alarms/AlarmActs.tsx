/** What the cook can say to one alarm: an answer where it asks, that it was seen, or to put it aside for five minutes. */
import type { AlarmId } from '../../../../core/advice/alarms/catalogue.ts';
import { useGuard } from '../useGuard.ts';
import type { ShownAlarm } from './alarmOrder.ts';
import { type AsideReason, asideForS, kindOf } from './alarmWords.ts';

export interface AlarmActions {
  seen(alarm: AlarmId): void;
  /** For no time at all: brought back now. */
  putAside(alarm: AlarmId, forS: number, reason: AsideReason): void;
}

export type AlarmAnswers = Readonly<Partial<Record<AlarmId, readonly AlarmAnswer[]>>>;

interface AlarmAnswer {
  readonly label: string;
  /** What it is said of, where there are several: a thermometer's name, of any length. */
  readonly of?: string | undefined;
  readonly onAnswer: () => void;
}

interface AlarmActsProps {
  readonly shown: ShownAlarm;
  /** None for a guest. */
  readonly actions: AlarmActions | undefined;
  readonly answers: AlarmAnswers;
  readonly reason: AsideReason;
}

export function AlarmActs({ shown: { id, state }, actions, answers, reason }: AlarmActsProps) {
  const { priority, title } = kindOf(id);
  const guarded = useGuard(`${id} ${state.phase}`);
  if (!actions) return null;
  const named = (act: string) => `${act}: ${title}`;
  if (state.phase === 'put aside') {
    return (
      state.on && (
        <div className="alarm-acts">
          <button
            type="button"
            aria-label={named('Back now')}
            onClick={guarded(() => actions.putAside(id, 0, 'not given'))}
          >
            Back now
          </button>
        </div>
      )
    );
  }
  const isSeen = state.phase === 'seen';
  return (
    <div className="alarm-acts">
      {state.on &&
        answers[id]?.map(({ label, of, onAnswer }) => (
          <button key={of ?? label} type="button" className="main" onClick={guarded(onAnswer)}>
            <span>{label}</span> {of && <span className="alarm-answer-of">{of}</span>}
          </button>
        ))}
      <button
        type="button"
        aria-label={named('Seen')}
        aria-disabled={isSeen}
        onClick={guarded(() => !isSeen && actions.seen(id))}
      >
        {isSeen ? '✓ Seen' : 'Seen'}
      </button>
      {state.on && priority !== 'act now' && (
        <button
          type="button"
          aria-label={named(`Put aside ${asideForS / 60} min`)}
          onClick={guarded(() => actions.putAside(id, asideForS, reason))}
        >
          Put aside {asideForS / 60} min
        </button>
      )}
    </div>
  );
}
