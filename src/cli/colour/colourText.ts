/** A colour as lines for a person, with a swatch where the terminal shows one. */
import type { Range } from '../../core/twin/range.ts';
import { showsColour, swatch } from '../swatch.ts';
import { pairs } from '../table.ts';
import type { MeasuredColour } from './measuredColour.ts';

/** @param within how often the truth lies in the ranges */
export function colourText(colour: MeasuredColour, within = '8 in 10'): string {
  const { a430, ebc, srm, icumsa, specific430, hueIndex, drop } = colour;
  const { r, g, b, clipped } = drop;
  const look = `${r}, ${g}, ${b}${clipped ? ', as near as a screen comes to it' : ''}`;
  const rows: (readonly [string, string])[] = [
    ['EBC', ranged(ebc)],
    ['SRM', ranged(srm)],
    ['A430 per cm', ranged(a430)],
    ['ICUMSA, IU', ranged(icumsa)],
    ['specific', `${ranged(specific430)} L/(g cm) of dry sugar at 430 nm`],
    ['hue index', `${hueIndex.toFixed(1)}, as expected of a cooked sugar (assumed)`],
    ['a 3 mm drop', `${look}${showsColour(process.stdout) ? ` ${swatch(drop)}` : ''}`],
  ];
  const spread = ebc.low === ebc.high ? '' : `; in brackets: ${within}`;
  return `Colour of a 10 % w/w solution of the dry sugar${spread}\n${pairs(rows)}`;
}

function ranged({ low, mid, high }: Range): string {
  const show = (value: number) => String(Number(value.toPrecision(3)));
  return low === high ? show(mid) : `${show(mid)} (${show(low)} to ${show(high)})`;
}
