/**
 * What the user's water brings into the pan, against distilled water. Its alkalinity is a base of the cook; its hardness is in no rate law,
 * and is told by what it could do at most: bind alkali as magnesium hydroxide and chalk, and fall out of boiled water with as much alkalinity.
 */
import { MOLAR_MASS } from '../../matter/sugars.ts';
import type { Kit } from '../../pan/kit.ts';

/** Hardness and alkalinity are counted as CaCO3, kg/mol; it stands for two equivalents and one calcium. */
const chalkMolarMassKg = 0.100087;
const molPerMg = 1e-6 / chalkMolarMassKg;

export interface WaterCheck {
  /** Base that the water brings, eq, and as much in grams of pure NaOH. */
  readonly equivalents: number;
  readonly asNaohG: number;
  /** Nothing when the hardness is not known. */
  readonly hardness: HardnessCheck | undefined;
}

export interface HardnessCheck {
  readonly mgPerL: number;
  /** Calcium (with the magnesium counted as such) for each kg of finished sugar, g. */
  readonly calciumGPerKg: number;
  /** Share of the plan's alkali that is bound if all of it turns to Mg(OH)2 and CaCO3, before the syrup's acid frees it; 0 without alkali. */
  readonly bindsAtMost: number;
  /** Alkalinity that leaves at most as chalk when the water is boiled before and poured off, mg/L as CaCO3: the carbonate hardness. */
  readonly boilsOutMgPerL: number;
}

/** What a plan takes of water, in kg (a kg is taken for a litre), and of alkali, in eq, and what it yields, kg. */
interface Takes {
  readonly waterKg: number;
  readonly alkaliEq: number;
  readonly yieldKg: number;
}

/** Base that so much of the water brings, eq. */
export function waterEquivalents({ alkalinityMgPerL }: Kit['water'], waterKg: number): number {
  return waterKg * alkalinityMgPerL * 2 * molPerMg;
}

export function waterCheck(water: Kit['water'], takes: Takes): WaterCheck {
  const { alkalinityMgPerL, hardnessMgPerL } = water;
  const equivalents = waterEquivalents(water, takes.waterKg);
  return {
    equivalents,
    asNaohG: 1000 * equivalents * MOLAR_MASS.naoh,
    hardness: hardnessMgPerL === undefined ? undefined : hardnessCheck(hardnessMgPerL, alkalinityMgPerL, takes),
  };
}

function hardnessCheck(mgPerL: number, alkalinityMgPerL: number, { waterKg, alkaliEq, yieldKg }: Takes): HardnessCheck {
  const mol = waterKg * mgPerL * molPerMg;
  return {
    mgPerL,
    calciumGPerKg: (1000 * mol * MOLAR_MASS.calcium) / yieldKg,
    bindsAtMost: alkaliEq > 0 ? (2 * mol) / alkaliEq : 0,
    boilsOutMgPerL: Math.min(mgPerL, alkalinityMgPerL),
  };
}
