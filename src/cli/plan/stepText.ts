/** Steps in words: name, band and end; and a colour as a number. */
import type { Step, StepKind } from '../../core/pan/steps.ts';

export const stepNames: Readonly<Record<StepKind, string>> = {
  dissolve: 'dissolve',
  climb: 'climb',
  invert: 'invert',
  brown: 'brown',
  roast: 'roast',
  cast: 'cast',
  letDown: 'let down',
};

export const grams = (kg: number): string => `${(kg * 1000).toFixed(kg < 0.01 ? 2 : kg < 0.1 ? 1 : 0)} g`;

export function bandText({ bandC: [low, high] }: Step): string {
  return `${low.toFixed(0)}-${high.toFixed(0)}`;
}

export function endText({ end, letDown, alkali, waitS }: Step): string {
  if (letDown) {
    const portions = `${grams(letDown.hotPortionKg)}, below 120 °C ${grams(letDown.coolPortionKg)}`;
    return `at ${(100 * letDown.solids).toFixed(0)} Brix; hot water by ${portions}, ${waitS} s apart`;
  }
  if ('reachedC' in end) return `at ${end.reachedC} °C`;
  return `${end.heldMinutes} min in band${alkali.length > 0 ? ', alkali first' : ''}`;
}

export function ebcText(ebc: number): string {
  return ebc.toFixed(ebc < 9.95 ? 1 : 0);
}
