/** A surprise of a rehearsal in words, once it is over. */
import { alarmCatalogue } from './alarms/catalogue.ts';
import type { RevealedSurprise } from './reveal.ts';
import { surpriseKinds } from './surpriseKinds.ts';

/** @param clock how a time of the cook is written */
export function surpriseWords(
  { name, beganS, saidS, rightS }: RevealedSurprise,
  clock: (timeS: number) => string,
): string {
  const { words, alarm } = surpriseKinds[name];
  const said =
    saidS === undefined
      ? 'no alarm said so'
      : `“${alarmCatalogue[alarm].title}” said so after ${Math.round(saidS - beganS)} s`;
  const right = rightS === undefined ? 'it stayed so' : `right again at ${clock(rightS)}`;
  return `${clock(beganS)}, ${words}: ${said}, ${right}.`;
}

export const noSurprise = 'None came: a hold of less than three minutes has none.';
