/**
 * What a spoonful of cold water does to a boiling batch. The water dilutes the syrup, so that it boils lower; the heat set free
 * by cooling to that lower boiling point warms the spoonful and turns a part of it to steam at once. Energy balance, derived.
 */
import { ACTIVITY_MAX_SOLIDS, bindingHeatJPerKg } from '../matter/activity.ts';
import { boilingPointC, solidsAtBoil } from '../matter/boiling.ts';
import { dryEnthalpyJPerKg } from '../matter/heatCapacity.ts';
import { requireRange } from '../matter/range.ts';
import { bracketedRoot } from '../matter/root.ts';
import type { DrySolids } from '../matter/sugars.ts';
import { liquidEnthalpyJPerKg, steamEnthalpyAtAtmosphericJPerKg } from '../matter/water.ts';

export interface Spooning {
  /** Syrup in the pan, kg. */
  readonly batchKg: number;
  /** Temperature at which it boils. */
  readonly temperatureC: number;
  /** Mass shares of its dry solids. */
  readonly dry: DrySolids;
  /** Water of the spoonful, kg, and its temperature. */
  readonly spoonKg: number;
  readonly waterC: number;
  readonly pressurePa: number;
  /** Heat capacity of the pan that follows the syrup, J/K; 0 for the syrup alone. */
  readonly panJPerK: number;
  /** This batch against the mean of the published boiling tables, in standard deviations. */
  readonly theta?: number;
}

export interface SpoonfulEffect {
  /** Fall of the temperature, K. */
  readonly dropK: number;
  /** Water that turned to steam, kg. */
  readonly flashedKg: number;
  /** Fall of the boiling point if no water turned to steam: the slope of the boiling curve alone, K. */
  readonly slopeOnlyK: number;
  /** Fall if all of it turned to steam before any mixed in, K: what no spoonful can exceed. */
  readonly allFlashedK: number;
}

/**
 * Equilibrium fall of the temperature after a spoonful, the ring giving just what the pan loses.
 *
 * @param spooning batch 0.05 to 10 kg, boiling at up to 160 C, spoonful to a tenth of the batch, water 0 to 100 C
 * @returns the fall; where the cold water chills the syrup below its boiling point, nothing flashes
 * @throws RangeError outside the range
 * Uncertainty: that of the boiling curve's slope (`theta`) and of the spoon. Binding heat is spent on the steam, as in the pan's equations.
 */
export function spoonfulDropK(spooning: Spooning): SpoonfulEffect {
  const { batchKg, temperatureC, dry, spoonKg, waterC, pressurePa, panJPerK, theta = 0 } = spooning;
  requireRange('batch (kg)', batchKg, 0.05, 10);
  requireRange('boiling temperature (C)', temperatureC, 0, 160);
  requireRange('spoonful (kg)', spoonKg, 0, batchKg / 10);
  requireRange('water temperature (C)', waterC, 0, 100);
  requireRange('heat capacity of the pan (J/K)', panJPerK, 0, 10_000);

  const solids = solidsAtBoil(temperatureC, dry, pressurePa, theta);
  const dryKg = batchKg * solids;
  const wateredKg = batchKg - dryKg + spoonKg;
  const boilsC = (waterKg: number) => boilingPointC(dryKg / (dryKg + waterKg), dry, pressurePa, theta);
  const heatJ = (waterKg: number, t: number) =>
    waterKg * liquidEnthalpyJPerKg(t) + dryKg * dryEnthalpyJPerKg(t) + panJPerK * t;
  const broughtJ = heatJ(wateredKg - spoonKg, temperatureC) + spoonKg * liquidEnthalpyJPerKg(waterC);
  const bindingJPerKg = bindingHeatJPerKg(Math.min(solids, ACTIVITY_MAX_SOLIDS));

  const steamJPerKg = (endC: number) => steamEnthalpyAtAtmosphericJPerKg((temperatureC + endC) / 2) + bindingJPerKg;

  const driedKg = wateredKg - spoonKg;
  const excessJ = (t: number) => heatJ(driedKg, t) + spoonKg * steamJPerKg(t) - broughtJ;
  // A large spoonful in a small batch would take more heat than there is: it freezes before all of it has flashed.
  const allFlashedC = excessJ(0) >= 0 ? 0 : bracketedRoot(excessJ, 0, temperatureC, 1e-9);
  const allFlashedK = temperatureC - allFlashedC;
  const dilutedC = boilsC(wateredKg);
  const slopeOnlyK = temperatureC - dilutedC;
  const chilled = (t: number) => heatJ(wateredKg, t) - broughtJ;
  if (chilled(dilutedC) >= 0) {
    const endC = bracketedRoot(chilled, 0, dilutedC, 1e-9);
    return { dropK: temperatureC - endC, flashedKg: 0, slopeOnlyK, allFlashedK };
  }
  const heatLeftJ = (flashedKg: number) => {
    const t = boilsC(wateredKg - flashedKg);
    return broughtJ - flashedKg * steamJPerKg(t) - heatJ(wateredKg - flashedKg, t);
  };
  const flashedKg = bracketedRoot(heatLeftJ, 0, spoonKg, 1e-12);
  return { dropK: temperatureC - boilsC(wateredKg - flashedKg), flashedKg, slopeOnlyK, allFlashedK };
}
