/** A rehearsal led by keys: time goes on at its pace, and at 1 while advice waits to be done or an alarm to be seen. */
import { readEveryS } from '../../core/advice/rehearsal.ts';
import type { Deed } from '../../core/pan/steps.ts';
import { actOf, alarmsIn } from './hand.ts';
import type { Keys } from './keys.ts';
import type { Pacing, Stage } from './stage.ts';
import { alarmTexts, doneText, framed, statusText } from './statusText.ts';

/** Advice put aside comes back after this, if it still holds, s. */
const asideS = 60;
/** Real seconds between two drawings. */
const drawEveryS = 0.25;

/** @returns whether who cooks left before the pour */
export async function cookByHand(stage: Stage, keys: Keys, { screen, speed, longestS }: Pacing): Promise<boolean> {
  const { rehearsal, steps } = stage;
  let advice = rehearsal.advice();
  let asideUntilS = -1;
  let alarmsTold = 0;

  function perform(deeds: readonly Deed[]): void {
    for (const deed of deeds) {
      screen.note(doneText({ timeS: rehearsal.timeS, deed }, steps));
      rehearsal.perform(deed);
    }
    asideUntilS = -1;
    if (!rehearsal.progress.poured) advice = rehearsal.advice();
  }

  /** @returns whether to leave */
  function press(key: string): boolean {
    const act = actOf(key, stage, advice);
    if (act.kind === 'deeds') perform(act.deeds);
    if (act.kind === 'closed') screen.note(framed(rehearsal.timeS, act.why));
    if (act.kind === 'seen') for (const alarm of act.alarms) rehearsal.say('seen', { alarm });
    if (act.kind === 'aside') asideUntilS = rehearsal.timeS + asideS;
    return act.kind === 'quit';
  }

  while (!rehearsal.progress.poured && rehearsal.timeS < longestS) {
    screen.status(statusText(rehearsal, steps, advice), rehearsal.timeS);
    const waits = advice.deeds.length > 0 && rehearsal.timeS >= asideUntilS;
    const pace = waits || alarmsIn(rehearsal, ['new']).length > 0 ? 1 : speed;
    const untilReading = readEveryS - (rehearsal.timeS % readEveryS);
    const strideS = Math.min(untilReading, pace * drawEveryS);
    const key = await keys.next((1000 * strideS) / pace);
    if (key !== undefined) {
      if (press(key)) return true;
      continue;
    }
    rehearsal.moveTo(rehearsal.timeS + strideS);
    for (const { text } of alarmTexts(rehearsal, alarmsTold)) screen.note(text);
    alarmsTold = rehearsal.cook.alarms.history.length;
    if (strideS === untilReading) advice = rehearsal.advice();
  }
  return false;
}
