/** What each step asks of the cook. */
import type { Step } from '../../../core/pan/steps.ts';
import { grams } from '../../parts/figures.ts';
import { degrees, type TemperatureUnit } from '../../parts/temperature.ts';

export function bandOf({ bandC: [low, high] }: Step, unit: TemperatureUnit): string {
  return `${degrees(low, unit).replace(/ .*/, '')}–${degrees(high, unit)}`;
}

export function deedOf(step: Step, unit: TemperatureUnit): string {
  const { kind, end, alkali, letDown } = step;
  const dial = `Dial ${step.approachNotch}`;
  if (letDown) {
    return `Heat off. Hot water in portions of ${grams(letDown.hotPortionKg)} g while above ${degrees(120, unit)}, then ${grams(letDown.coolPortionKg)} g, to ${(letDown.solids * 100).toFixed(0)} °Bx. Wait ${step.waitS} s after each.`;
  }
  if ('reachedC' in end) {
    const then = kind === 'cast' ? ', then pour' : '';
    return `${dial}. Up to ${degrees(end.reachedC, unit)}${then}.`;
  }
  const parts = alkali.length > 0 ? `Heat off, ${alkali.length} parts of alkali, ${step.waitS} s apart. ` : '';
  return `${parts}${dial}, in the band ${step.holdNotch}. Hold ${end.heldMinutes.toFixed(0)} min; too hot: a spoonful of cold water.`;
}
