/** What each step asks of the cook, in the unit chosen on the page. */
import { deedText } from '../../../core/book/stepDeeds.ts';
import type { Step } from '../../../core/pan/steps.ts';
import type { Picture } from '../../parts/panLine/picture.ts';
import { degrees, type TemperatureUnit } from '../../parts/temperature.ts';

export function bandOf({ bandC: [low, high] }: Step, unit: TemperatureUnit): string {
  return `${degrees(low, unit).replace(/ .*/, '')}–${degrees(high, unit)}`;
}

type Drawn = Pick<Picture, 'steps' | 'deeds'>;

export const deedOf = (step: Step, drawn: Drawn, index: number, unit: TemperatureUnit): string =>
  deedText(step, drawn, index, (celsius) => degrees(celsius, unit));
