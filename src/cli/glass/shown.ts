/** Masses, volumes and ranges as a person reads them. */
import type { Range } from '../../core/twin/range.ts';
import { formatQuantity } from '../../core/units/formatQuantity.ts';

export type UnitFamily = 'metric' | 'us' | 'imperial';

export function massText(kg: number, family: UnitFamily): string {
  if (family === 'metric')
    return kg < 1 ? formatQuantity(kg, 'g', kg < 0.01 ? 2 : kg < 0.1 ? 1 : 0) : formatQuantity(kg, 'kg', 3);
  return kg < 0.453 ? formatQuantity(kg, 'oz', kg < 0.03 ? 3 : 2) : formatQuantity(kg, 'lb', 3);
}

export function volumeText(litres: number, family: UnitFamily): string {
  const unit = { metric: 'L', us: 'gal', imperial: 'imp gal' } as const;
  return formatQuantity(litres / 1000, unit[family], 2);
}

export type Show = (value: number) => string;

/** `1.0704 to 1.0742`, or nothing where the digits shown say no more than the middle. */
export function reachText({ low, mid, high }: Range, show: Show): string {
  const [from, to] = [show(low), show(high)];
  return from === to && from === show(mid) ? '' : `${from} to ${to}`;
}

export function digits(count: number, factor = 1): Show {
  return (value) => {
    const text = (value * factor).toFixed(count);
    return Number(text) === 0 ? text.replace('-', '') : text;
  };
}
