/** From what a person wrote (`1.1 lb`, `1h20min`, `275 °F`) to a plain number in the unit that the core computes in. */
import { type Dimension, dimensions } from './dimension.ts';
import { QuantityError } from './quantityError.ts';
import { dimensionSpelled, unitNamed, unitSpelled } from './unitLookup.ts';
import type { Unit, UnitName, UnitOf } from './units.ts';
import { spellOutFractions, writtenNumber } from './writtenNumber.ts';

/** A number in any of its spellings, then everything up to the next digit as its unit. */
const term = /([+\-\u2212\u2013]?[\d.,](?:[\d.,/\s]*\d)?\.?(?:e[+-]?\d+)?)([^\d]*)/iy;
/** In front of a later number: `2 lb .5 oz` must not become 5 oz. */
const signOrPoint = /[.,+\-\u2212\u2013]$/;
const longestEntry = 60;

/**
 * The quantity that `text` writes, in the dimension's core unit (kg, m3, C, K of difference, s, m, Pa, W, J, share of one, pH).
 *
 * @param defaultUnit taken for a number without a unit; without it such a number is refused, because a guess costs a batch
 * @throws QuantityError saying what was given and what would be understood
 */
export function parseQuantity<D extends Dimension>(text: string, dimension: D, defaultUnit?: UnitOf<D>): number {
  const terms = termsOf(text, dimension, defaultUnit);
  const { lowest, compound, label } = dimensions[dimension];
  if (terms.length > 1 && !(compound && largestFirst(terms))) {
    throw new QuantityError(text, dimension, 'mixes units in a way that is not understood');
  }
  const value = terms.reduce((sum, { number, unit }) => sum + number * unit.factor + unit.offset, 0);
  const impossible = true;
  if (!Number.isFinite(value)) throw new QuantityError(text, dimension, 'is too large', { impossible });
  if (value < lowest) {
    throw new QuantityError(text, dimension, `is below the lowest possible ${label}`, { impossible });
  }
  return value;
}

interface Term {
  readonly number: number;
  readonly unit: Unit;
}

function termsOf(text: string, dimension: Dimension, defaultUnit: UnitName | undefined): readonly Term[] {
  if (text.length > longestEntry) throw new QuantityError(`${text.slice(0, 20)}…`, dimension, 'is too long');
  const spelled = numberFirst(spellOutFractions(text).trim(), dimension);
  const terms: Term[] = [];
  term.lastIndex = 0;
  while (term.lastIndex < spelled.length) {
    const found = term.exec(spelled);
    if (found === null) throw new QuantityError(text, dimension, 'is not understood');
    const [, written = '', unitText = ''] = found;
    if (term.lastIndex < spelled.length && signOrPoint.test(unitText)) {
      throw new QuantityError(text, dimension, 'is not understood');
    }
    const number = writtenNumber(written);
    if (typeof number !== 'number') throw new QuantityError(text, dimension, number.trouble);
    terms.push({ number, unit: unitFor(unitText.trim(), text, dimension, defaultUnit) });
  }
  if (terms.length === 0) throw new QuantityError(text, dimension, 'is empty');
  return terms;
}

/** `pH 5.2` is how everybody writes a pH; elsewhere the unit follows the number. */
function numberFirst(text: string, dimension: Dimension): string {
  return dimension === 'ph' ? text.replace(/^pH\s*([\d.,+-].*)$/i, '$1 pH') : text;
}

function unitFor(spelling: string, text: string, dimension: Dimension, defaultUnit: UnitName | undefined): Unit {
  if (spelling === '') {
    if (defaultUnit === undefined) throw new QuantityError(text, dimension, 'has no unit');
    return unitNamed(defaultUnit);
  }
  const unit = unitSpelled(spelling, dimension);
  if (unit !== undefined) return unit;
  const other = dimensionSpelled(spelling);
  throw new QuantityError(text, dimension, other ? `is a ${dimensions[other].label}` : 'is not understood');
}

function largestFirst(terms: readonly Term[]): boolean {
  return terms.every(({ unit }, at) => {
    const before = terms[at - 1];
    return before === undefined || unit.factor < before.unit.factor;
  });
}
