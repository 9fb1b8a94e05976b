/** Whether sugar will come out of a syrup: sucrose against what the water can hold beside invert sugar, and glucose by the rule of honey. */
import { requireRange } from '../../matter/range.ts';
import { sucroseSolubilityFraction } from '../../matter/solubility.ts';
import { invertShare } from '../known.ts';

/** Range of invert sugar in a water, g/g, that the equation was made for; beyond it its end is used. */
const mostInvertPerWater = 2;

/**
 * Sucrose that a water dissolves beside invert sugar.
 *
 * @param invertPerWater g of invert sugar for each g of water, 0 or more; above 2 as at 2
 * @param temperatureC -13 to 100 C
 * @returns g for each g of water
 * Source: 1.994 - 0.339 X + 0.0425 X2 at 20 C, Grover 1947, J. Soc. Chem. Ind. 66:201 (from memory); taken as a factor on the solubility
 * in pure water at other temperatures (derived). Good to 3 % near 20 C (assumed).
 */
export function sucrosePerWater(invertPerWater: number, temperatureC: number): number {
  requireRange('invert sugar (g/g of water)', invertPerWater, 0, 1000);
  const x = Math.min(mostInvertPerWater, invertPerWater);
  const pure = sucroseSolubilityFraction(temperatureC);
  return (pure / (1 - pure)) * ((1.994 - 0.339 * x + 0.0425 * x * x) / 1.994);
}

export const crystalRisks = ['none', 'slow', 'likely', 'sure'] as const;
export type CrystalRisk = (typeof crystalRisks)[number];

export interface Crystals {
  /** Sucrose dissolved over what can be: above 1 it may come out. */
  readonly sucroseRatio: number;
  readonly sucrose: CrystalRisk;
  /** g of glucose for each g of water. */
  readonly glucosePerWater: number;
  readonly glucose: CrystalRisk;
}

/**
 * Bounds of the zones of a sucrose syrup: it holds on its own to about 1.2, and throws crystals by itself above 1.3 (textbooks, from memory).
 * Glucose for each g of water: 1.7 and less stays liquid, 2.1 and more granulates soon: White et al. 1962, USDA Technical Bulletin 1261, of
 * honey (from memory).
 */
const sucroseZones = [1, 1.2, 1.3] as const;
const glucoseZones = [1.7, 2.1, 2.5] as const;

/**
 * @param solids mass share, 0.3 to 0.99
 * @param inverted share of the sucrose that was inverted
 */
export function crystalsIn(solids: number, inverted: number, temperatureC: number): Crystals {
  requireRange('solids (mass share)', solids, 0.3, 0.99);
  requireRange('inverted (share)', inverted, 0, 1);
  const perWater = solids / (1 - solids);
  const invert = invertShare(inverted) * perWater;
  const sucroseRatio = (perWater - invert) / sucrosePerWater(invert, temperatureC);
  const glucosePerWater = invert / 2;
  return {
    sucroseRatio,
    sucrose: riskIn(sucroseZones, sucroseRatio),
    glucosePerWater,
    glucose: riskIn(glucoseZones, glucosePerWater),
  };
}

function riskIn([slow, likely, sure]: readonly [number, number, number], ratio: number): CrystalRisk {
  if (ratio <= slow) return 'none';
  if (ratio <= likely) return 'slow';
  return ratio <= sure ? 'likely' : 'sure';
}
