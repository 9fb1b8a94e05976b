/** Why a deed is not open, in words. */

import { limits } from '../../../core/advice/limits.ts';
import type { Opening } from '../../../core/advice/openDeeds.ts';
import { degrees, type TemperatureUnit } from '../../parts/temperature.ts';

export function closedWords(opening: Opening & { readonly open: false }, unit: TemperatureUnit): string {
  const at = (limit: { readonly value: number }) => degrees(limit.value, unit);
  switch (opening.because) {
    case 'roast limit':
      return `above ${at(limits.roastTemperature)}: off the heat only`;
    case 'portion limit':
      return 'too much water at once for this heat';
    case 'below the band':
      return 'below the band: none needed';
    case 'on the way up':
      return 'on the way up water only undoes what the ring does';
    case 'in the lower half':
      return 'not needed in the lower half of the band';
    case 'still acting':
      return 'the last one still acts: wait';
    case 'alkali in this pan':
      return 'never in this pan';
    case 'alkali heat':
      return `not above ${at(limits.alkaliTemperature)}: it would be thrown out`;
    case 'wait':
      return `wait ${Math.max(0, Math.ceil(opening.waitS ?? 0))} s after the last part`;
    case 'heat off first':
      return 'dial to 0 first';
    case 'end of the dial':
      return 'end of the dial';
    case 'above the plan':
      return 'more than this step needs';
    case 'not the last step':
      return 'after the last step';
    case 'nothing due':
      return 'none due now';
  }
}
