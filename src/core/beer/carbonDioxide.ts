/** Carbon dioxide in beer: how much it holds at a temperature under a pressure, and in what brewers count it. */
import { requireRange } from '../matter/range.ts';

/** One volume: carbon dioxide of 0 C and 1 atm, g/L (seen quoted). */
export const gramsPerLitreOfVolume = 1.977;
export const atmospherePa = 101_325;

/**
 * Carbon dioxide that beer holds in balance with pure gas.
 *
 * @param temperatureC -1 to 40 C; checked to 25 C, extrapolated beyond
 * @param pressurePa absolute
 * @returns g/L; within 0.05 to 25 C of a published table for usual beer (the rest of the error is the table's rounding)
 * Source: 10 P exp(-10.73797 + 2617.25/T), P in bar, T in K; known by the name of Haffmans (from memory).
 */
export function carbonDioxideGPerL(temperatureC: number, pressurePa: number): number {
  return (pressurePa / 1e5) * perBar(temperatureC);
}

/** Absolute pressure of a closed bottle, Pa, that holds so much; the inverse of `carbonDioxideGPerL`. */
export function carbonDioxidePa(temperatureC: number, gramsPerLitre: number): number {
  return (1e5 * gramsPerLitre) / perBar(temperatureC);
}

function perBar(temperatureC: number): number {
  requireRange('beer temperature (C)', temperatureC, -1, 40);
  return 10 * Math.exp(-10.73797 + 2617.25 / (temperatureC + 273.15));
}
