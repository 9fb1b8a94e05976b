/** A rehearsal led by keys: time goes on at its pace, and at 1 while advice waits to be done. */
import type { Advice } from '../../core/advice/advise.ts';
import { readEveryS } from '../../core/advice/rehearsal.ts';
import type { Deed } from '../../core/pan/steps.ts';
import { actOf } from './hand.ts';
import type { Keys } from './keys.ts';
import type { Pacing, Stage } from './stage.ts';
import { doneText, framed, statusText } from './statusText.ts';

/** Advice put aside comes back after this, if it still holds, s. */
const asideS = 60;
/** Real seconds between two drawings. */
const drawEveryS = 0.25;

/** @returns whether who cooks left before the pour */
export async function cookByHand(stage: Stage, keys: Keys, { screen, speed, longestS }: Pacing): Promise<boolean> {
  const { rehearsal, steps } = stage;
  let advice = firstAdvice(stage);
  let asideUntilS = -1;

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
    if (act.kind === 'aside') asideUntilS = rehearsal.timeS + asideS;
    return act.kind === 'quit';
  }

  while (!rehearsal.progress.poured && rehearsal.timeS < longestS) {
    screen.status(statusText(rehearsal, steps, advice), rehearsal.timeS);
    const waits = advice.deeds.length > 0 && rehearsal.timeS >= asideUntilS;
    const pace = waits ? 1 : speed;
    const untilReading = readEveryS - (rehearsal.timeS % readEveryS);
    const strideS = Math.min(untilReading, pace * drawEveryS);
    const key = await keys.next((1000 * strideS) / pace);
    if (key !== undefined) {
      if (press(key)) return true;
      continue;
    }
    rehearsal.moveTo(rehearsal.timeS + strideS);
    if (strideS === untilReading) advice = rehearsal.deeds.length > 0 ? rehearsal.advice() : firstAdvice(stage);
  }
  return false;
}

/** The pan is cold: the first thing to do is what the plan begins with. */
function firstAdvice({ rehearsal, steps }: Stage): Advice {
  const advice = rehearsal.advice();
  const notch = steps[0]?.approachNotch;
  return notch === undefined
    ? advice
    : { ...advice, kind: 'steer', urgency: 'act soon', deeds: [{ kind: 'heat', notch }] };
}
