/** The units that the Glass speaks, as chosen, and numbers written in them. */
import { ebcFromA430, srmFromA430 } from '../../../core/colour/scales.ts';
import type { Range } from '../../../core/twin/range.ts';
import { formatQuantity } from '../../../core/units/formatQuantity.ts';

export interface GlassUnits {
  /** Masses go with it: g and kg, or oz and lb. */
  readonly volume: 'L' | 'gal' | 'imp gal';
  readonly gravity: 'SG' | 'P';
  readonly colour: 'EBC' | 'SRM';
}

export type Show = (value: number) => string;

export function digits(count: number, factor = 1): Show {
  return (value) => {
    const text = (value * factor).toFixed(count);
    return Number(text) === 0 ? text.replace('-', '') : text;
  };
}

export function massShown({ volume }: Pick<GlassUnits, 'volume'>): Show {
  return volume === 'L'
    ? (kg) => (kg < 1 ? formatQuantity(kg, 'g', kg < 0.01 ? 2 : kg < 0.1 ? 1 : 0) : formatQuantity(kg, 'kg', 3))
    : (kg) => (kg < 0.453 ? formatQuantity(kg, 'oz', kg < 0.03 ? 3 : 2) : formatQuantity(kg, 'lb', 3));
}

/** Litres in the unit chosen. */
export function volumeShown({ volume }: Pick<GlassUnits, 'volume'>): Show {
  return (litres) => formatQuantity(litres / 1000, volume, 2);
}

export function colourFactor({ colour }: Pick<GlassUnits, 'colour'>): number {
  return colour === 'EBC' ? ebcFromA430(1) : srmFromA430(1);
}

/** `1.0704 to 1.0742`, or nothing where the digits shown say no more than the middle. */
export function reachShown({ low, mid, high }: Range, show: Show): string {
  const [from, to] = [show(low), show(high)];
  return from === to && from === show(mid) ? '' : `${from} to ${to}`;
}

/** Behind the middle; nothing for nothing. */
export function bracketed(reach: string): string {
  return reach === '' ? '' : ` (${reach})`;
}
