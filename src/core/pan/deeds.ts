/** What deeds do to the state of the pan, and the state of a freshly filled one. */
import { dryEnthalpyJPerKg } from '../matter/heatCapacity.ts';
import { MOLAR_MASS } from '../matter/sugars.ts';
import { liquidEnthalpyJPerKg } from '../matter/water.ts';
import { amount, amountMassKg } from '../reactions/rates.ts';
import type { Kit } from './kit.ts';
import type { ModelValues, Pan } from './physics.ts';
import { place, stateSize } from './state.ts';
import type { AlkaliPart, Charge, Deed } from './steps.ts';

/** Citric acid, kg/mol. */
const citricMolarMassKg = 0.192124;
/** 1 mg/L of alkalinity as CaCO3 is 2 / 100.087 meq/L. */
const eqPerMgCalciumCarbonate = 2 / 100.087e3;
/** Spoonfuls come from water with ice in it, C. */
const iceWaterC = 1;
/** Syrup is let down with hot water, which spatters less (common practice, no source), C. */
const letDownWaterC = 90;

/** Share of the sugar that counts as dissolved from the start, where nothing else is. */
const firstDissolved = 1e-6;

/** Pan and contents at room temperature, ring off, sugar not dissolved yet. */
export function filledPan(charge: Charge, kit: Kit, values: ModelValues): Float64Array {
  const y = new Float64Array(stateSize);
  const sucrose = charge.sucroseKg / amountMassKg[amount.sucrose];
  // Shares of what is dissolved are asked for from the start, and without malt or acid there would be nothing that they are shares of.
  const dissolved = charge.maltExtractKg + charge.citricAcidKg > 0 ? 0 : firstDissolved;
  y[place.sucrose] = dissolved * sucrose;
  y[place.crystals] = (1 - dissolved) * sucrose;
  y[place.waterKg] = charge.waterKg;
  y[place.maltKg] = charge.maltExtractKg;
  y[place.amine] = values.amineContent * charge.maltExtractKg;
  y[place.citricMol] = charge.citricAcidKg / citricMolarMassKg;
  y[place.mineralKg] = charge.citricAcidKg;
  y[place.base] = charge.waterKg * kit.water.alkalinityMgPerL * eqPerMgCalciumCarbonate;
  const solids = charge.sucroseKg + charge.maltExtractKg + charge.citricAcidKg;
  y[place.enthalpyJ] = solids * dryEnthalpyJPerKg(kit.roomC) + charge.waterKg * liquidEnthalpyJPerKg(kit.roomC);
  y[place.panC] = kit.roomC;
  y[place.tipC] = kit.roomC;
  return y;
}

/** Adds water of `waterC`. */
export function addWater(y: Float64Array, waterKg: number, waterC: number): void {
  y[place.waterKg] += waterKg;
  y[place.enthalpyJ] += waterKg * liquidEnthalpyJPerKg(waterC);
}

/** Equivalents of base in a part of alkali. */
export function equivalentsOf(part: AlkaliPart): number {
  return part.substance === 'sodiumHydroxide'
    ? part.alkaliKg / MOLAR_MASS.naoh
    : (2 * part.alkaliKg) / MOLAR_MASS.caoh2;
}

/** Adds a part of alkali at room temperature: dissolved caustic or slurried lime, which then mix in at their own pace. */
function addAlkali(y: Float64Array, part: AlkaliPart, roomC: number): void {
  const slow = part.substance === 'calciumHydroxide';
  y[slow ? place.lime : place.caustic] += equivalentsOf(part);
  y[place.mineralKg] += part.alkaliKg;
  y[place.enthalpyJ] += part.alkaliKg * dryEnthalpyJPerKg(roomC);
  addWater(y, part.waterKg, roomC);
}

/** How full a spoonful is, as a factor about 1: `scatter` is its standard deviation, and a spoon is never nearly empty. */
export function spoonFill(scatter: number, normal: () => number): number {
  return Math.max(0.3, 1 + scatter * normal());
}

/**
 * Does a deed to the state of a pan and to its ring.
 *
 * @param spoonScatter by how much this spoonful was heaped or shy, as a factor
 */
export function perform(deed: Deed, y: Float64Array, pan: Pan, kit: Kit, spoonScatter = 1): void {
  if (deed.kind === 'heat') {
    pan.setRingW((deed.notch / kit.stove.notches) * kit.stove.ratedPowerW * pan.values.stoveEfficiency);
  } else if (deed.kind === 'water') {
    const spooned = deed.spoonfuls > 0;
    addWater(
      y,
      deed.waterKg * (spooned ? pan.values.spoonFactor * spoonScatter : 1),
      spooned ? iceWaterC : letDownWaterC,
    );
  } else if (deed.kind === 'alkali') {
    addAlkali(y, deed.part, kit.roomC);
  }
}
