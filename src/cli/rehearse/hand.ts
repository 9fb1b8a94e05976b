/** Keys and what they do to the pan: nothing but what the core holds open at this moment. */
import { type Advice, situationOf } from '../../core/advice/advise.ts';
import { type AlarmId, alarmIds } from '../../core/advice/alarms/catalogue.ts';
import type { AlarmPhase } from '../../core/advice/alarms/engine.ts';
import { type DeedName, openDeeds } from '../../core/advice/openDeeds.ts';
import type { Rehearsal } from '../../core/advice/rehearsal.ts';
import type { Deed } from '../../core/pan/steps.ts';
import { closedWords } from './closedWords.ts';
import type { Stage } from './stage.ts';

export type Act =
  | { readonly kind: 'deeds'; readonly deeds: readonly Deed[] }
  | { readonly kind: 'closed'; readonly why: string }
  | { readonly kind: 'aside' }
  | { readonly kind: 'seen'; readonly alarms: readonly AlarmId[] }
  | { readonly kind: 'quit' }
  | { readonly kind: 'none' };

const deedKeys: Readonly<Record<string, readonly DeedName[]>> = {
  w: ['spoonful', 'half', 'portion'],
  '+': ['raise'],
  '=': ['raise'],
  '-': ['lower'],
  '0': ['off'],
  a: ['alkali'],
  n: ['step'],
  p: ['pour'],
};

export function alarmsIn({ cook }: Rehearsal, phases: readonly AlarmPhase[]): readonly AlarmId[] {
  return alarmIds.filter((id) => phases.includes(cook.alarms.states[id].phase));
}

/** @param key as it is typed; `\r` is Enter */
export function actOf(key: string, { rehearsal, kit, steps }: Stage, advice: Advice): Act {
  if (key === 'q') return { kind: 'quit' };
  if (key === 'i') return { kind: 'aside' };
  if (key === 's') {
    const alarms = alarmsIn(rehearsal, ['new', 'gone unseen']);
    return alarms.length > 0 ? { kind: 'seen', alarms } : { kind: 'closed', why: 'there is no alarm to see to' };
  }
  if (key === '\r' || key === '\n') {
    return advice.deeds.length > 0
      ? { kind: 'deeds', deeds: advice.deeds }
      : { kind: 'closed', why: 'nothing is advised now' };
  }
  const names = deedKeys[key];
  if (!names) return { kind: 'none' };
  const { twin, progress } = rehearsal;
  const open = openDeeds(situationOf({ twin, kit, steps, progress }));
  const [first] = names.map((name) => open[name]).toSorted((a, b) => Number(b.open) - Number(a.open));
  if (!first) return { kind: 'none' };
  return first.open ? { kind: 'deeds', deeds: [first.deed] } : { kind: 'closed', why: closedWords[first.because] };
}
