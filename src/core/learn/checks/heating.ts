/**
 * The water-heating test: a weighed amount of water, heated for some minutes and perhaps left to cool for some, tells what the ring gives,
 * what the pan loses and, when done with two amounts, what the pan itself takes up. Least squares with what is likely of any kit.
 */

import { requireRange } from '../../matter/range.ts';
import { cholesky, solveLower, solveTransposed } from '../../pan/cholesky.ts';
import type { Kit } from '../../pan/kit.ts';
import { type KitParameter, kitParameters } from '../../pan/kitParameters.ts';
import { prepareKit } from '../../pan/preparedKit.ts';
import { type Parameter, type Parameters, valueAt } from '../../reactions/parameter.ts';
import { widening } from '../knowledge.ts';
import { smooth } from '../smoother.ts';
import type { Told } from '../taught.ts';
import { type Estimate, estimateOf } from './estimate.ts';
import { type HeatingRun, heatedWaterC, type WaterPan } from './waterPan.ts';

export interface Heating {
  /** Heat that reaches the pan at the top setting, W. */
  readonly topW: Estimate;
  /** The same as a share of the ring's rated power. */
  readonly stoveEfficiency: Estimate;
  readonly stoveLagS: Estimate;
  /** Heat lost, times the usual. */
  readonly lossFactor: Estimate;
  /** Heat capacity of the pan, J/K. */
  readonly panJPerK: Estimate;
  /** Spread that is left of each, over that before: near 1, the test did not tell it. */
  readonly left: Readonly<Record<'stoveEfficiency' | 'stoveLagS' | 'lossFactor' | 'panJPerK', number>>;
  /** Readings off the fit, root mean square, C. */
  readonly offC: number;
  /** What the readings alone say, together. */
  readonly told: Told;
}

/** Mass and material of a pan give its heat capacity to within this share (assumed). */
const panSd = 0.2;
/** A stove that is tested may be stranger than kits are said to be: power before the test, as a logarithm. */
const lnPowerSd = 0.35;
/** Scatter of readings in stirred water, C, unless they show more; and of what the water was at the beginning. */
const usualNoiseC = 0.5;

const shortestReadOnS = 300;
const longestReadOnS = 900;
const lagsToReadOn = 10;

/** How long to read on after the ring is off, s; a quarter of an hour suffices for every ring: what a ring gives off then tells its power apart from its lag. */
export function readOnS(kit: Kit): number {
  const wantedS = lagsToReadOn * kitParameters(kit).stoveLagS.centre;
  return Math.round(Math.min(longestReadOnS, Math.max(shortestReadOnS, wantedS)));
}

const order = ['stoveEfficiency', 'stoveLagS', 'lossFactor', 'panJPerK'] as const;

/**
 * @param runs one or more; 0.5 to 2 kg of water, heated 4 to 7 minutes to no more than about 70 C, then the ring off and
 *   read on for `readOnS`; readings each 10 to 30 s
 * @param noiseC scatter of a single reading
 */
