/** The scales that a colour may be wished for on, all of a 10 % w/w solution. */
import { a430FromEbc, a430FromSrm, ebcFromA430, srmFromA430 } from '../../../../core/colour/scales.ts';
import { a430Range, type Within } from '../../../../core/planning/aim.ts';
import { writtenNumber } from '../../../../core/units/writtenNumber.ts';

interface Scale {
  readonly to: (a430: number) => number;
  readonly from: (value: number) => number;
}

export const colourScales = {
  EBC: { to: ebcFromA430, from: a430FromEbc },
  SRM: { to: srmFromA430, from: a430FromSrm },
  A430: { to: (a430) => a430, from: (value) => value },
} as const satisfies Record<string, Scale>;
export type ColourScale = keyof typeof colourScales;

export const written = (a430: number, scale: ColourScale): string =>
  String(Number(colourScales[scale].to(a430).toPrecision(3)));

/** @returns A430 per cm; nothing for an empty text, and what is wrong with one that can't be aimed at */
export function readColour(text: string, scale: ColourScale): { readonly a430?: number; readonly trouble?: string } {
  const given = text.trim();
  if (given === '') return {};
  const value = writtenNumber(given);
  const [least, most] = a430Range;
  const a430 = typeof value === 'number' ? colourScales[scale].from(value) : Number.NaN;
  if (a430 >= least * (1 - 1e-9) && a430 <= most * (1 + 1e-9)) return { a430 };
  return {
    trouble: `“${given}” can’t be aimed at. Allowed: ${written(least, scale)} to ${written(most, scale)} ${scale}`,
  };
}

const nearAllowed = (scale: ColourScale): string => `Allowed: above 0 to 99 %, or as much in ${scale}, such as 5`;

/** @returns what counts as landed to either side of a colour, written as `10 %`, or as much on the scale; or what is wrong with it */
export function readNear(text: string, scale: ColourScale): { readonly within?: Within; readonly trouble?: string } {
  const [, figures = '', percent] = /^(.*?)\s*(%?)$/.exec(text.trim()) ?? [];
  const value = writtenNumber(figures);
  if (typeof value === 'number' && value > 0) {
    if (percent && value < 100) return { within: { share: value / 100 } };
    const a430 = colourScales[scale].from(value);
    if (!percent && a430 <= a430Range[1]) return { within: { a430 } };
  }
  return { trouble: `“${text.trim()}” is no span of colour. ${nearAllowed(scale)}` };
}
