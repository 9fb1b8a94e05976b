/** Slips of a finger in a reading: what was probably meant, if what was typed is far from what can be. */
import type { Range } from '../../../../core/twin/range.ts';
import { inUnit, type TemperatureUnit } from '../../../parts/temperature.ts';

/** Nearer to the twin's range than this nothing is asked, K. */
const room = 8;

/**
 * @param value as typed, in `unit`
 * @returns undefined when it fits; otherwise the slips that would explain it, perhaps none, likeliest first
 */
export function likelySlips(
  value: number,
  unit: TemperatureUnit,
  { low, mid, high }: Range,
): readonly number[] | undefined {
  const [least, most] = [inUnit(low - room, unit), inUnit(high + room, unit)];
  const fits = (one: number) => one >= least && one <= most;
  if (fits(value)) return undefined;
  const expected = inUnit(mid, unit);
  const candidates = new Set([...swapped(value), ...dropped(value), ...otherUnit(value, unit)].filter(fits));
  return [...candidates].sort((a, b) => Math.abs(a - expected) - Math.abs(b - expected)).slice(0, 2);
}

/** Two digits changed places. */
function swapped(value: number): number[] {
  const digits = String(Math.round(value)).split('');
  return digits.slice(1).map((_, i) => Number(digits.toSpliced(i, 2, digits[i + 1] ?? '', digits[i] ?? '').join('')));
}

/** A digit was left out, or struck twice. */
function dropped(value: number): number[] {
  const text = String(Math.round(value));
  const places = Array.from({ length: text.length + 1 }, (_, i) => i);
  const missing = places.flatMap((i) =>
    Array.from({ length: 10 }, (_, digit) => Number(text.slice(0, i) + digit + text.slice(i))),
  );
  const doubled = places.slice(0, -1).map((i) => Number(text.slice(0, i) + text.slice(i + 1)));
  return [...missing, ...doubled];
}

function otherUnit(value: number, unit: TemperatureUnit): number[] {
  return [Math.round(unit === 'C' ? (value - 32) / 1.8 : 1.8 * value + 32)];
}
