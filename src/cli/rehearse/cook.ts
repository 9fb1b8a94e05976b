/** The cook of a rehearsal, led by keys or by what is advised. */
import { cookAdvised } from './cookAdvised.ts';
import { cookByHand } from './cookByHand.ts';
import { keysOf } from './keys.ts';
import { keyWords } from './keyWords.ts';
import type { Pacing, Stage } from './stage.ts';
import { framed } from './statusText.ts';

/** @returns whether who cooks left before the pour */
export async function cook(stage: Stage, pacing: Pacing, followsAdvice: boolean): Promise<boolean> {
  const { screen } = pacing;
  screen.note(framed(0, 'A simulated pan with hidden properties: nothing here is hot.'));
  if (followsAdvice) {
    await cookAdvised(stage.rehearsal, stage.steps, pacing);
    screen.end();
    return false;
  }
  screen.note(framed(0, keyWords));
  const keys = keysOf(process.stdin);
  try {
    return await cookByHand(stage, keys, pacing);
  } finally {
    keys.end();
    screen.end();
  }
}
