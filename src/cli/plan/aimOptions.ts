/** The options of `plan` that say what is wished for, rather than how it is cooked. */
import { number, optional } from '../input.ts';
import { colourInput, withinInput } from './colourInput.ts';

const taste = (meaning: string) => optional(number(meaning, [0, 10]));

export const aimInputs = {
  colour: optional(colourInput),
  within: optional(withinInput, '10%'),
  fruitTaste: taste('taste of fruit wanted, from 0 to 10'),
  roastTaste: taste('taste of roast wanted, from 0 to 10'),
};