export function heatingTest(kit: Kit, runs: readonly HeatingRun[], noiseC = usualNoiseC): Heating {
  requireRange('number of tests', runs.length, 1, 50);
  for (const { readings } of runs) requireRange('number of readings', readings.length, 6, 10_000);
  const statedJPerK = prepareKit(kit).panJPerK;
  const parameters = kitParameters({ ...kit, learned: undefined });
  const centre = parameters.stoveEfficiency.centre * kit.stove.ratedPowerW;
  const wide = (parameter: Parameter, score: number) => valueAt(parameter, widening * score);
  const panAt = (z: Float64Array): WaterPan => ({
    topW: centre * Math.exp(lnPowerSd * z[0]),
    ringLagS: wide(parameters.stoveLagS, z[1]),
    lossFactor: wide(parameters.lossFactor, z[2]),
    panJPerK: statedJPerK * Math.exp(panSd * z[3]),
    evaporationFactor: wide(parameters.evaporationFactor, z[4]),
    thermometerLagS: wide(parameters.thermometerLagS, z[5]),
  });
  // An offset changes what is shown, not how the water warms; where each test begins is as uncertain as a reading.
  const shown = (z: Float64Array): Float64Array => {
    const pan = panAt(z);
    const offsetC = wide(parameters.thermometerOffsetC, z[6]);
    const columns = runs.map((run, i) =>
      heatedWaterC(kit, run, pan, run.startC - offsetC + noiseC * z[7 + i]).map((valueC) => valueC + offsetC),
    );
    return Float64Array.from(columns.flatMap((column) => [...column]));
  };
  const observed = runs.flatMap(({ readings }) => readings.map(({ valueC }) => valueC));
  const count = 7 + runs.length;
  const fitted = (sd: number) => smooth({ count, predict: shown, observed, sd: observed.map(() => sd) });
  const first = fitted(noiseC);
  const offC =
    noiseC * Math.sqrt(first.residuals.reduce((sum, r) => sum + r * r, 0) / Math.max(1, observed.length - 4));
  const { centre: at, precisionRoot } = offC > 1.3 * noiseC ? fitted(offC) : first;
  const left = order.map((_, i) => spreadOf(precisionRoot, count, i));
  const pan = panAt(at);
  const lognormal = (value: number, sd: number): Estimate => estimateOf(value, value * sd);
  const power = lognormal(pan.topW, lnPowerSd * left[0]);
  const ofRated = 1 / kit.stove.ratedPowerW;
  return {
    topW: power,
    stoveEfficiency: estimateOf(power.value * ofRated, power.sd * ofRated),
    stoveLagS: lognormal(pan.ringLagS, parameters.stoveLagS.sd * widening * left[1]),
    lossFactor: lognormal(pan.lossFactor, parameters.lossFactor.sd * widening * left[2]),
    panJPerK: lognormal(pan.panJPerK, panSd * left[3]),
    left: Object.fromEntries(order.map((name, i) => [name, left[i]])) as Heating['left'],
    offC,
    told: toldBy(at, precisionRoot, pan.topW / kit.stove.ratedPowerW, parameters),
  };
}

/** The fitted numbers that are the kit's, with their places among the fitted scores. */
const fittedNames = [
  ['stoveEfficiency', 0],
  ['stoveLagS', 1],
  ['lossFactor', 2],
  ['evaporationFactor', 4],
  ['thermometerLagS', 5],
  ['thermometerOffsetC', 6],
] as const;

/** Takes what was likely beforehand out again: the readings' own information on the kit's numbers, the others left open. */
function toldBy(
  at: Float64Array,
  precisionRoot: Float64Array,
  efficiency: number,
  parameters: Parameters<KitParameter>,
): Told {
  const places: readonly number[] = fittedNames.map(([, place]) => place);
  const columns = places.map((place) => {
    const unit = new Float64Array(at.length);
    unit[place] = 1;
    return solveTransposed(precisionRoot, solveLower(precisionRoot, unit));
  });
  const root = cholesky(
    columns.flatMap((column) => places.map((place) => column[place])),
    places.length,
  );
  const precision = places.map((_, i) => {
    const unit = new Float64Array(places.length);
    unit[i] = 1;
    return solveTransposed(root, solveLower(root, unit));
  });
  // Fitted scores z are straight lines of scores s as stated for any kit: z = slope s + shift; power, on its wider scale, near what was found.
  const { centre, sd } = parameters.stoveEfficiency;
  const powerSlope = sd / (efficiency * lnPowerSd);
  const slope = places.map((place) => (place === 0 ? powerSlope : 1 / widening));
  const shift = places.map((place) => (place === 0 ? at[0] - (powerSlope * (efficiency - centre)) / sd : 0));
  const own = precision.map((row, i) => row.map((value, j) => value - (i === j ? 1 : 0)));
  return {
    names: fittedNames.map(([name]) => name),
    information: places.map((_, i) => places.map((__, j) => slope[i] * own[i][j] * slope[j])),
    pull: places.map((_, i) =>
      places.reduce((sum, place, j) => sum + slope[i] * (precision[i][j] * at[place] - own[i][j] * shift[j]), 0),
    ),
  };
}

/** Standard deviation of the score in place i, of a precision's lower square root. */
function spreadOf(lower: Float64Array, n: number, i: number): number {
  const unit = new Float64Array(n);
  unit[i] = 1;
  return Math.hypot(...solveLower(lower, unit));
}
