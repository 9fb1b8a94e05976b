/** What the user's water brings into the pan, against distilled water. */
import { requireRange } from '../../matter/range.ts';
import { MOLAR_MASS } from '../../matter/sugars.ts';

/** Hardness and alkalinity are counted as CaCO3, kg/mol; it stands for two equivalents and one calcium. */
const chalkMolarMassKg = 0.100087;
/** Hardest water that is told of, mg/L as CaCO3. */
export const hardnessRange = [0, 1500] as const;

export interface WaterCheck {
  /** Base that the water brings, eq, and as much in grams of pure NaOH. */
  readonly equivalents: number;
  readonly asNaohG: number;
  /** Calcium (with the magnesium counted as such) for each kg of finished sugar, g; nothing when the hardness is not known. */
  readonly calciumGPerKg: number | undefined;
}

/**
 * @param waterKg that goes in at the start; a kg is taken for a litre
 * @param alkalinityMgPerL and hardnessMgPerL as CaCO3
 */
export function waterCheck(
  waterKg: number,
  alkalinityMgPerL: number,
  yieldKg: number,
  hardnessMgPerL?: number,
): WaterCheck {
  if (hardnessMgPerL !== undefined) requireRange('hardness (mg/L as CaCO3)', hardnessMgPerL, ...hardnessRange);
  const molPerMg = 1e-6 / chalkMolarMassKg;
  const equivalents = waterKg * alkalinityMgPerL * 2 * molPerMg;
  const calcium = hardnessMgPerL === undefined ? undefined : waterKg * hardnessMgPerL * molPerMg * MOLAR_MASS.calcium;
  return {
    equivalents,
    asNaohG: 1000 * equivalents * MOLAR_MASS.naoh,
    calciumGPerKg: calcium === undefined ? undefined : (1000 * calcium) / yieldKg,
  };
}
