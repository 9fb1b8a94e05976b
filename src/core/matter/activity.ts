/**
 * Water activity of syrups. Sucrose: a four-constant refit of the form of Starzak & Peacock 1997 (Zuckerindustrie 122);
 * mixtures: equal-activity rule (Zdanovskii; Stokes & Robinson 1966, J. Phys. Chem. 70:2126) with ratios fitted here.
 * Why these constants: docs/decisions/0002-boiling-curve.md.
 */
import { requireRange, requireSolids } from './range.ts';
import { bracketedRoot } from './root.ts';
import { type DrySolids, MOLAR_MASS, requireDrySolids } from './sugars.ts';

const GAS_CONSTANT = 8.314462618;
const KELVIN = 273.15;

/** Highest solids, as mass fraction, for which water activity and boiling point are given. */
export const ACTIVITY_MAX_SOLIDS = 0.995;

/** The sucrose curve is followed further inside, because a mixture of 99.5 % solids can match sucrose beyond 99.5 %. */
const CURVE_END = 0.9999;

/** Derived: fitted by `scripts/fit-activity.py`. `heat` in J/mol, the others dimensionless. */
const SUCROSE = { heat: -18_020, a1: -1.01, a2: 0.12, c: 1.74 } as const;

/** From the freezer, where candy is kept, to where decomposition leaves no equilibrium to speak of. */
function requireTemperature(temperatureC: number): void {
  requireRange('syrup temperature (C)', temperatureC, -20, 200);
}

function sucroseMoleFraction(solidsFraction: number): number {
  const sucrose = solidsFraction / MOLAR_MASS.sucrose;
  return sucrose / (sucrose + (1 - solidsFraction) / MOLAR_MASS.water);
}

function sucroseLogActivity(solidsFraction: number, temperatureC: number): number {
  const x = sucroseMoleFraction(solidsFraction);
  const { heat, a1, a2, c } = SUCROSE;
  const interaction = (heat / (GAS_CONSTANT * (temperatureC + KELVIN))) * (1 + x * (a1 + x * a2)) + c * x * x;
  return Math.log1p(-x) + x * x * interaction;
}

/**
 * Water activity over a solution of sucrose in water.
 *
 * @param solidsFraction mass fraction of sucrose, 0 to 0.995
 * @param temperatureC -20 to 200 C
 * @returns water activity, 0 to 1, falling with solids at every temperature; at 25 C within 0.004 of Norrish from 30 to 70 %
 * @throws RangeError outside the range
 * Source: form Starzak & Peacock 1997 (seen), constants derived; see the file's head.
 */
export function sucroseWaterActivity(solidsFraction: number, temperatureC: number): number {
  requireSolids(solidsFraction, ACTIVITY_MAX_SOLIDS);
  requireTemperature(temperatureC);
  return Math.exp(sucroseLogActivity(solidsFraction, temperatureC));
}

/**
 * Sucrose that gives a water activity: the inverse of {@link sucroseWaterActivity}, followed to 99.99 % solids.
 *
 * @param waterActivity above 0, to 1
 * @param temperatureC -20 to 200 C
 * @returns mass fraction of sucrose
 * @throws RangeError outside the range, or where the activity belongs to more than 99.99 % solids
 */
export function sucroseSolidsAtActivity(waterActivity: number, temperatureC: number): number {
  requireTemperature(temperatureC);
  const lowest = Math.exp(sucroseLogActivity(CURVE_END, temperatureC));
  requireRange('water activity', waterActivity, lowest, 1);
  if (waterActivity === 1) return 0;
  const wanted = Math.log(waterActivity);
  return bracketedRoot((w) => sucroseLogActivity(w, temperatureC) - wanted, 0, CURVE_END, 1e-13);
}

