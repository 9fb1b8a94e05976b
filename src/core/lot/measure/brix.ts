/** Dry solids of a sugar from what a refractometer or a hydrometer shows of it or of a weighed dilution. */
import { syrupDensityKgPerM3 } from '../../matter/density.ts';
import { requireRange } from '../../matter/range.ts';
import { bracketedRoot } from '../../matter/root.ts';
import type { Hydrometer, Refractometer } from '../note.ts';
import { type Estimate, together } from './estimate.ts';

/**
 * What to add to a refractometer's reading that was set at 20 C.
 *
 * @param brix 0 to 85 degrees
 * @param temperatureC 10 to 30 C: a warmer drop is left to cool
 * @returns degrees Brix; within 0.06 of the table, 0.011 on average
 * @throws RangeError outside the range
 * Source: derived fit through the international table of 1936 (NBS Circular C440, seen as a handbook copy) and OIV-MA-AS2-02 table I (seen).
 */
export function refractometerCorrection(brix: number, temperatureC: number): number {
  requireRange('refractometer reading (Brix)', brix, 0, 85);
  requireRange('temperature at the refractometer (C)', temperatureC, 10, 30);
  const u = temperatureC - 20;
  return u * (0.05636 + brix * (6.931e-4 - 6.21e-6 * brix)) + u * u * (3.93e-4 - 6.57e-6 * brix);
}

/** Glucose and fructose bend light less than sucrose: degrees to add for each % of invert sugar in the sample (AOAC 932.14C, from memory; honey tables give 0.023). */
const perInvert = 0.022;
/** Cubic expansion of a hydrometer's glass, 1/K (from memory). */
const glassExpansion = 25e-6;
const waterAt20 = syrupDensityKgPerM3(0, 20);

/** Errors, 1 sd (assumed; hand instruments with divisions of 0.2 Brix and 0.001). */
const readBrix = 0.1;
const readGravity = 0.0005;
const handRefractometer = 0.15;
const handHydrometer = 0.0007;
const scaleG = 0.03;

export interface Believed {
  /** Invert sugar in the dry solids, mass share, with its error. */
  readonly invert: { readonly value: number; readonly sd: number };
}

/** Mass share of dry solids by refractometer. @throws RangeError naming a number outside its range */
export function solidsByRefractometer(told: Refractometer, { invert }: Believed): Estimate {
  const { brix, temperatureC, compensated } = told;
  const at20 = compensated ? brix : brix + refractometerCorrection(brix, temperatureC);
  const solids = ((at20 * (1 + perInvert * invert.value)) / 100) * thinned(told);
  const perBrix = solids / at20;
  return within({
    value: solids,
    readingSd: together(perBrix * readBrix, solids * weighingError(told)),
    methodSd: together(
      perBrix * handRefractometer,
      (perBrix * at20 * perInvert * invert.sd) / (1 + perInvert * invert.value),
    ),
  });
}

/**
 * Mass share of dry solids by hydrometer, floated at any temperature: its reading is a density, and the glass of it grows with heat.
 * Invert syrup is lighter than sucrose by up to 0.003, which is counted as error.
 *
 * @throws RangeError naming a number outside its range
 * Source: ICUMSA SPS-4 densities (see `core/matter/density.ts`), solved for the solids.
 */
export function solidsByHydrometer(told: Hydrometer, { invert }: Believed): Estimate {
  const { scale, reading, temperatureC } = told;
  const shown = scale === 'brix' ? syrupDensityKgPerM3(reading / 100, 20) : reading * waterAt20;
  const density = shown * (1 - glassExpansion * (temperatureC - 20));
  const solidsAt = (kgPerM3: number) => solidsOfDensity(kgPerM3, temperatureC);
  const dilute = solidsAt(density);
  const perGravity = (solidsAt(density + 1) - dilute) * 1000;
  const solids = dilute * thinned(told);
  const lighter = 0.003 * invert.value * dilute;
  return within({
    value: solids,
    readingSd: together(perGravity * readGravity * thinned(told), solids * weighingError(told)),
    methodSd: perGravity * together(handHydrometer, lighter) * thinned(told),
  });
}

function solidsOfDensity(kgPerM3: number, temperatureC: number): number {
  const [least, most] = [syrupDensityKgPerM3(0, temperatureC), syrupDensityKgPerM3(0.95, temperatureC)];
  requireRange('density by hydrometer (kg/m3)', kgPerM3, least, most);
  return bracketedRoot((solids) => syrupDensityKgPerM3(solids, temperatureC) - kgPerM3, 0, 0.95, 1e-9);
}

/** By how much water made the sugar thinner. */
function thinned({ sugarG, waterG }: { readonly sugarG: number; readonly waterG: number }): number {
  return (sugarG + waterG) / sugarG;
}

function weighingError({ sugarG, waterG }: { readonly sugarG: number; readonly waterG: number }): number {
  return waterG === 0 ? 0 : (scaleG * waterG) / (sugarG * (sugarG + waterG)) + scaleG / (sugarG + waterG);
}

/** Above 100 % nothing can be: readings, weights or the temperature are wrong. Half an error of grace. */
function within(estimate: Estimate): Estimate {
  const { value, readingSd, methodSd } = estimate;
  requireRange('solids that come of it (share)', value, 0.05, 1 + 1.5 * together(readingSd, methodSd));
  return { ...estimate, value: Math.min(1, value) };
}
