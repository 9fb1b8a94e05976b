/** The sugars and small solutes of the pan: molar masses, and what the dry solids of a syrup are made of. */
import { requireRange } from './range.ts';

/**
 * Molar masses in kg/mol.
 * Source: derived from the IUPAC standard atomic weights (2021, conventional values C 12.011, H 1.008, O 15.999, Na 22.990,
 * Ca 40.078); water and the sugars as used by the ICUMSA and IAPWS texts, which differ in the seventh digit.
 */
export const MOLAR_MASS = {
  water: 0.01801528,
  sucrose: 0.3422965,
  /** glucose and fructose, C6H12O6 */
  hexose: 0.1801559,
  /** anhydrous, C12H22O11 */
  maltose: 0.3422965,
  naoh: 0.039997,
  caoh2: 0.074092,
  sodium: 0.02299,
  calcium: 0.040078,
} as const;

/** Mass shares of the dry solids; they add up to 1. Dextrin stands for the larger carbohydrates of malt extract. */
export interface DrySolids {
  readonly sucrose: number;
  readonly glucose: number;
  readonly fructose: number;
  readonly maltose: number;
  readonly dextrin: number;
}

export const pureSucrose: DrySolids = { sucrose: 1, glucose: 0, fructose: 0, maltose: 0, dextrin: 0 };

/** Fully inverted sucrose: equal masses of glucose and fructose. */
export const invertSugar: DrySolids = { sucrose: 0, glucose: 0.5, fructose: 0.5, maltose: 0, dextrin: 0 };

/**
 * Sucrose of which a share of the dry solids is invert sugar.
 *
 * @param invertShare mass of glucose and fructose per mass of dry solids, 0 to 1
 */
export function partlyInverted(invertShare: number): DrySolids {
  requireRange('share of invert sugar', invertShare, 0, 1);
  return { ...pureSucrose, sucrose: 1 - invertShare, glucose: invertShare / 2, fructose: invertShare / 2 };
}

/** @throws RangeError when a share is negative or the shares do not add up to 1 within 1e-6 */
export function requireDrySolids(dry: DrySolids): void {
  const { sucrose, glucose, fructose, maltose, dextrin } = dry;
  for (const share of [sucrose, glucose, fructose, maltose, dextrin])
    requireRange('share of the dry solids', share, 0, 1 + 1e-6);
  requireRange(
    'sum of the shares of the dry solids',
    sucrose + glucose + fructose + maltose + dextrin,
    1 - 1e-6,
    1 + 1e-6,
  );
}
