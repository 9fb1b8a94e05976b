/** How a rehearsal stands, on one line; every line says that it is a rehearsal. */
import type { Advice } from '../../core/advice/advise.ts';
import { alarmCatalogue } from '../../core/advice/alarms/catalogue.ts';
import type { Rehearsal } from '../../core/advice/rehearsal.ts';
import type { Step, TimedDeed } from '../../core/pan/steps.ts';
import { rangeOf } from '../../core/twin/range.ts';
import { adviceWords, doneWords, type Standing } from '../cook/adviceWords.ts';
import { bandText, stepNames } from '../plan/stepText.ts';

export function clockText(timeS: number): string {
  const minutes = Math.floor(timeS / 60);
  return `${String(minutes).padStart(2)}:${String(Math.floor(timeS % 60)).padStart(2, '0')}`;
}

export const framed = (timeS: number, text: string): string => `Rehearsal ${clockText(timeS)}  ${text}`;

function standingOf({ twin, progress }: Rehearsal, steps: readonly Step[]): Standing {
  return { notch: twin.notch, steps, stepIndex: progress.stepIndex, partsGiven: progress.partsGiven };
}

export function statusText(rehearsal: Rehearsal, steps: readonly Step[], advice: Advice): string {
  const { timeS, readingC, twin, progress } = rehearsal;
  const step = steps[progress.stepIndex];
  const { low, high } = rangeOf(twin.members.map(({ temperatureC }) => temperatureC));
  // The advice comes first: what doesn't fit the terminal is cut off at the end.
  const rest = [
    ...(step ? [`${stepNames[step.kind]} ${bandText(step)}`] : []),
    `dial ${twin.notch}`,
    ...(step ? heldText(step, progress.heldMinutes) : []),
    `likely ${low.toFixed(1)}-${high.toFixed(1)}`,
  ];
  const advised = adviceText(advice, standingOf(rehearsal, steps));
  return framed(timeS, `${readingC.toFixed(1)} °C  ${[advised, ...rest].join(' | ')}`);
}

function heldText({ end, letDown }: Step, held: number): string[] {
  return 'heldMinutes' in end && !letDown ? [`held ${held.toFixed(1)} of ${end.heldMinutes} min`] : [];
}

function adviceText(advice: Advice, now: Standing): string {
  const words = adviceWords(advice, now);
  return words.length === 0 ? 'go on' : `${advice.urgency.toUpperCase()}: ${words.join(', ')}`;
}

/** The alarms that sounded since so many changes of them, with their times. */
export function alarmTexts({ cook }: Rehearsal, told: number): { readonly timeS: number; readonly text: string }[] {
  return cook.alarms.history
    .slice(told)
    .filter(({ what }) => what === 'sounded')
    .map(({ timeS, alarm }) => {
      const { title, action } = alarmCatalogue[alarm];
      return { timeS, text: framed(timeS, `ALARM: ${title}. ${action}`) };
    });
}

export function doneText({ timeS, deed }: TimedDeed, steps: readonly Step[]): string {
  return framed(timeS, `done: ${doneWords(deed, steps)}`);
}
