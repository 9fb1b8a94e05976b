/** Numbers as they are shown: as many figures as a kitchen can use. */
import { ebcFromA430, srmFromA430 } from '../../core/colour/scales.ts';
import type { Range } from '../../core/twin/range.ts';

/** What a scale shows: to 0.01 g for a pinch, to 1 g for the sugar. */
export function grams(kg: number): string {
  const g = kg * 1000;
  return g.toFixed(g < 10 ? 2 : g < 100 ? 1 : 0);
}

/** Two figures, whole from 10 on. */
function twoFigures(value: number): string {
  if (value >= 10) return String(Number(value.toPrecision(2)));
  if (value >= 1) return value.toFixed(1);
  return value < 0.01 ? '0' : value.toFixed(2);
}

export const ebcOf = (a430: number): string => twoFigures(ebcFromA430(a430));
export const srmOf = (a430: number): string => twoFigures(srmFromA430(a430));
export const percent = (share: number, digits = 0): string => `${(share * 100).toFixed(digits)} %`;

/** `87 to 100`, or the one value when both ends read the same. */
export function span(range: Range, show: (value: number) => string): string {
  const [low, high] = [show(range.low), show(range.high)];
  return low === high ? low : `${low} to ${high}`;
}

/** `1 h 32 min`. */
export function clock(minutes: number): string {
  const whole = Math.round(minutes);
  const hours = Math.floor(whole / 60);
  return hours > 0 ? `${hours} h ${String(whole % 60).padStart(2, '0')} min` : `${whole} min`;
}
