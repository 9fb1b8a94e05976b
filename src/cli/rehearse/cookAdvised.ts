/** A rehearsal in which what is advised is done by itself, 25 s after it is said. */
import { setTimeout as sleep } from 'node:timers/promises';
import { advised, type Rehearsal } from '../../core/advice/rehearsal.ts';
import type { Step } from '../../core/pan/steps.ts';
import type { Pacing } from './stage.ts';
import { alarmTexts, doneText, statusText } from './statusText.ts';

/** A person needs about 25 s from a card on the screen to the act (assumed). */
const reactionS = 25;

export async function cookAdvised(
  rehearsal: Rehearsal,
  steps: readonly Step[],
  { screen, speed, longestS }: Pacing,
): Promise<void> {
  let told = 0;
  let alarmsTold = 0;
  let lastS = 0;
  const tell = (): void => {
    const deeds = rehearsal.deeds.slice(told).map((done) => ({ timeS: done.timeS, text: doneText(done, steps) }));
    const lines = [...deeds, ...alarmTexts(rehearsal, alarmsTold)].toSorted((a, b) => a.timeS - b.timeS);
    for (const { text } of lines) screen.note(text);
    told = rehearsal.deeds.length;
    alarmsTold = rehearsal.cook.alarms.history.length;
  };
  for (const advice of advised(rehearsal, steps, { reactionS, longestS })) {
    tell();
    screen.status(statusText(rehearsal, steps, advice), rehearsal.timeS);
    await sleep((1000 * (rehearsal.timeS - lastS)) / speed);
    lastS = rehearsal.timeS;
  }
  tell();
}
