/** Which alarms are on view, which of them stands on top, and which are shown below the one that names their cause. */
import { type AlarmId, alarmCatalogue, alarmIds, type Priority } from '../../../../core/advice/alarms/catalogue.ts';
import type { AlarmState, Alarms } from '../../../../core/advice/alarms/engine.ts';

export interface ShownAlarm {
  readonly id: AlarmId;
  readonly state: AlarmState;
}

export interface AlarmGroup extends ShownAlarm {
  /** Consequences of this one: on, and silent because of it. */
  readonly below: readonly ShownAlarm[];
}

export interface AlarmView {
  /** Put-aside ones come last. */
  readonly groups: readonly AlarmGroup[];
  /** The one to see to first; none when all are put aside. */
  readonly top: ShownAlarm | undefined;
  /** Beside the one on top, and how many of those nobody has seen. */
  readonly more: number;
  readonly moreUnseen: number;
  readonly asides: number;
}

const urgency: Readonly<Record<Priority, number>> = { 'act now': 0, 'act soon': 1, 'keep in mind': 2 };

/** What is silent because of the step is logged and not shown; a put-aside alarm is on view even when its condition is over. */
export function alarmView({ states }: Pick<Alarms, 'states'>): AlarmView {
  const shown = alarmIds.filter((id) => isShown(states[id])).map((id) => ({ id, state: states[id] }));
  const isRoot = ({ id }: ShownAlarm): boolean => rootOf(id, states) === id;
  const groups = shown
    .filter(isRoot)
    .sort((a, b) => byRank(rankOf(a), rankOf(b)))
    .map((root) => ({
      ...root,
      below: shown.filter((one) => one.id !== root.id && rootOf(one.id, states) === root.id),
    }));
  const asides = shown.filter(({ state }) => state.phase === 'put aside').length;
  const first = groups[0];
  const top = first && first.state.phase !== 'put aside' ? first : undefined;
  const others = shown.filter(({ id, state }) => id !== top?.id && state.phase !== 'put aside');
  const moreUnseen = others.filter(({ state }) => isUnseen(state)).length;
  return { groups, top, more: others.length, moreUnseen, asides };
}

/** Needs a look: on or over, and nobody has said that it was seen. */
function isUnseen({ phase, silencedBy }: AlarmState): boolean {
  return phase === 'gone unseen' || (phase === 'new' && silencedBy === null);
}

function isShown({ phase, silencedBy }: AlarmState): boolean {
  return phase === 'put aside' || (phase !== 'normal' && silencedBy !== 'step');
}

/** Up the chain of causes. */
function rootOf(id: AlarmId, states: Alarms['states']): AlarmId {
  const cause = states[id].silencedBy;
  return cause === null || cause === 'step' || !isShown(states[cause]) ? id : rootOf(cause, states);
}

/** Put aside last; new ones first; then the most urgent; what is on before what is over; then the first that came (first-out). */
function rankOf({ id, state }: ShownAlarm): readonly number[] {
  const { phase, on, cameS } = state;
  const turn = phase === 'put aside' ? 2 : phase === 'new' ? 0 : 1;
  return [turn, urgency[alarmCatalogue[id].priority], on ? 0 : 1, cameS ?? 0];
}

function byRank(a: readonly number[], b: readonly number[]): number {
  const at = a.findIndex((value, i) => value !== b[i]);
  return at < 0 ? 0 : (a[at] ?? 0) - (b[at] ?? 0);
}
