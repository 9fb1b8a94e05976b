/** What sheets of bought sugars print as extract, and the share of solids that it means. */

import { requireRange } from '../matter/range.ts';
import { bracketedRoot } from '../matter/root.ts';
import { gravityOfSucrose } from './wort.ts';

/** A pound in a US gallon, g/L. */
export const gramsPerLitreOfPoundPerGallon = 453.59237 / 3.785411784;

/**
 * Solids of a sugar that gives so many gravity points when a pound of it is made up to a US gallon.
 *
 * @param points gallon points per pound, 20 to 46.2 (46.18 is dry sucrose)
 * @returns mass fraction of sucrose-like solids
 * Derived from ICUMSA densities; sugars of one mass fraction differ in gravity by 0.0005 at 10 %.
 */
export function solidsFromPoints(points: number): number {
  requireRange('extract (points x gal/lb)', points, 20, 46.2);
  return Math.min(1, strengthAt(1 + points / 1000) / gramsPerLitreOfPoundPerGallon);
}

/** The same from litre degrees per kg (100 g of it made up to a litre), 170 to 386. */
export function solidsFromLitreDegrees(litreDegrees: number): number {
  requireRange('extract (litre degrees/kg)', litreDegrees, 170, 386);
  return Math.min(1, strengthAt(1 + litreDegrees / 1e4) / 100);
}

function strengthAt(gravity: number): number {
  return bracketedRoot((gramsPerLitre) => gravityOfSucrose(gramsPerLitre) - gravity, 0, 400, 1e-9);
}
