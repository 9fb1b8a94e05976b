/**
 * The life of alarms as a pure state machine (states as in ISA-18.2 and IEC 62682): conditions and acts of the cook in, states and
 * sounds out. Put it at any time step; it keeps no clock.
 */
import type { StepKind } from '../../pan/steps.ts';
import { type AlarmId, type AlarmKind, alarmCatalogue, alarmIds } from './catalogue.ts';

/** Normal; on and unseen; on and seen; over but unseen; put aside for a while, on or not. */
export type AlarmPhase = 'normal' | 'new' | 'seen' | 'gone unseen' | 'put aside';

/** Is the thing so? Null: nobody can tell now. `certainty` is the probability behind it, where there is one. */
export interface Condition {
  readonly active: boolean | null;
  readonly certainty?: number;
}

export interface AlarmState {
  readonly phase: AlarmPhase;
  /** On, delays counted in; heard or not. */
  readonly on: boolean;
  /** Since when the condition has been about to turn it on or off. */
  readonly turningSinceS: number | null;
  /** When it last came, and how often and when last it has sounded since then or since it was put aside. */
  readonly cameS: number | null;
  readonly sounds: number;
  readonly soundedS: number | null;
  readonly asideUntilS: number | null;
  /** It is on and its input is missing: it stays on until there is word that it is over. */
  readonly inputLost: boolean;
  /** Why it is on without a sound: not of this step, or the alarm that names its cause. */
  readonly silencedBy: 'step' | AlarmId | null;
  readonly certainty: number | null;
}

/** What befell an alarm; 'back' from being put aside, by itself, and 'called back' when the cook had it so at once. */
export interface AlarmChange {
  readonly timeS: number;
  readonly alarm: AlarmId;
  readonly what: 'came' | 'sounded' | 'sounded again' | 'went' | 'seen' | 'put aside' | 'back' | 'called back';
}

export interface Alarms {
  readonly states: Readonly<Record<AlarmId, AlarmState>>;
  /** Those that sound at this moment. */
  readonly sounding: readonly AlarmId[];
  readonly history: readonly AlarmChange[];
}

/**
 * What the cook does about an alarm, as in the log; names that the catalogue does not know are passed over. To put aside for no longer
 * than `callBackS` what is aside already is to call it back.
 */
export type AlarmAct =
  | { readonly kind: 'seen'; readonly alarm: string }
  | { readonly kind: 'putAside'; readonly alarm: string; readonly forS: number };

export interface AlarmInput {
  readonly timeS: number;
  readonly step: StepKind;
  readonly conditions: Readonly<Record<AlarmId, Condition>>;
  readonly acts: readonly AlarmAct[];
}

export const longestAsideS = 600;
/** The shortest time that a log can say; nobody puts an alarm aside for a second. */
const callBackS = 1;

const quiet: AlarmState = {
  phase: 'normal',
  on: false,
  turningSinceS: null,
  cameS: null,
  sounds: 0,
  soundedS: null,
  asideUntilS: null,
  inputLost: false,
  silencedBy: null,
  certainty: null,
};

function forEachAlarm(stateOf: (id: AlarmId) => AlarmState): Record<AlarmId, AlarmState> {
  return Object.fromEntries(alarmIds.map((id) => [id, stateOf(id)])) as Record<AlarmId, AlarmState>;
}

export const noAlarms: Alarms = { states: forEachAlarm(() => quiet), sounding: [], history: [] };