/**
 * How much water the dry solids hold, against the same mass of sucrose, at equal water activity.
 *
 * @param dry mass shares of the dry solids
 * @param waterActivity 0 to 1
 * @returns dimensionless; 1 for sucrose, 1.90 for invert sugar in thin solutions (the ratio of the molar masses), 1.32 in thick
 * Source: derived; hexoses from Norrish K = 2.25 at 25 C (plateau 1.32, sd 0.08), maltose and dextrin assumed.
 */
export function equalActivityRatio(dry: DrySolids, waterActivity: number): number {
  requireDrySolids(dry);
  requireRange('water activity', waterActivity, 0, 1);
  const hexose = 1.32 + 0.58 * waterActivity ** 8;
  const maltose = 0.95 + 0.05 * waterActivity;
  const dextrin = 0.85 - 0.1 * waterActivity;
  return dry.sucrose + (dry.glucose + dry.fructose) * hexose + dry.maltose * maltose + dry.dextrin * dextrin;
}

/** Derived from the spread of the published boiling tables; kept small where all of them agree (thin syrups). */
function spreadFactor(theta: number, waterActivity: number): number {
  requireRange('theta (standard deviations)', theta, -5, 5);
  return Math.exp(0.13 * theta * Math.min(1, (1 - waterActivity) / 0.3));
}

/**
 * Water held by a syrup in equilibrium with a water activity.
 *
 * @param waterActivity above 0, to 1, where the answer is infinite
 * @param temperatureC -20 to 200 C
 * @param dry mass shares of the dry solids
 * @param theta how far this batch lies from the mean of the published tables, in standard deviations, -5 to 5
 * @returns kg of water per kg of dry solids
 * @throws RangeError outside the range
 */
export function waterPerSolids(waterActivity: number, temperatureC: number, dry: DrySolids, theta = 0): number {
  const sucroseSolids = sucroseSolidsAtActivity(waterActivity, temperatureC);
  const sucroseRatio = (1 - sucroseSolids) / sucroseSolids;
  return sucroseRatio * equalActivityRatio(dry, waterActivity) * spreadFactor(theta, waterActivity);
}

/**
 * Water activity over a syrup: the inverse of {@link waterPerSolids}.
 *
 * @param solidsFraction mass fraction of dry solids, 0 to 0.995
 * @param temperatureC -20 to 200 C
 * @returns water activity, 0 to 1, falling with solids; uncertainty as that of the boiling point
 * @throws RangeError outside the range
 */
export function waterActivity(solidsFraction: number, temperatureC: number, dry: DrySolids, theta = 0): number {
  requireSolids(solidsFraction, ACTIVITY_MAX_SOLIDS);
  requireDrySolids(dry);
  requireTemperature(temperatureC);
  if (solidsFraction === 0) return 1;
  const excess = (sucroseSolids: number): number => {
    const activity = Math.exp(sucroseLogActivity(sucroseSolids, temperatureC));
    const factor = equalActivityRatio(dry, activity) * spreadFactor(theta, activity);
    // The mixture's solids, written so that neither end divides by zero.
    return sucroseSolids / (sucroseSolids + (1 - sucroseSolids) * factor) - solidsFraction;
  };
  const sucroseSolids = bracketedRoot(excess, 0, CURVE_END, 1e-13);
  return Math.exp(sucroseLogActivity(sucroseSolids, temperatureC));
}

/**
 * Heat that binds the water to the sugar: what a kg of water takes to evaporate beyond its latent heat.
 *
 * @param solidsFraction mass fraction of sucrose, 0 to 0.995
 * @returns J per kg of water; weakly known (a factor of 2), under 2 % of the heat of a whole boil
 * Source: derived, the temperature slope of the activity equation (Gibbs-Helmholtz).
 */
export function bindingHeatJPerKg(solidsFraction: number): number {
  requireSolids(solidsFraction, ACTIVITY_MAX_SOLIDS);
  const x = sucroseMoleFraction(solidsFraction);
  return (-SUCROSE.heat / MOLAR_MASS.water) * (1 + x * (SUCROSE.a1 + x * SUCROSE.a2)) * x * x;
}
