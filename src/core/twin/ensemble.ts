/**
 * The twin's simulated pans: each with its own state, and a standard score for each uncertain number. They go on together, feel the same
 * deeds, and are corrected together by what is observed.
 */
import { advance } from '../pan/advance.ts';
import { filledPan, perform, spoonFill } from '../pan/deeds.ts';
import { drawnScores } from '../pan/model.ts';
import { createPan, type ModelValues, type Pan } from '../pan/physics.ts';
import type { PreparedKit } from '../pan/preparedKit.ts';
import { stateSize } from '../pan/state.ts';
import type { Charge, Deed } from '../pan/steps.ts';
import { normalNumbers } from '../reactions/normal.ts';
import { createRates, type Rates } from '../reactions/rates.ts';
import { assimilate, meanAndVariance } from './assimilate.ts';
import { instrumentOf, type Observation, type Seen } from './observe.ts';
import { createVariables, type Group, groupNames, type Member } from './variables.ts';

/** What came of an observation. */
export interface Taken {
  /** What was expected, and the standard deviation of expected and observed together, in the units compared. */
  readonly expected: number;
  readonly sd: number;
  /** Observed less expected, in those standard deviations. */
  readonly surprise: number;
  readonly used: boolean;
}

export interface EnsembleOptions {
  readonly members?: number;
  readonly seed?: number;
  /** Relaxation of the spread for each group; chosen by measured coverage. */
  readonly relaxation?: Readonly<Record<Group, number>>;
  /** First spread of the parameters against their stated standard deviations; chosen by measured coverage. */
  readonly widening?: number;
}

/** All that an ensemble is made of at one moment. */
export interface Kept {
  readonly timeS: number;
  readonly driftedS: number;
  readonly notch: number;
  readonly ys: readonly Float64Array[];
  readonly scores: readonly Float64Array[];
}

export interface Ensemble {
  readonly timeS: number;
  /** Dial setting in force. */
  readonly notch: number;
  readonly members: readonly Seen[];
  goOn(toS: number): void;
  perform(deed: Deed, normal: () => number): void;
  observe(observation: Observation, normal: () => number): Taken;
  kept(): Kept;
  goBackTo(kept: Kept): void;
  /** Copies of `count` members spread over the ensemble, ready to be carried further. */
  copies(count: number): readonly { readonly y: Float64Array; readonly pan: Pan }[];
}

const defaultMembers = 256;
export const defaultSeed = 1;
const tolerance = 3e-4;
/**
 * An observation further off than this many standard deviations is held back, however often it comes: a probe that has fallen out of the
 * pan agrees with itself. Only the cook's word that the thermometer is right lets it in.
 */
export const surpriseLimit = 4;

const defaultRelaxation: Readonly<Record<Group, number>> = {
  heat: 0.25,
  water: 0.1,
  acidity: 0.3,
  sugars: 0.3,
  colour: 0.3,
};

const defaultWidening = 1.25;

/** Drift of the wandering parameters: how much of their spread comes back in a second. */
const driftPerS = 1 / 10_800;

/** A single spoonful scatters by about 20 % (common practice, no source). */
const spoonScatter = 0.2;

interface Pot extends Member, Seen {
  readonly y: Float64Array;
  readonly scores: Float64Array;
  values: ModelValues;
  ph: number;
  temperatureC: number;
  rates: Rates;
  pan: Pan;
}

/**
 * @param prepared the kit, from `prepareKit`
 * @param charge what is in the pan at time 0, the start of the cook
 */
