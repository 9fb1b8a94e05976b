/** Values of a line's fields, each refused with what is allowed. */
import { readingUnits } from '../../core/log/bodies.ts';
import { eventRanges } from '../../core/log/ranges.ts';
import type { Step } from '../../core/pan/steps.ts';
import type { Observation } from '../../core/twin/observe.ts';
import { parseQuantity } from '../../core/units/parseQuantity.ts';
import { QuantityError } from '../../core/units/quantityError.ts';
import { fromUcum } from '../../core/units/ucum.ts';
import { suggestion } from '../nearest.ts';
import { stepNames } from '../plan/stepText.ts';
import { misused } from '../stop.ts';

/** The value as the line gave it. */
export function shown(value: unknown): string {
  const text = typeof value === 'string' ? value : (JSON.stringify(value) ?? 'nothing');
  return text.slice(0, 60);
}

export function numberIn(field: string, value: unknown, [low, high]: readonly [number, number], unit = ''): number {
  const allowed = `a number, ${low} to ${high}${unit && ` ${unit}`}`;
  if (typeof value !== 'number') misused(field, shown(value), 'is not a number', allowed);
  if (!(value >= low && value <= high)) misused(field, shown(value), 'is outside the range', allowed);
  return value;
}

export function wholeIn(field: string, value: unknown, range: readonly [number, number]): number {
  const number = numberIn(field, value, range);
  if (!Number.isInteger(number)) misused(field, shown(value), 'is not whole', `${range.join(' to ')}, whole`);
  return number;
}

/** The unit has to be said: Fahrenheit taken for Celsius costs a batch. */
export function readingIn(value: unknown, unit: unknown, byHand: unknown = false): Observation {
  const known = readingUnits.find((each) => each === unit);
  if (known === undefined) misused('unit', shown(unit), 'is not known', readingUnits.join(', '));
  if (typeof byHand !== 'boolean') misused('byHand', shown(byHand), 'is not known', 'true, false');
  const [low, high] = eventRanges.valueC;
  const allowed = `a number, ${low} to ${high} Cel`;
  if (typeof value !== 'number') misused('reading', shown(value), 'is not a number', allowed);
  try {
    const valueC = fromUcum({ value, unit: known }, 'temperature');
    if (valueC >= low && valueC <= high) return { kind: 'reading', valueC, byHand };
  } catch (error) {
    if (!(error instanceof QuantityError)) throw error;
  }
  misused('reading', `${value} ${known}`, 'is outside the range', allowed);
}

const mostWaterM3 = 0.005;

/** Volume in m3, written as on the command line. */
export function volumeIn(field: string, value: unknown): number {
  const allowed = 'a volume such as "5mL", up to 5L';
  if (typeof value !== 'string') misused(field, shown(value), 'is not text', allowed);
  try {
    const volume = parseQuantity(value, 'volume');
    if (volume > 0 && volume <= mostWaterM3) return volume;
  } catch (error) {
    if (!(error instanceof QuantityError)) throw error;
  }
  misused(field, shown(value), 'is not understood or outside the range', allowed);
}

export function stepIn(value: unknown, steps: readonly Step[]): number {
  const known = steps.map(({ kind }) => kind);
  const index = steps.findIndex(({ kind }) => kind === value || stepNames[kind] === value);
  const near = typeof value === 'string' ? suggestion(value, known) : '';
  if (index < 0) misused('step', shown(value), `is not in this plan${near}`, known.join(', '));
  return index;
}