/** Goes on to a time, not earlier than the last. */
export function stepAlarms(alarms: Alarms, { timeS, step, conditions, acts }: AlarmInput): Alarms {
  const changes: AlarmChange[] = [];
  const lived = forEachAlarm((id) => {
    const note = (what: AlarmChange['what']) => changes.push({ timeS, alarm: id, what });
    // What the cook did since the last step meant the alarm as it was then: none is seen before it has sounded.
    const about = acts.filter(({ alarm }) => alarm === id);
    const handled = about.reduce((state, act) => handle(state, id, act, timeS, note), alarms.states[id]);
    return turn(comeBack(handled, timeS, note), alarmCatalogue[id], conditions[id], timeS, note);
  });
  const states = forEachAlarm((id) => ({ ...lived[id], silencedBy: silencedBy(lived, id, step) }));
  const sounding = alarmIds.filter((id) => soundsNow(states[id], alarmCatalogue[id], timeS));
  for (const id of sounding) {
    changes.push({ timeS, alarm: id, what: states[id].sounds === 0 ? 'sounded' : 'sounded again' });
    states[id] = { ...states[id], soundedS: timeS, sounds: states[id].sounds + 1 };
  }
  return { states, sounding, history: changes.length > 0 ? [...alarms.history, ...changes] : alarms.history };
}

type Remark = (what: AlarmChange['what']) => void;

/** On or off by its delays. Without word from the input it stays as it is. */
function turn(was: AlarmState, kind: AlarmKind, condition: Condition, timeS: number, note: Remark): AlarmState {
  const { active, certainty = null } = condition;
  if (active === null) return { ...was, turningSinceS: null, inputLost: was.on };
  const state = { ...was, certainty, inputLost: false };
  if (active === was.on) return { ...state, turningSinceS: null };
  const since = was.turningSinceS ?? timeS;
  if (timeS - since < (active ? kind.onDelayS : kind.offDelayS)) return { ...state, turningSinceS: since };
  note(active ? 'came' : 'went');
  const aside = was.phase === 'put aside';
  if (active) {
    return {
      ...quiet,
      certainty,
      on: true,
      cameS: timeS,
      phase: aside ? was.phase : 'new',
      asideUntilS: was.asideUntilS,
    };
  }
  // What was never heard need not be seen.
  const unseen = was.phase === 'new' && was.sounds > 0;
  const phase = aside ? was.phase : unseen ? 'gone unseen' : 'normal';
  return { ...state, on: false, turningSinceS: null, phase };
}

/** From being put aside: as new if it is still on. */
function comeBack(state: AlarmState, timeS: number, note: Remark): AlarmState {
  if (state.asideUntilS === null || timeS < state.asideUntilS) return state;
  note('back');
  return { ...state, phase: state.on ? 'new' : 'normal', asideUntilS: null, sounds: 0, soundedS: null };
}

function handle(state: AlarmState, id: AlarmId, act: AlarmAct, timeS: number, note: Remark): AlarmState {
  const { phase } = state;
  if (act.kind === 'seen') {
    if (phase !== 'new' && phase !== 'gone unseen') return state;
    note('seen');
    return { ...state, phase: phase === 'new' ? 'seen' : 'normal' };
  }
  if (!state.on || alarmCatalogue[id].priority === 'act now') return state;
  if (phase === 'put aside' && act.forS <= callBackS) {
    note('called back');
    return { ...state, phase: 'new', asideUntilS: null, sounds: 0, soundedS: null };
  }
  const untilS = timeS + Math.min(longestAsideS, Math.max(0, act.forS));
  note('put aside');
  // Putting aside again can shorten the while and never lengthen it.
  return { ...state, phase: 'put aside', asideUntilS: Math.min(untilS, state.asideUntilS ?? untilS) };
}

function silencedBy(states: Record<AlarmId, AlarmState>, id: AlarmId, step: StepKind): AlarmState['silencedBy'] {
  const heardIn = (one: AlarmId): boolean => (alarmCatalogue[one] as AlarmKind).steps.includes(step);
  if (!states[id].on) return null;
  if (!heardIn(id)) return 'step';
  const causes = alarmCatalogue[id].causedBy as readonly AlarmId[];
  return causes.find((cause) => states[cause].on && heardIn(cause)) ?? null;
}

function soundsNow(state: AlarmState, kind: AlarmKind, timeS: number): boolean {
  if (state.phase !== 'new' || state.silencedBy !== null) return false;
  if (state.soundedS === null) return true;
  if (kind.soundsAgainS === null) return false;
  const [firstS, thenS] = kind.soundsAgainS;
  return timeS - state.soundedS >= (state.sounds === 1 ? firstS : thenS);
}
