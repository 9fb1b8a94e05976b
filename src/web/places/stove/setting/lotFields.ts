/** The texts of a lot's fields, as typed: weight and name. */
import { lotMassKg } from '../../../../core/lot/lot.ts';
import type { Range } from '../../../../core/twin/range.ts';
import { type Entry, EntryError } from '../../../parts/entry.ts';
import { grams } from '../../../parts/figures.ts';
import { nameEntry, quantityEntry } from '../../../parts/numberEntry.ts';

const same = <T>(_: T, value: T): T => value;
const identity = <T>(value: T): T => value;

const weightEntry: Entry<number> = quantityEntry({
  label: 'Weight',
  dimension: 'mass',
  unit: 'g',
  range: lotMassKg,
  get: identity<number>,
  set: same<number>,
});
const nameField: Entry<string> = nameEntry('Name', identity<string>, same<string>);

export type WeightRead =
  | { readonly kind: 'none' }
  | { readonly kind: 'weight'; readonly kg: number }
  | { readonly kind: 'wrong'; readonly trouble: string };

/** An empty field is no weight; a number without a unit is in grams. */
export function readWeight(text: string): WeightRead {
  if (text.trim() === '') return { kind: 'none' };
  try {
    return { kind: 'weight', kg: weightEntry.put(0, text) };
  } catch (error) {
    if (error instanceof EntryError) return { kind: 'wrong', trouble: error.message };
    throw error;
  }
}

/** What is wrong with a name. */
export function nameTrouble(text: string): string | undefined {
  try {
    nameField.put('', text);
    return undefined;
  } catch (error) {
    if (error instanceof EntryError) return error.message;
    throw error;
  }
}

/** A weight against what was expected. */
export function weightTold(kg: number, { low, mid, high }: Range): string {
  const off = `off by ${kg < mid ? '−' : '+'}${Math.abs(1000 * (kg - mid)).toFixed(0)} g`;
  if (kg >= low && kg <= high) return `${off}: within what was expected`;
  return `${off}: outside ${grams(low)} to ${grams(high)} g; is the tray taken off?`;
}

/** So far from what was expected that a digit or the unit may have slipped. */
export function isFarOff(kg: number, { low, high }: Range): boolean {
  return kg > 1.5 * high || kg < 0.5 * low;
}
