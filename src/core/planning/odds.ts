/** How likely a plan lands near its aim: it is cooked in many possible kits, each drawn from every uncertain number. */
import { ciede2000 } from '../colour/lab.ts';
import { ratingA430 } from '../colour/rating.ts';
import { stateColour } from '../colour/stateColour.ts';
import { drawnValues } from '../pan/model.ts';
import type { ModelValues } from '../pan/physics.ts';
import type { PreparedKit } from '../pan/preparedKit.ts';
import { simulate } from '../pan/simulate.ts';
import { normalNumbers } from '../reactions/normal.ts';
import { type Range, rangeOf } from '../twin/range.ts';
import { glassLab } from './aim.ts';
import type { Plan } from './plan.ts';

/** How many draws odds rest on unless asked otherwise: a probability of a half is then known within 4 points (one standard error). */
export const oddsDraws = 200;
/** A difference just visible side by side, dE00 (common practice, no source). */
export const justVisible = 1;

/** Where one possible cook landed. */
export interface Landing {
  /** A430 per cm of a 10 % w/w solution. */
  readonly a430: number;
  readonly hueIndex: number;
}

/** The seed's own streams of numbers, apart from those of a forecast. */
const stream = (seed: number, number: number): number => 2 * (seed * 100_003 + number) + 500_000;
const oneRow = 1e9;

/** @param number which of the draws, from 0; the same seed and number draw the same kit whatever the plan */
export function landingOf(plan: Plan, prepared: PreparedKit, seed: number, number: number): Landing {
  const values = drawnValues(prepared.kit, normalNumbers(stream(seed, number)));
  return landedIn(plan, prepared, values, normalNumbers(stream(seed, number) + 1));
}

/** @param values what the kit is really like; `normal` scatters the spoonfuls */
export function landedIn(plan: Plan, prepared: PreparedKit, values: ModelValues, normal: () => number): Landing {
  const recipe = { charge: plan.amounts.charge, steps: plan.steps };
  const { last } = simulate(recipe, prepared, values, { everyS: oneRow, tolerance: 1e-3, normal });
  const { specific430, hueIndex } = stateColour(last, values.absorptivity420);
  return { a430: ratingA430(specific430, 'tenPercentByWeight'), hueIndex };
}

/** What counts as landed: the look of the aim in the glass, and a band of A430 about it if one is asked for. */
export interface Target {
  readonly a430: number;
  readonly hueIndex: number;
  readonly band?: readonly [number, number] | undefined;
}

export interface Odds {
  readonly draws: number;
  readonly a430: Range;
  /** Share of the draws that land within a just visible difference of the aim. */
  readonly justVisible: number;
  /** Share within the band asked for, when one was. */
  readonly band: number | undefined;
}

/** Does it look the same, 1 cm of a 10 % solution beside the aim's? */
export function looksAlike(landing: Landing, { a430, hueIndex }: Target): boolean {
  return ciede2000(glassLab(landing.a430, landing.hueIndex), glassLab(a430, hueIndex)) <= justVisible;
}

export function withinBand({ a430 }: Landing, [low, high]: readonly [number, number]): boolean {
  return a430 >= low && a430 <= high;
}

/** @param landings at least one */
export function oddsOf(landings: readonly Landing[], target: Target): Odds {
  const share = (landed: (landing: Landing) => boolean): number => landings.filter(landed).length / landings.length;
  const { band } = target;
  return {
    draws: landings.length,
    a430: rangeOf(landings.map(({ a430 }) => a430)),
    justVisible: share((landing) => looksAlike(landing, target)),
    band: band && share((landing) => withinBand(landing, band)),
  };
}

/** All draws at once; a page shares them out and calls `landingOf` itself. */
export function drawnOdds(plan: Plan, prepared: PreparedKit, target: Target, draws = oddsDraws, seed = 1): Odds {
  return oddsOf(
    Array.from({ length: draws }, (_, i) => landingOf(plan, prepared, seed, i)),
    target,
  );
}