export function createEnsemble(prepared: PreparedKit, charge: Charge, options: EnsembleOptions): Ensemble {
  const {
    members = defaultMembers,
    seed = defaultSeed,
    relaxation = defaultRelaxation,
    widening = defaultWidening,
  } = options;
  const { kit } = prepared;
  const variables = createVariables(kit);
  const names = variables.parameterNames;
  const ensemble = new Float64Array(members * variables.count);
  const expected = new Float64Array(members);
  const dy = new Float64Array(stateSize);

  let notch = 0;
  let timeS = 0;
  let driftedS = 0;
  const pots: Pot[] = firstPots();

  function firstPots(): Pot[] {
    const normal = normalNumbers(seed);
    return Array.from({ length: members }, () => {
      const drawn = drawnScores(kit, normal);
      const scores = Float64Array.from(names, (name) => widening * drawn[name]);
      const values = variables.valuesOf(scores);
      const rates = createRates(values);
      const pan = createPan(prepared, values, rates);
      return { y: filledPan(charge, kit, values), scores, values, rates, pan, ph: 6, temperatureC: kit.roomC };
    });
  }

  /** Takes changed scores over into values, equations and ring; the reactions' tables are built again only for their groups. */
  function renew(pot: Pot, changed: readonly Group[]): void {
    pot.values = variables.valuesAfter(pot.values, pot.scores, changed);
    if (changed.some((group) => group !== 'heat' && group !== 'water')) pot.rates = createRates(pot.values);
    pot.pan = panOf(pot);
    look(pot);
  }

  /** The equations of a pot, at the dial in force. */
  function panOf({ y, values, rates }: Pot): Pan {
    const pan = createPan(prepared, values, rates);
    perform({ kind: 'heat', notch }, y, pan, kit);
    return pan;
  }

  function look(pot: Pot): void {
    pot.pan.derivatives(pot.y, dy);
    pot.temperatureC = pot.pan.view.temperatureC;
    pot.ph = pot.pan.view.ph;
  }

  /** Stirring, draughts and cycling rings change: their parameters wander, and come back to their prior, with time. */
  function drift(normal: () => number): void {
    const share = Math.min(1, (timeS - driftedS) * driftPerS);
    driftedS = timeS;
    if (share === 0) return;
    const keep = Math.sqrt(1 - share);
    const spread = Math.sqrt(share);
    for (const { scores } of pots) {
      for (const i of variables.wandering) scores[i] = keep * scores[i] + spread * normal();
    }
  }

  function feel(deed: Deed, normal: () => number): void {
    if (deed.kind === 'heat') notch = deed.notch;
    for (const pot of pots) {
      perform(deed, pot.y, pot.pan, kit, spoonFill(spoonScatter, normal));
      look(pot);
    }
  }

  function observe(observation: Observation, normal: () => number): Taken {
    drift(normal);
    const { groups, sd, expected: expect, observed } = instrumentOf(observation);
    pots.forEach((pot, i) => {
      expected[i] = expect(pot);
    });
    const { mean, variance } = meanAndVariance(expected);
    const together = Math.sqrt(variance + sd * sd);
    const surprise = (observed - mean) / together;
    const confirmed = observation.kind === 'reading' && observation.confirmed === true;
    if (!confirmed && !(Math.abs(surprise) <= surpriseLimit))
      return { expected: mean, sd: together, surprise, used: false };
    pots.forEach((pot, i) => {
      variables.read(pot, pot.temperatureC, ensemble, i * variables.count);
    });
    for (const group of groups) {
      assimilate({
        ensemble,
        coordinates: variables.count,
        expected,
        observed,
        variance: sd * sd,
        reach: Float64Array.from(variables.groups, (g) => (g === group ? 1 : 0)),
        relaxation: relaxation[group],
      });
    }
    // The drift has moved scores of the heat, whatever was observed.
    const changed: readonly Group[] = ['heat', ...groups];
    pots.forEach((pot, i) => {
      variables.write(pot, ensemble, i * variables.count);
      renew(pot, changed);
    });
    return { expected: mean, sd: together, surprise, used: true };
  }

  return {
    get timeS() {
      return timeS;
    },
    get notch() {
      return notch;
    },
    members: pots,
    goOn(toS) {
      for (const pot of pots) {
        advance(pot.pan, pot.y, toS - timeS, tolerance);
        pot.temperatureC = pot.pan.view.temperatureC;
        pot.ph = pot.pan.view.ph;
      }
      timeS = toS;
    },
    perform: feel,
    observe,
    kept: () => ({
      timeS,
      driftedS,
      notch,
      ys: pots.map(({ y }) => y.slice()),
      scores: pots.map(({ scores }) => scores.slice()),
    }),
    goBackTo(kept) {
      ({ timeS, driftedS, notch } = kept);
      pots.forEach((pot, i) => {
        pot.y.set(kept.ys[i]);
        pot.scores.set(kept.scores[i]);
        renew(pot, groupNames);
      });
    },
    copies(count) {
      const stride = members / count;
      return Array.from({ length: count }, (_, i) => {
        const pot = pots[Math.floor(i * stride)];
        return { y: pot.y.slice(), pan: panOf(pot) };
      });
    },
  };
}
