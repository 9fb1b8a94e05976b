/**
 * The alarm to see to first, at the top of the Stove: always of the same height, so that nothing below it moves when one comes.
 * The list of all opens over what is below.
 */
import { type KeyboardEvent, type ReactNode, useId, useState } from 'react';
import type { Alarms } from '../../../../core/advice/alarms/engine.ts';
import { type AlarmActions, AlarmActs, type AlarmAnswers } from './AlarmActs.tsx';
import { AlarmList } from './AlarmList.tsx';
import { type AlarmView, alarmView, type ShownAlarm } from './alarmOrder.ts';
import { announcement, kindOf, moreWords, priorityWords, timeLeftWords } from './alarmWords.ts';
import { PriorityMark } from './PriorityMark.tsx';
import './alarms.css';

interface AlarmStripProps {
  readonly alarms: Pick<Alarms, 'states'>;
  readonly timeS: number;
  readonly actions: AlarmActions | undefined;
  readonly answers?: AlarmAnswers;
  /** Shown in the room for an alarm while there is none: nothing that is needed in an alarm. */
  readonly whenCalm?: ReactNode;
}

export function AlarmStrip({ alarms, timeS, actions, answers = {}, whenCalm }: AlarmStripProps) {
  const view = alarmView(alarms);
  const { top, groups } = view;
  const [isOpen, setOpen] = useState(false);
  const listId = useId();
  const closeByKey = (event: KeyboardEvent) => event.key === 'Escape' && setOpen(false);
  return (
    <section className="alarms" aria-label="Alarms" onKeyDown={closeByKey}>
      <div className="alarm-strip" data-priority={top ? kindOf(top.id).priority : 'none'} data-phase={top?.state.phase}>
        {top ? <Top top={top} timeS={timeS} /> : <Calm asides={view.asides} />}
        {groups.length > 0 && (
          <button
            type="button"
            className="alarm-more"
            aria-expanded={isOpen}
            aria-controls={listId}
            onClick={() => setOpen(!isOpen)}
          >
            <More view={view} />
          </button>
        )}
        {top ? (
          <AlarmActs shown={top} actions={actions} answers={answers} reason="not given" />
        ) : (
          <div className="alarm-calm">{whenCalm}</div>
        )}
      </div>
      <div id={listId} className="alarm-list" hidden={!isOpen || groups.length === 0}>
        {isOpen && <AlarmList groups={groups} timeS={timeS} actions={actions} answers={answers} />}
        <button type="button" onClick={() => setOpen(false)}>
          Close the list
        </button>
      </div>
      <Said top={top} />
    </section>
  );
}

function Top({ top: { id, state }, timeS }: { readonly top: ShownAlarm; readonly timeS: number }) {
  const { priority, title, action } = kindOf(id);
  return (
    <>
      <div className="alarm-head">
        <PriorityMark priority={priority} />
        <p>
          <span className="alarm-urgency">
            {priorityWords[priority]}, {timeLeftWords(id, state, timeS)}
            {state.inputLost && ', input lost'}
          </span>
          <strong>{title}</strong>
        </p>
      </div>
      <p className="alarm-action">{state.on ? action : 'It is over, and nobody has seen it.'}</p>
    </>
  );
}

function Calm({ asides }: { readonly asides: number }) {
  return (
    <div className="alarm-head">
      <PriorityMark priority="none" />
      <p>No alarm{asides > 0 ? ' but what is put aside' : ''}.</p>
    </div>
  );
}

/** The count of those put aside is on view whenever there are any (ALM-8). */
function More({ view }: { readonly view: AlarmView }) {
  const words = moreWords(view);
  return (
    <>
      {words.map((each) => (
        <span key={each}>{each}</span>
      ))}
      {words.length === 0 && <span>List</span>}
    </>
  );
}

/** Two places that stay, so that what comes into them is said; an alarm that sounds again is said again. */
function Said({ top }: { readonly top: ShownAlarm | undefined }) {
  const isNow = top !== undefined && kindOf(top.id).priority === 'act now' && top.state.on;
  const words = top ? announcement(top.id, top.state) : '';
  const said = top && <span key={`${top.id} ${top.state.sounds}`}>{words}</span>;
  return (
    <>
      <div className="unseen" role="alert">
        {isNow && said}
      </div>
      <div className="unseen" role="status">
        {!isNow && said}
      </div>
    </>
  );
}
