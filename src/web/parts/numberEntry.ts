/** Fields that hold one number: typed in any kitchen unit that the core understands, held in the core's unit, within limits. */
import { formatQuantity } from '../../core/units/formatQuantity.ts';
import { parseQuantity } from '../../core/units/parseQuantity.ts';
import { QuantityError } from '../../core/units/quantityError.ts';
import type { UnitOf } from '../../core/units/units.ts';
import { writtenNumber } from '../../core/units/writtenNumber.ts';
import { type Entry, EntryError } from './entry.ts';

interface NumberFacts<T> {
  readonly label: string;
  readonly hint?: string;
  readonly range: readonly [number, number];
  get(of: T): number;
  set(into: T, value: number): T;
}

/** Reads a number from a text, or says what is wrong with the text. */
interface Reading {
  read(text: string): number | { readonly trouble: string };
  write(value: number): string;
}

function numberEntry<T>({ label, range, get, set, ...rest }: NumberFacts<T>, { read, write }: Reading): Entry<T> {
  const [least, most] = range;
  const allowed = `Allowed: ${write(least)} to ${write(most)}.`;
  return {
    label,
    ...rest,
    keyboard: 'text',
    show: (of) => write(get(of)),
    put(into, text) {
      const given = text.trim();
      const refuse = (trouble: string) => new EntryError(`${label}: “${shownText(given)}” ${trouble}. ${allowed}`);
      if (given === '') throw new EntryError(`${label} is empty. ${allowed}`);
      const value = read(given);
      if (typeof value !== 'number') throw refuse(value.trouble);
      // Half a last figure of grace, so that a limit typed in another unit is still the limit.
      const grace = 1e-9 * Math.max(Math.abs(least), Math.abs(most));
      if (!(value >= least - grace && value <= most + grace)) {
        throw refuse(`is too ${value < least ? 'little' : 'much'}`);
      }
      return set(into, Math.min(most, Math.max(least, value)));
    },
  };
}

/** A pasted page is not repeated in a message. */
function shownText(text: string): string {
  return text.length > 24 ? `${text.slice(0, 24)}…` : text;
}

/** A mass of -5 g can't be, but on the page it is just too little. */
function troubleOf({ trouble }: QuantityError): string {
  return trouble.startsWith('is below the lowest') ? 'is too little' : trouble;
}

type Typed = 'mass' | 'temperature' | 'duration' | 'length' | 'power' | 'volume' | 'fraction' | 'hardness';

/** A quantity; `scale` is the core's unit in the one the value is held in (minutes: 60 s). */
export function quantityEntry<T, D extends Typed>(
  facts: NumberFacts<T> & {
    readonly dimension: D;
    readonly unit: UnitOf<D>;
    readonly scale?: number;
    /** Writes it in another way than as a number of `unit`. */
    readonly write?: (value: number) => string;
  },
): Entry<T> {
  const { dimension, unit, scale = 1, write, ...rest } = facts;
  return numberEntry(rest, {
    read(text) {
      try {
        return parseQuantity(text, dimension, unit) / scale;
      } catch (error) {
        if (error instanceof QuantityError) return { trouble: troubleOf(error) };
        throw error;
      }
    },
    write: write ?? ((value) => shortened(formatQuantity(value * scale, unit))),
  });
}

/** To five figures: `453.59 g`, not `453.59237 g`. */
function shortened(quantity: string): string {
  return quantity.replace(/^-?[\d.]+/, (number) => String(Number(Number(number).toPrecision(5))));
}

/** A number in a unit of its own, such as g/kg, which may be left out or typed in any spacing. */
export function plainEntry<T>(
  facts: NumberFacts<T> & { readonly unit: string; readonly scale?: number; readonly whole?: boolean },
): Entry<T> {
  const { unit, scale = 1, whole = false, ...rest } = facts;
  const ending = new RegExp(`\\s*${unit.replace(/[/ ]/g, '\\s*$&\\s*')}$`, 'i');
  return numberEntry(rest, {
    read(text) {
      const value = writtenNumber(unit ? text.trim().replace(ending, '') : text);
      if (typeof value !== 'number') return value;
      return whole && !Number.isInteger(value) ? { trouble: 'is not a whole number' } : value / scale;
    },
    write: (value) => `${Number((value * scale).toPrecision(6))}${unit ? ` ${unit}` : ''}`,
  });
}

/** A name: one line, 1 to 80 characters. */
export function nameEntry<T>(label: string, get: (of: T) => string, set: (into: T, name: string) => T): Entry<T> {
  return {
    label,
    keyboard: 'text',
    show: get,
    put(into, text) {
      const name = text.trim();
      const allowed = 'Allowed: 1 to 80 characters.';
      if (name === '') throw new EntryError(`${label} is empty. ${allowed}`);
      if (name.length > 80) throw new EntryError(`${label} has ${name.length} characters. ${allowed}`);
      return set(into, name);
    },
  };
}
