/** Why a key does nothing at this moment. */
import { limits } from '../../core/advice/limits.ts';
import type { Closed } from '../../core/advice/openDeeds.ts';

export const closedWords: Readonly<Record<Closed, string>> = {
  'roast limit': `it is above ${limits.roastTemperature.value} °C: heat off, pan off the ring, no water`,
  'portion limit': `the spoon is larger than what may go in at once (${limits.hotSpoonful.id})`,
  'below the band': 'it is below the band: water would only set it back',
  'on the way up': 'on the way up water would only undo what the ring does',
  'in the lower half': 'it is in the lower half of the band: no water needed',
  'still acting': 'the last spoonful still acts: wait',
  'alkali in this pan': 'no alkali in a pan of this material',
  'alkali heat': `no alkali above ${limits.alkaliTemperature.value} °C: let it cool first`,
  wait: 'wait until the pan is quiet again',
  'nothing due': 'nothing is due in this step',
  'heat off first': 'turn the heat off first',
  'end of the dial': 'the dial goes no further',
  'above the plan': 'the plan foresees no more heat in this step',
  'not the last step': 'this is not the last step yet',
};
