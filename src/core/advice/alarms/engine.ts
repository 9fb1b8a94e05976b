/**
 * The life of alarms as a pure state machine (states as in ISA-18.2 and IEC 62682): conditions and acts of the cook in, states and
 * sounds out. Put it at any time step; it keeps no clock.
 */
import type { StepKind } from '../../pan/steps.ts';
import { type AlarmId, type AlarmKind, alarmCatalogue, alarmIds } from './catalogue.ts';

/** Normal; on and unseen; on and seen; over but unseen; put aside for a while. */
export type AlarmPhase = 'normal' | 'new' | 'seen' | 'gone unseen' | 'put aside';

export interface AlarmState {
  readonly phase: AlarmPhase;
  /** Since when the condition has held, or been gone, without a break. */
  readonly changingSinceS: number | undefined;
  readonly cameS: number | undefined;
  readonly soundedS: number | undefined;
  readonly sounds: number;
  readonly asideUntilS: number | undefined;
  /** Its input is missing: it stays as it was. */
  readonly inputLost: boolean;
}

export type Alarms = Readonly<Record<AlarmId, AlarmState>>;

export interface AlarmInput {
  readonly timeS: number;
  readonly step: StepKind;
  /** Is the condition true? Undefined: nobody can tell now. */
  readonly conditions: Readonly<Record<AlarmId, boolean | undefined>>;
  /** Alarms that the cook has seen, and put aside with minutes. */
  readonly seen: readonly AlarmId[];
  readonly putAside: readonly { readonly id: AlarmId; readonly minutes: number }[];
}

export const longestAsideMinutes = 10;
/** An alarm to act now that nobody has seen sounds again after this long, and from then on after the second, s. */
const soundsAgainS = 30;
const soundsOnS = 60;

const quiet: AlarmState = {
  phase: 'normal',
  changingSinceS: undefined,
  cameS: undefined,
  soundedS: undefined,
  sounds: 0,
  asideUntilS: undefined,
  inputLost: false,
};

export const noAlarms: Alarms = Object.fromEntries(alarmIds.map((id) => [id, quiet])) as unknown as Alarms;

export const isOn = ({ phase }: AlarmState): boolean => phase === 'new' || phase === 'seen' || phase === 'put aside';

/** Goes on to a time: the new states, and the alarms that sound now. */
export function stepAlarms(
  alarms: Alarms,
  input: AlarmInput,
): { readonly alarms: Alarms; readonly sounding: readonly AlarmId[] } {
  const moved = Object.fromEntries(
    alarmIds.map((id) => [id, acted(changed(alarms[id], alarmCatalogue[id], input, input.conditions[id]), id, input)]),
  ) as unknown as Record<AlarmId, AlarmState>;
  const sounding = alarmIds.filter((id) => soundsNow(moved, id, input));
  for (const id of sounding) {
    moved[id] = { ...moved[id], soundedS: input.timeS, sounds: moved[id].sounds + 1 };
  }
  return { alarms: moved, sounding };
}

/** What the condition makes of the alarm, by its delays. */
function changed(was: AlarmState, kind: AlarmKind, { timeS }: AlarmInput, condition: boolean | undefined): AlarmState {
  if (condition === undefined) return { ...was, inputLost: true };
  const state = { ...was, inputLost: false };
  const on = isOn(was);
  if (condition === on) return { ...state, changingSinceS: undefined };
  const since = was.changingSinceS ?? timeS;
  if (timeS - since < (condition ? kind.onDelayS : kind.offDelayS)) return { ...state, changingSinceS: since };
  if (condition) return { ...quiet, sounds: was.sounds, phase: 'new', cameS: timeS };
  return {
    ...state,
    phase: was.phase === 'new' ? 'gone unseen' : 'normal',
    changingSinceS: undefined,
    asideUntilS: undefined,
  };
}

/** What the cook makes of it: seen, put aside for a while, back again. */
function acted(state: AlarmState, id: AlarmId, { timeS, seen, putAside }: AlarmInput): AlarmState {
  if (state.phase === 'put aside' && state.asideUntilS !== undefined && timeS >= state.asideUntilS) {
    return { ...state, phase: 'new', asideUntilS: undefined, soundedS: undefined };
  }
  if (seen.includes(id)) {
    if (state.phase === 'new') return { ...state, phase: 'seen' };
    if (state.phase === 'gone unseen') return { ...state, phase: 'normal' };
  }
  const aside = putAside.find((one) => one.id === id);
  if (aside && isOn(state) && alarmCatalogue[id].priority !== 'act now') {
    const minutes = Math.min(longestAsideMinutes, Math.max(0, aside.minutes));
    return { ...state, phase: 'put aside', asideUntilS: timeS + minutes * 60 };
  }
  return state;
}

function soundsNow(alarms: Alarms, id: AlarmId, { timeS, step }: AlarmInput): boolean {
  const state = alarms[id];
  const kind: AlarmKind = alarmCatalogue[id];
  if (state.phase !== 'new' || !kind.steps.includes(step)) return false;
  if (kind.causedBy.some((cause) => isOn(alarms[cause as AlarmId]))) return false;
  if (state.soundedS === undefined) return true;
  if (kind.priority !== 'act now') return false;
  const first = state.cameS !== undefined && state.soundedS - state.cameS < soundsAgainS;
  return timeS - state.soundedS >= (first ? soundsAgainS : soundsOnS);
}
