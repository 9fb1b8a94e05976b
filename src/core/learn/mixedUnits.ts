/** Does a jump between two readings look like another unit, not like another temperature? */

/** A pan's own change between two readings, and a person's rounding, C. */
const near = 6;
const zeroCelsiusK = 273.15;

const fahrenheit = (valueC: number): number => 1.8 * valueC + 32;
const celsius = (valueF: number): number => (valueF - 32) / 1.8;
const conversions: readonly ((value: number) => number)[] = [
  fahrenheit,
  celsius,
  (valueC) => valueC + zeroCelsiusK,
  (valueK) => valueK - zeroCelsiusK,
  (valueF) => celsius(valueF) + zeroCelsiusK,
  (valueK) => fahrenheit(valueK - zeroCelsiusK),
];

/** Is the second value the first one in another unit? Both as they were taken for C. */
export function fits(before: number, after: number): boolean {
  return conversions.some((convert) => Math.abs(convert(before) - after) < near);
}
