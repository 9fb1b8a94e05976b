/** All alarms on view: where each is in its life, what it leads to, and its consequences below it. */
import { useState } from 'react';
import { type AlarmActions, AlarmActs, type AlarmAnswers } from './AlarmActs.tsx';
import type { AlarmGroup, ShownAlarm } from './alarmOrder.ts';
import { type AsideReason, asideReasons, kindOf, phaseWords, priorityWords, timeLeftWords } from './alarmWords.ts';
import { PriorityMark } from './PriorityMark.tsx';

interface AlarmListProps {
  readonly groups: readonly AlarmGroup[];
  readonly timeS: number;
  readonly actions: AlarmActions | undefined;
  readonly answers: AlarmAnswers;
}

export function AlarmList({ groups, ...common }: AlarmListProps) {
  return (
    <ul>
      {groups.map((group) => (
        <li key={group.id}>
          <AlarmRow shown={group} {...common} />
          {group.below.length > 0 && (
            <ul aria-label={`Because of: ${kindOf(group.id).title}`}>
              {group.below.map((shown) => (
                <li key={shown.id}>
                  <AlarmRow shown={shown} {...common} />
                </li>
              ))}
            </ul>
          )}
        </li>
      ))}
    </ul>
  );
}

interface AlarmRowProps extends Omit<AlarmListProps, 'groups'> {
  readonly shown: ShownAlarm;
}

function AlarmRow({ shown, timeS, actions, answers }: AlarmRowProps) {
  const { id, state } = shown;
  const [reason, setReason] = useState<AsideReason>('not given');
  const { priority, title, action, cause, consequence } = kindOf(id);
  const mayWait = state.on && priority !== 'act now' && state.phase !== 'put aside';
  return (
    <article className="alarm-row" aria-label={title}>
      <h2>
        <PriorityMark priority={priority} /> {title}
      </h2>
      <p className="small">
        {priorityWords[priority]}. {phaseWords(state, timeS)}
        {state.on && `. ${timeLeftWords(id, state, timeS)}`}
      </p>
      <p>
        <strong>{action}</strong> If not: {consequence}. Usual cause: {cause}.
      </p>
      {state.silencedBy === null && (
        <>
          {mayWait && (
            <label className="aside-reason">
              Why it may wait
              <select value={reason} onChange={(event) => setReason(event.target.value as AsideReason)}>
                {asideReasons.map((each) => (
                  <option key={each}>{each}</option>
                ))}
              </select>
            </label>
          )}
          <AlarmActs shown={shown} actions={actions} answers={answers} reason={reason} />
        </>
      )}
    </article>
  );
}
