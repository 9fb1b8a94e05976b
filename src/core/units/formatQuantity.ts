/** From the core's plain number to a quantity that a person reads, and that `parseQuantity` reads back. */
import { unitNamed } from './unitLookup.ts';
import type { UnitName } from './units.ts';

/** Binary dust of a conversion starts beyond these figures. */
const significantFigures = 12;

/**
 * `1.1 lb`, `137.2 °C`, `3%`: a core value shown in a unit.
 *
 * @param value in the core unit of the unit's dimension
 * @param digits after the point; without it as many as the value has, to 12 figures
 */
export function formatQuantity(value: number, unit: UnitName, digits?: number): string {
  const { factor, offset, symbol } = unitNamed(unit);
  const shown = (value - offset) / factor;
  const number = digits === undefined ? String(Number(shown.toPrecision(significantFigures))) : shown.toFixed(digits);
  const unsigned = Number(number) === 0 ? number.replace('-', '') : number;
  if (symbol === 'pH') return `pH ${unsigned}`;
  return symbol === '%' ? `${unsigned}%` : `${unsigned} ${symbol}`;
}
