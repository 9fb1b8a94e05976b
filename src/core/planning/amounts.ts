/** What to weigh out: sugar, water, malt extract, acid, and the alkali as solid, as a solution and in parts. */
import { limits } from '../advice/limits.ts';
import type { AlkaliUsed } from '../log/bodies.ts';
import { sucroseSolubilityFraction } from '../matter/solubility.ts';
import { MOLAR_MASS } from '../matter/sugars.ts';
import { equivalentsOf } from '../pan/deeds.ts';
import type { AlkaliPart, Charge } from '../pan/steps.ts';
import { alkaliShares, type PlanRequest, usualDissolveC } from './request.ts';

/** Water for each kg of sugar that is dissolved by the usual temperature, kg (common practice, no source). */
const usualWaterPerSugar = 0.33;

/**
 * Water that dissolves a kg of sugar by a temperature, kg: saturation, and the margin that practice leaves over it at 80 C, which is 22 %: steam
 * takes some on the way, and the last crystals dissolve the slower the nearer the syrup is to saturation.
 *
 * @param celsius -13 to 100 C
 * Source: solubility of sucrose, Vavrinecz 1962 (ICUMSA SPS-2).
 */
export function waterPerSugar(celsius: number): number {
  return (usualWaterPerSugar * saturatedWater(celsius)) / saturatedWater(usualDissolveC);
}

/** Water in a saturated solution for each kg of sugar, kg. */
function saturatedWater(celsius: number): number {
  const sugar = sucroseSolubilityFraction(celsius);
  return (1 - sugar) / sugar;
}

/** Sodium carbonate, kg/mol (IUPAC standard atomic weights); it neutralises two equivalents. */
const sodaMolarMassKg = 0.105988;
/** Even a small dose goes in by three parts (common practice, no source). */
const fewestParts = 3;

/** What a plan tells to weigh is what the log of its cook keeps. */
export type AlkaliAmounts = AlkaliUsed;

export interface Amounts {
  readonly charge: Charge;
  readonly alkali: AlkaliAmounts | undefined;
}

/** Amounts for `sucroseKg` of sugar. */
export function amountsFor(request: PlanRequest, sucroseKg: number): Amounts {
  const pale = request.route === 'pale';
  return {
    charge: {
      sucroseKg,
      waterKg: sucroseKg * waterPerSugar(request.dissolveC ?? usualDissolveC),
      maltExtractKg: (sucroseKg * request.maltExtractGPerKg) / 1000,
      citricAcidKg: pale ? (sucroseKg * request.acidGPerKg) / 1000 : 0,
    },
    alkali: pale ? undefined : alkaliAmounts(request, sucroseKg),
  };
}

/**
 * How much pure alkali a mass of what is weighed stands for. Soda counts with what it neutralises; the carbonate of lime dissolves too
 * slowly to count.
 */
function activeShare(request: PlanRequest): number {
  const { active, carbonate } = alkaliShares(request);
  if (request.alkali === 'calciumHydroxide') return active;
  return active + (carbonate * 2 * MOLAR_MASS.naoh) / sodaMolarMassKg;
}

function alkaliAmounts(request: PlanRequest, sucroseKg: number): AlkaliAmounts {
  const { alkali, alkaliGPerKg, solutionStrength } = request;
  const pureKg = (sucroseKg * alkaliGPerKg) / 1000;
  const weighedKg = pureKg / activeShare(request);
  const waterKg = pureKg / solutionStrength - weighedKg;
  const portionKg = limits.hotPortion.value * sucroseKg;
  const count = Math.max(fewestParts, Math.ceil(waterKg / portionKg - 1e-9));
  const part: AlkaliPart = { substance: alkali, alkaliKg: pureKg / count, waterKg: waterKg / count };
  return {
    substance: alkali,
    weighedKg,
    pureKg,
    waterKg,
    strength: solutionStrength,
    parts: Array.from({ length: count }, () => part),
    equivalents: equivalentsOf(part) * count,
  };
}
