/** What each step of a plan asks of the cook, for screen and paper. The dial is told as the drawn cook turned it. */
import type { Course } from '../pan/course.ts';
import type { Step } from '../pan/steps.ts';
import { dialText } from '../planning/dial.ts';
import { grams } from './report/numbers.ts';

type Cooked = Pick<Course, 'steps' | 'deeds'>;

/** @param degrees a temperature in the reader's unit, `137 °C` */
export function deedText(step: Step, cooked: Cooked, index: number, degrees: (celsius: number) => string): string {
  const { kind, end, alkali, letDown } = step;
  const dial = `Dial ${dialText(cooked, index)}`;
  if (letDown) {
    return `Heat off. Hot water in portions of ${grams(letDown.hotPortionKg)} while above ${degrees(120)}, then ${grams(letDown.coolPortionKg)}, to ${(letDown.solids * 100).toFixed(0)} °Bx. Wait ${step.waitS} s after each.`;
  }
  if ('reachedC' in end) {
    const then = kind === 'cast' ? ', then pour' : '';
    return `${dial}. Up to ${degrees(end.reachedC)}${then}.`;
  }
  const parts = alkali.length > 0 ? `Heat off, ${alkali.length} parts of alkali, ${step.waitS} s apart. ` : '';
  return `${parts}${dial}. Hold ${end.heldMinutes.toFixed(0)} min.`;
}

/** How a hold is kept from above. */
export const tooHot = 'Too hot: a spoonful of cold water.';
