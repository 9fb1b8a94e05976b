/** Alarms in words: how urgent, where in their life, and the time left to act. */
import {
  type AlarmId,
  type AlarmKind,
  alarmCatalogue,
  type Priority,
} from '../../../../core/advice/alarms/catalogue.ts';
import type { AlarmState } from '../../../../core/advice/alarms/engine.ts';
import type { AlarmView } from './alarmOrder.ts';

export const priorityWords: Readonly<Record<Priority, string>> = {
  'act now': 'Act now',
  'act soon': 'Act soon',
  'keep in mind': 'Keep in mind',
};

/** Why an alarm was put aside: told in the log with it (ALM-8). */
export const asideReasons = ['not given', 'being seen to', 'known and harmless', 'thought to be false'] as const;
export type AsideReason = (typeof asideReasons)[number];

/** First value of our own; the engine allows ten minutes at most. */
export const asideForS = 300;

export const kindOf = (id: AlarmId): AlarmKind => alarmCatalogue[id];

/** `4:05`; times just begun count as whole seconds. */
export function minutesAndSeconds(seconds: number): string {
  const whole = Math.max(0, Math.ceil(seconds));
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, '0')}`;
}

/** Left of the time to respond since it came; past it, for how long. */
export function timeLeftWords(id: AlarmId, { on, cameS }: AlarmState, timeS: number): string {
  if (!on) return 'over';
  const leftS = kindOf(id).respondWithinS - (timeS - (cameS ?? timeS));
  return leftS > 0 ? `${minutesAndSeconds(leftS)} left` : `${minutesAndSeconds(-leftS)} overdue`;
}

export function phaseWords({ phase, asideUntilS, inputLost, on, silencedBy }: AlarmState, timeS: number): string {
  if (silencedBy !== null && silencedBy !== 'step' && phase !== 'put aside')
    return `Silent, because of: ${kindOf(silencedBy).title}`;
  const words = {
    normal: 'Over',
    new: 'New, not seen yet',
    seen: 'Seen, still on',
    'gone unseen': 'Over, and not seen yet',
    'put aside': `Put aside${on ? '' : ', over for now'}, back in ${minutesAndSeconds((asideUntilS ?? timeS) - timeS)}`,
  }[phase];
  return inputLost ? `${words}. Input lost: it stays until there is word that it is over` : words;
}

/** Beside the alarm on top: `2 more`, `1 not seen`, `1 put aside`. */
export function moreWords({ more, moreUnseen, asides }: Pick<AlarmView, 'more' | 'moreUnseen' | 'asides'>): string[] {
  const counts = [
    [more, 'more'],
    [moreUnseen, 'not seen'],
    [asides, 'put aside'],
  ] as const;
  return counts.filter(([count]) => count > 0).map(([count, what]) => `${count} ${what}`);
}

/** For those who hear the page: without the time left, which would be said every second. */
export function announcement(id: AlarmId, { on, inputLost }: AlarmState): string {
  const { priority, title, action } = kindOf(id);
  if (!on) return `Over, and not seen yet: ${title}.`;
  return `${priorityWords[priority]}: ${title}. ${action}${inputLost ? ' Input lost.' : ''}`;
}
