/** Quantities on the wire: a number with a code of the Unified Code for Units of Measure. */
import { type Dimension, dimensions } from './dimension.ts';
import { QuantityError } from './quantityError.ts';
import { unitsOf } from './unitLookup.ts';

export interface UcumQuantity {
  readonly value: number;
  /** UCUM code, case-sensitive: `kg`, `Cel`, `[degF]`. */
  readonly unit: string;
}

/** A core value as it goes over the wire: always in the dimension's core unit, so nothing is rounded on the way. */
export function toUcum(value: number, dimension: Dimension): UcumQuantity {
  return { value, unit: dimensions[dimension].coreUcum };
}

/**
 * The core value of a quantity received in any unit of its dimension.
 *
 * A temperature difference has no Celsius or Fahrenheit code: UCUM's `Cel` and `[degF]` are points of a scale, so it comes in K.
 * @throws QuantityError for a code that the dimension doesn't have (naming those it has), or a value that can't be
 */
export function fromUcum({ value, unit: code }: UcumQuantity, dimension: Dimension): number {
  const unit = unitsOf(dimension).find(({ ucum }) => ucum === code);
  const given = `${value} ${code}`;
  if (unit === undefined) {
    const codes = unitsOf(dimension).flatMap(({ ucum }) => ucum ?? []);
    throw new QuantityError(given, dimension, `is not in a UCUM code for it (${codes.join(', ')})`);
  }
  const coreValue = value * unit.factor + unit.offset;
  if (!Number.isFinite(coreValue)) throw new QuantityError(given, dimension, 'is not a finite number');
  const { lowest, label } = dimensions[dimension];
  if (coreValue < lowest) throw new QuantityError(given, dimension, `is below the lowest possible ${label}`);
  return coreValue;
}
