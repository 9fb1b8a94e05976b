/** Density of syrups: the ICUMSA equation for sucrose to 100 C, a straight line in temperature above. */
import { requireRange, requireSolids } from './range.ts';

/** Excess over water, kg/m3: row = power of (t - 20)/100, column = power of the mass fraction from 1. */
const EXCESS = [
  [385.1761, 135.3705, 40.9299, -3.9643, 13.4853, -17.289],
  [-46.272, -7.172, 1.1597, 5.1126, 17.5254],
  [59.7712, 7.2491, 12.363, -35.4791],
  [-47.2207, -21.6977, 27.6301],
  [18.3184, 12.3081],
];

function horner(coefficients: readonly number[], x: number): number {
  return coefficients.reduceRight((sum, coefficient) => sum * x + coefficient, 0);
}

/** Water at 1 atm, kg/m3, 0 to 150 C; Kell 1975, J. Chem. Eng. Data 20:97, the basis of the ICUMSA equation (seen as a transcription). */
function waterAtAtmospheric(temperatureC: number): number {
  const above = horner(
    [999.83952, 16.952577, -7.9905127e-3, -46.241757e-6, 105.84601e-9, -281.03006e-12],
    temperatureC,
  );
  return above / (1 + 16.887236e-3 * temperatureC);
}

function densityTo100C(solidsFraction: number, temperatureC: number): number {
  const byTemperature = EXCESS.map((row) => solidsFraction * horner(row, solidsFraction));
  return waterAtAtmospheric(temperatureC) + horner(byTemperature, (temperatureC - 20) / 100);
}

/**
 * Density of a sucrose syrup; invert syrup of equal solids lies within about 0.5 %.
 *
 * @param solidsFraction mass fraction of dry solids, 0 to 1
 * @param temperatureC 0 to 200 C
 * @returns kg/m3; within 0.1 % to 85 % and 100 C, extrapolated beyond (about 1.5 %)
 * @throws RangeError outside the range
 * Source: ICUMSA SPS-4; Bubnik et al. 1995, Sugar Technologists Manual (seen as a transcription; checked against
 * `reference/sucrose-density-*.csv`); expansion above 100 C assumed.
 */
export function syrupDensityKgPerM3(solidsFraction: number, temperatureC: number): number {
  requireSolids(solidsFraction);
  requireRange('syrup temperature (C)', temperatureC, 0, 200);
  const base = densityTo100C(solidsFraction, Math.min(temperatureC, 100));
  const beyondK = Math.max(0, temperatureC - 100);
  return base * (1 - beyondK * (8.0e-4 * (1 - solidsFraction) + 3.3e-4 * solidsFraction));
}
