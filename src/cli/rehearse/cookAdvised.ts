/** A rehearsal in which what is advised is done by itself, 25 s after it is said. */
import { setTimeout as sleep } from 'node:timers/promises';
import { advised, type Rehearsal } from '../../core/advice/rehearsal.ts';
import type { Step } from '../../core/pan/steps.ts';
import type { Pacing } from './stage.ts';
import { doneText, statusText } from './statusText.ts';

/** A person needs about 25 s from a card on the screen to the act (assumed). */
const reactionS = 25;

export async function cookAdvised(
  rehearsal: Rehearsal,
  steps: readonly Step[],
  { screen, speed, longestS }: Pacing,
): Promise<void> {
  let told = 0;
  let lastS = 0;
  const tellDeeds = (): void => {
    for (const done of rehearsal.deeds.slice(told)) screen.note(doneText(done, steps));
    told = rehearsal.deeds.length;
  };
  for (const advice of advised(rehearsal, steps, { reactionS, longestS })) {
    tellDeeds();
    screen.status(statusText(rehearsal, steps, advice), rehearsal.timeS);
    await sleep((1000 * (rehearsal.timeS - lastS)) / speed);
    lastS = rehearsal.timeS;
  }
  tellDeeds();
}
