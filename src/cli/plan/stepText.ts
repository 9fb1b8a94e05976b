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

export function bandText({ bandC: [low, high] }: Step): string {
  return `${low.toFixed(0)}-${high.toFixed(0)}`;
}

export function endText({ end, letDown, alkali }: Step): string {
  if (letDown) return `at ${(100 * letDown.solids).toFixed(0)} Brix`;
  if ('reachedC' in end) return `at ${end.reachedC} °C`;
  return `${end.heldMinutes} min in band${alkali.length > 0 ? ', alkali first' : ''}`;
}

export function ebcText(ebc: number): string {
  return ebc.toFixed(ebc < 9.95 ? 1 : 0);
}
