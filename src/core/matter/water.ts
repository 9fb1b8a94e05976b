/**
 * Water and its vapour along the saturation line.
 * Pressure and density are the IAPWS supplementary equations (SR1-86); the heats are polynomials fitted to IAPWS-95.
 */
import { requireRange } from './range.ts';
import { bracketedRoot } from './root.ts';

const CRITICAL_TEMPERATURE_K = 647.096;
const CRITICAL_PRESSURE_PA = 22.064e6;
const CRITICAL_DENSITY = 322;
const KELVIN = 273.15;

/** Highest temperature, in C, of the heats and of the liquid heat capacity. */
const HEATS_TO_C = 200;

/**
 * Pressure of saturated water vapour.
 *
 * @param temperatureC water temperature, 0 to 373 C
 * @returns pressure in Pa, within 0.03 % of IAPWS-95 from 0.01 to 200 C (slope included, 0.1 %)
 * @throws RangeError outside the range
 * Source: Wagner & Pruss 1993, J. Phys. Chem. Ref. Data 22:783, eq. 1 (IAPWS SR1-86(1992)); constants from memory, checked
 * against `reference/water-saturation-iapws.csv`.
 */
export function saturationPressurePa(temperatureC: number): number {
  requireRange('water temperature (C)', temperatureC, 0, 373);
  const temperatureK = temperatureC + KELVIN;
  const t = 1 - temperatureK / CRITICAL_TEMPERATURE_K;
  const root = Math.sqrt(t);
  const t3 = t * t * t;
  const sum =
    -7.85951783 * t +
    1.84408259 * t * root -
    11.7866497 * t3 +
    22.6807411 * t3 * root -
    15.9618719 * t3 * t +
    1.80122502 * t3 * t3 * t * root;
  return CRITICAL_PRESSURE_PA * Math.exp((CRITICAL_TEMPERATURE_K / temperatureK) * sum);
}

/**
 * Temperature at which water boils: the inverse of {@link saturationPressurePa}.
 *
 * @param pressurePa air pressure, 700 Pa to 21.8 MPa
 * @returns temperature in C; exact inverse within 1e-9 C
 * @throws RangeError outside the range
 */
export function boilingPointOfWaterC(pressurePa: number): number {
  requireRange('pressure (Pa)', pressurePa, 700, 21.8e6);
  const wanted = Math.log(pressurePa);
  return bracketedRoot((t) => Math.log(saturationPressurePa(t)) - wanted, 0, 373, 1e-9);
}

/**
 * Heat that turns saturated liquid into saturated vapour.
 *
 * @param temperatureC 0 to 200 C
 * @returns J per kg of water, within 0.01 % of IAPWS-95
 * Source: derived, quartic fitted to IAPWS-95 (`reference/water-saturation-iapws.csv`).
 */
export function latentHeatJPerKg(temperatureC: number): number {
  requireRange('water temperature (C)', temperatureC, 0, HEATS_TO_C);
  const t = temperatureC;
  return 1e3 * (2500.8604 + t * (-2.3654597 + t * (1.42567e-4 + t * (-6.935309e-6 - t * 2.390172e-8))));
}

/** Coefficients of the heat capacity of saturated liquid water, J/kg K, by power of the temperature in C; see below. */
const LIQUID_HEAT_CAPACITY = [
  4218.63319, -2.94432466, 7.96970845e-2, -1.02942451e-3, 7.57230834e-6, -2.73008413e-8, 3.9605878e-11,
];

/**
 * Isobaric heat capacity of saturated liquid water.
 *
 * @param temperatureC 0 to 200 C
 * @returns J/kg K, within 0.05 % of IAPWS-95
 * Source: derived, sextic fitted to IAPWS-95 (`reference/water-saturation-iapws.csv`).
 */
export function liquidHeatCapacityJPerKgK(temperatureC: number): number {
  requireRange('water temperature (C)', temperatureC, 0, HEATS_TO_C);
  return LIQUID_HEAT_CAPACITY.reduceRight((sum, coefficient) => sum * temperatureC + coefficient, 0);
}

/**
 * Enthalpy of liquid water, zero at 0 C: the integral of {@link liquidHeatCapacityJPerKgK}.
 *
 * @param temperatureC 0 to 200 C
 * @returns J per kg, within 0.1 % of the saturated liquid of IAPWS-95 to 190 C, 0.11 % at 200 C
 */
export function liquidEnthalpyJPerKg(temperatureC: number): number {
  requireRange('water temperature (C)', temperatureC, 0, HEATS_TO_C);
  const integral = LIQUID_HEAT_CAPACITY.reduceRight((sum, c, power) => sum * temperatureC + c / (power + 1), 0);
  return integral * temperatureC;
}

/**
 * Enthalpy of the vapour that leaves water or hot syrup in a kitchen, zero at liquid water of 0 C. Above 100 C it is superheated
 * steam at 1 atm, because syrup boils above the boiling point of water; below, vapour saturated at the given temperature.
 *
 * @param temperatureC temperature of the liquid it leaves, 0 to 200 C
 * @returns J per kg, within 0.05 % of IAPWS-95; kitchen pressures of 70 to 105 kPa move it by less than 0.2 %
 * Source: derived, superheat fitted to IAPWS-95 at 101.325 kPa, 100 to 200 C.
 */
export function steamEnthalpyAtAtmosphericJPerKg(temperatureC: number): number {
  requireRange('vapour temperature (C)', temperatureC, 0, HEATS_TO_C);
  const saturated = Math.min(temperatureC, 100);
  const superheatK = temperatureC - saturated;
  return (
    liquidEnthalpyJPerKg(saturated) + latentHeatJPerKg(saturated) + superheatK * (2045.087 - 0.498895 * superheatK)
  );
}

/**
 * Density of saturated liquid water.
 *
 * @param temperatureC 0 to 373 C
 * @returns kg/m3, within 0.01 % of IAPWS-95 to 200 C
 * Source: Wagner & Pruss 1993, eq. 2 (IAPWS SR1-86(1992)); constants from memory, checked against
 * `reference/water-saturation-iapws.csv`.
 */
export function liquidDensityKgPerM3(temperatureC: number): number {
  requireRange('water temperature (C)', temperatureC, 0, 373);
  const c = Math.cbrt(1 - (temperatureC + KELVIN) / CRITICAL_TEMPERATURE_K);
  return (
    CRITICAL_DENSITY *
    (1 +
      1.99274064 * c +
      1.09965342 * c ** 2 -
      0.510839303 * c ** 5 -
      1.75493479 * c ** 16 -
      45.5170352 * c ** 43 -
      6.7469445e5 * c ** 110)
  );
}
