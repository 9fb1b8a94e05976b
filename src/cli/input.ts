/** What an option takes: how it is written, read and checked. Everything that is refused says what is allowed. */
import { type Dimension, dimensions } from '../core/units/dimension.ts';
import { formatQuantity } from '../core/units/formatQuantity.ts';
import { parseQuantity } from '../core/units/parseQuantity.ts';
import { QuantityError } from '../core/units/quantityError.ts';
import type { UnitOf } from '../core/units/units.ts';
import { writtenNumber } from '../core/units/writtenNumber.ts';
import { suggestion } from './nearest.ts';
import { misused, Stop } from './stop.ts';

export interface Input<T> {
  /** What stands for the value in the help. */
  readonly placeholder: string;
  readonly meaning: string;
  /** @param flag the option's name, for the message */
  readonly read: (text: string, flag: string) => T;
  /** Text that is read when the option is left out. */
  readonly usual?: string;
  /** What stands in for it when it is left out, for the help alone. */
  readonly otherwise?: string;
  readonly required: boolean;
  /** May be given several times; its texts come as one, parted by semicolons. */
  readonly several?: true;
}

type Range = readonly [number, number];

/** A quantity with its unit, in the core's unit; `shown` is the unit that limits are told in. */
export function quantity<D extends Dimension>(
  dimension: D,
  meaning: string,
  shown: UnitOf<D>,
  range: Range,
): Input<number> {
  const allowed = `${range.map((limit) => formatQuantity(limit, shown)).join(' to ')}`;
  return {
    placeholder: `<${dimension}>`,
    meaning,
    required: true,
    read: (text, flag) => within(understood({ text, flag, allowed }, dimension), range, { text, flag, allowed }),
  };
}

/** Per cent, written with or without its sign; read as a share of one. */
export function percent(meaning: string, range: Range = [0, 1]): Input<number> {
  const allowed = `${range.map((share) => formatQuantity(share, '%').replace('%', '')).join(' to ')} %`;
  return {
    placeholder: '<percent>',
    meaning,
    required: true,
    read: (text, flag) => within(understood({ text, flag, allowed }, 'fraction', '%'), range, { text, flag, allowed }),
  };
}

/** A plain number in a fixed unit. Nothing is converted, so its limits are exact. */
export function number(meaning: string, [low, high]: Range, unit = ''): Input<number> {
  const allowed = `${low} to ${high}${unit && ` ${unit}`}`;
  return {
    placeholder: '<number>',
    meaning: unit ? `${meaning}, ${unit}` : meaning,
    required: true,
    read: (text, flag) => {
      const value = writtenNumber(text);
      if (typeof value !== 'number') misused(flag, text, value.trouble, allowed);
      if (!(value >= low && value <= high)) outside({ text, flag, allowed });
      return value;
    },
  };
}

/** A count or a seed. */
export function wholeNumber(meaning: string, [low, high]: Range): Input<number> {
  const allowed = `whole numbers, ${low} to ${high}`;
  return {
    placeholder: '<number>',
    meaning,
    required: true,
    read: (text, flag) => {
      const value = writtenNumber(text);
      if (typeof value !== 'number') misused(flag, text, value.trouble, allowed);
      if (!(value >= low && value <= high)) outside({ text, flag, allowed });
      if (!Number.isInteger(value)) misused(flag, text, 'is not whole', allowed);
      return value;
    },
  };
}

/** One word of a list. */
export function word<const Words extends readonly string[]>(meaning: string, words: Words): Input<Words[number]> {
  return {
    placeholder: words.length > 4 ? '<word>' : `<${words.join('|')}>`,
    meaning: words.length > 4 ? `${meaning}: ${words.join(', ')}` : meaning,
    required: true,
    read: (text, flag) => {
      const known = words.find((each) => each.toLowerCase() === text.toLowerCase());
      if (known === undefined) {
        misused(flag, text, `is not known${suggestion(text, words)}`, words.join(', '));
      }
      return known;
    },
  };
}

/** @param otherwise what stands in for it when it is left out, for the help */
export function optional<T>(input: Input<T>, otherwise?: string): Input<T | undefined> {
  return { ...input, required: false, ...(otherwise !== undefined && { otherwise }) };
}

/** The option with what it is when left out, written as a person would. */
export function usually<T>(input: Input<T>, usual: string): Input<T> {
  return { ...input, required: false, usual };
}

/** The same input, its value changed: for instance seconds to minutes. */
export function mapped<A, B>(input: Input<A>, change: (value: A) => B): Input<B> {
  return { ...input, read: (text, flag) => change(input.read(text, flag)) };
}

export type Inputs = Readonly<Record<string, Input<unknown>>>;
export type Given<I extends Inputs> = { readonly [K in keyof I]: I[K] extends Input<infer T> ? T : never };
/** What commander collected: the text of each option that was given. */
export type Texts = Readonly<Record<string, unknown>>;

/** `invertTime` on the command line: `--invert-time`. */
export function flagOf(name: string): string {
  return `--${name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}`;
}

/** Reads every option of a command. */
export function readAll<I extends Inputs>(inputs: I, texts: Texts): Given<I> {
  const values = Object.entries(inputs).map(([name, { read, usual, required, placeholder }]) => {
    const text = texts[name] ?? usual;
    if (typeof text === 'string') return [name, read(text, flagOf(name))] as const;
    if (required) {
      const field = flagOf(name);
      throw new Stop({ kind: 'misused', field, message: `${field} ${placeholder} is missing (see --help)` });
    }
    return [name, undefined] as const;
  });
  return Object.fromEntries(values) as Given<I>;
}

interface Entered {
  readonly text: string;
  readonly flag: string;
  readonly allowed: string;
}

function understood<D extends Dimension>(entered: Entered, dimension: D, unit?: UnitOf<D>): number {
  const { text, flag, allowed } = entered;
  try {
    return parseQuantity(text, dimension, unit);
  } catch (error) {
    if (!(error instanceof QuantityError)) throw error;
    if (error.impossible) outside(entered);
    misused(flag, text, `${error.trouble}; write ${dimensions[dimension].example}`, allowed);
  }
}

function outside({ text, flag, allowed }: Entered): never {
  const message = `${flag}: '${text}' is outside the range; allowed: ${allowed}`;
  throw new Stop({ kind: 'outsideRange', field: flag, value: text, allowed, message });
}

/** A hair beyond a limit is rounding of a conversion, not a wish. */
function within(value: number, [low, high]: Range, entered: Entered): number {
  const slack = (limit: number) => 1e-9 * Math.abs(limit) + 1e-12 * (high - low);
  if (!(value >= low - slack(low) && value <= high + slack(high))) outside(entered);
  return Math.min(high, Math.max(low, value));
}
