/** The one way a property function refuses: it names the quantity, its value and what is allowed. */

/**
 * @param quantity what the number is, with its unit, for the message
 * @throws RangeError when `value` is not a number from `low` to `high`
 */
export function requireRange(quantity: string, value: number, low: number, high: number): void {
  if (!(value >= low && value <= high)) {
    throw new RangeError(`${quantity} is ${value}; allowed is ${low} to ${high}`);
  }
}

/** @throws RangeError when the mass fraction of dry solids lies outside 0 to `high` */
export function requireSolids(solidsFraction: number, high = 1): void {
  requireRange('solids (mass fraction)', solidsFraction, 0, high);
}
