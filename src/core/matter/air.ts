/** The air over the pan: pressure by altitude (ISO 2533 standard atmosphere). */
import { requireRange } from './range.ts';

/**
 * Air pressure of the standard atmosphere.
 *
 * @param metres altitude above sea level, -500 to 11,000 m
 * @returns pressure in Pa; weather moves the true value by about 2 kPa (0.55 C of boiling point), so a barometer is better
 * @throws RangeError outside the range
 * Source: ISO 2533:1975, troposphere, in the rounded form of the ASHRAE Handbook (seen).
 */
export function pressureAtAltitudePa(metres: number): number {
  requireRange('altitude (m)', metres, -500, 11_000);
  return 101_325 * (1 - 2.25577e-5 * metres) ** 5.2559;
}

/**
 * Altitude at which the standard atmosphere has a pressure: `pressureAtAltitudePa` the other way round.
 *
 * @param pressurePa 22,700 to 107,400 Pa
 * @returns metres above sea level
 * @throws RangeError outside the range
 */
export function altitudeAtPressureM(pressurePa: number): number {
  requireRange('pressure (Pa)', pressurePa, 22_700, 107_400);
  return (1 - (pressurePa / 101_325) ** (1 / 5.2559)) / 2.25577e-5;
}
