/** What each step asks of the cook. The dial is told as the drawn cook turned it. */
import type { Step } from '../../../core/pan/steps.ts';
import { dialText } from '../../../core/planning/dial.ts';
import { grams } from '../../parts/figures.ts';
import type { Picture } from '../../parts/panLine/picture.ts';
import { degrees, type TemperatureUnit } from '../../parts/temperature.ts';

export function bandOf({ bandC: [low, high] }: Step, unit: TemperatureUnit): string {
  return `${degrees(low, unit).replace(/ .*/, '')}–${degrees(high, unit)}`;
}

type Drawn = Pick<Picture, 'steps' | 'deeds'>;

export function deedOf(step: Step, drawn: Drawn, index: number, unit: TemperatureUnit): string {
  const { kind, end, alkali, letDown } = step;
  const dial = `Dial ${dialText(drawn, index)}`;
  if (letDown) {
    return `Heat off. Hot water in portions of ${grams(letDown.hotPortionKg)} g while above ${degrees(120, unit)}, then ${grams(letDown.coolPortionKg)} g, to ${(letDown.solids * 100).toFixed(0)} °Bx. Wait ${step.waitS} s after each.`;
  }
  if ('reachedC' in end) {
    const then = kind === 'cast' ? ', then pour' : '';
    return `${dial}. Up to ${degrees(end.reachedC, unit)}${then}.`;
  }
  const parts = alkali.length > 0 ? `Heat off, ${alkali.length} parts of alkali, ${step.waitS} s apart. ` : '';
  return `${parts}${dial}. Hold ${end.heldMinutes.toFixed(0)} min.`;
}

/** How a hold is kept from above. */
export const tooHot = 'Too hot: a spoonful of cold water.';
