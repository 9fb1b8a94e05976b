/**
 * The twin of the pan: an ensemble of simulated pans that goes through the deeds of a cook and is corrected by what is observed.
 * Everything is a pure function of seed and events in time order; a late event goes back to a checkpoint and forward again.
 */
import { advance } from '../pan/advance.ts';
import { filledPan, perform, spoonFill } from '../pan/deeds.ts';
import { createPan, type ModelValues, type Pan } from '../pan/physics.ts';
import type { PreparedKit } from '../pan/preparedKit.ts';
import { stateSize } from '../pan/state.ts';
import type { Charge, Deed } from '../pan/steps.ts';
import { normalNumbers } from '../reactions/normal.ts';
import { createRates, type Rates } from '../reactions/rates.ts';
import { assimilate, meanAndVariance } from './assimilate.ts';
import { instrumentOf, type Observation, type Seen } from './observe.ts';
import { createVariables, type Group, type Member } from './variables.ts';

export type TwinEvent = { readonly timeS: number } & ({ readonly deed: Deed } | { readonly observation: Observation });

/** What came of an observation. */
export interface Taken {
  /** Observed less expected, in standard deviations of both together. */
  readonly surprise: number;
  readonly used: boolean;
}

export interface TwinOptions {
  readonly members?: number;
  readonly seed?: number;
  /** Relaxation of the spread for each group; chosen by measured coverage. */
  readonly relaxation?: Readonly<Record<Group, number>>;
  /** First spread of the parameters against their stated standard deviations; chosen by measured coverage. */
  readonly widening?: number;
}

const defaultMembers = 256;
const tolerance = 3e-4;
/**
 * An observation further off than this many standard deviations is held back, however often it comes: a probe that has fallen out of the
 * pan agrees with itself. Only the cook's word that the thermometer is right lets it in.
 */
export const surpriseLimit = 4;
const checkpointEveryS = 60;

const defaultRelaxation: Readonly<Record<Group, number>> = {
  heat: 0.3,
  water: 0.1,
  acidity: 0.3,
  sugars: 0.3,
  colour: 0.3,
};

const defaultWidening = 1.25;

/** Drift of the heat parameters: how much of their spread comes back in a second (stirring, draughts and cycling rings change). */
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

interface Checkpoint {
  readonly timeS: number;
  /** Events done before it. */
  readonly done: number;
  readonly ys: readonly Float64Array[];
  readonly scores: readonly Float64Array[];
  readonly notch: number;
}

export interface Twin {
  readonly timeS: number;
  /** Dial setting in force. */
  readonly notch: number;
  readonly members: readonly Seen[];
  /** Takes an event; one older than the newest is put in its place, and what followed is done again. */
  take(event: TwinEvent): Taken | undefined;
  /** Moves on to a time without an event. */
  moveTo(timeS: number): void;
  /** Copies of `count` members spread over the ensemble, ready to be carried further. */
  copies(count: number): readonly { readonly y: Float64Array; readonly pan: Pan }[];
}

/**
 * @param prepared the kit, from `prepareKit`
 * @param charge what is in the pan at time 0, the start of the cook
 */
export function createTwin(prepared: PreparedKit, charge: Charge, options: TwinOptions = {}): Twin {
  const { members = defaultMembers, seed = 1, relaxation = defaultRelaxation, widening = defaultWidening } = options;
  const { kit } = prepared;
  const variables = createVariables(kit);
  const names = variables.parameterNames;
  const heatScores = names.flatMap((_, i) =>
    variables.groups[variables.count - names.length + i] === 'heat' ? [i] : [],
  );
  const ensemble = new Float64Array(members * variables.count);
  const expected = new Float64Array(members);
  const dy = new Float64Array(stateSize);

  let notch = 0;
  let timeS = 0;
  let driftedS = 0;
  const events: TwinEvent[] = [];
  let checkpoints: Checkpoint[] = [];

  const pots: Pot[] = firstPots();
  keepCheckpoint(0);

  function firstPots(): Pot[] {
    const normal = normalNumbers(seed);
    return Array.from({ length: members }, () => {
      const scores = Float64Array.from(names, () => widening * normal());
      const values = variables.valuesOf(scores);
      const rates = createRates(values);
      const pan = createPan(prepared, values, rates);
      return { y: filledPan(charge, kit, values), scores, values, rates, pan, ph: 6, temperatureC: kit.roomC };
    });
  }

  /** Takes changed scores over into values, equations and ring; the reactions' tables are built again only if asked. */
  function renew(pot: Pot, reactionsChanged: boolean): void {
    pot.values = variables.valuesOf(pot.scores);
    if (reactionsChanged) pot.rates = createRates(pot.values);
    pot.pan = createPan(prepared, pot.values, pot.rates);
    perform({ kind: 'heat', notch }, pot.y, pot.pan, kit);
    look(pot);
  }

  function look(pot: Pot): void {
    pot.pan.derivatives(pot.y, dy);
    pot.temperatureC = pot.pan.view.temperatureC;
    pot.ph = pot.pan.view.ph;
  }

  function moveTo(toS: number): void {
    if (toS <= timeS) return;
    for (const pot of pots) {
      advance(pot.pan, pot.y, toS - timeS, tolerance);
      pot.temperatureC = pot.pan.view.temperatureC;
      pot.ph = pot.pan.view.ph;
    }
    timeS = toS;
  }

  /** Stirring, draughts and cycling rings change: heat parameters wander, and come back to their prior, with time. */
  function drift(normal: () => number): void {
    const share = Math.min(1, (timeS - driftedS) * driftPerS);
    driftedS = timeS;
    if (share === 0) return;
    const keep = Math.sqrt(1 - share);
    const spread = Math.sqrt(share);
    for (const { scores } of pots) {
      for (const i of heatScores) scores[i] = keep * scores[i] + spread * normal();
    }
  }

  function doDeed(deed: Deed, normal: () => number): void {
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
    const surprise = (observed - mean) / Math.sqrt(variance + sd * sd);
    const confirmed = observation.kind === 'reading' && observation.confirmed === true;
    if (!confirmed && !(Math.abs(surprise) <= surpriseLimit)) return { surprise, used: false };
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
    const reactionsChanged = groups.some((group) => group !== 'heat' && group !== 'water');
    pots.forEach((pot, i) => {
      variables.write(pot, ensemble, i * variables.count);
      renew(pot, reactionsChanged);
    });
    return { surprise, used: true };
  }

  function keepCheckpoint(done: number): void {
    checkpoints.push({
      timeS,
      done,
      ys: pots.map(({ y }) => y.slice()),
      scores: pots.map(({ scores }) => scores.slice()),
      notch,
    });
  }

  function goBackTo(point: Checkpoint): void {
    ({ timeS, notch } = point);
    driftedS = timeS;
    pots.forEach((pot, i) => {
      pot.y.set(point.ys[i]);
      pot.scores.set(point.scores[i]);
      renew(pot, true);
    });
  }

  /** Does the event at an index of the ordered list. */
  function doEvent(index: number): Taken | undefined {
    const event = events[index];
    moveTo(event.timeS);
    const normal = normalNumbers(seed * 7919 + index + 1);
    const taken = 'deed' in event ? doDeed(event.deed, normal) : observe(event.observation, normal);
    if (timeS - checkpoints[checkpoints.length - 1].timeS >= checkpointEveryS) keepCheckpoint(index + 1);
    return taken ?? undefined;
  }

  return {
    get timeS() {
      return timeS;
    },
    get notch() {
      return notch;
    },
    members: pots,
    moveTo,
    take(event) {
      let index = events.length;
      while (index > 0 && events[index - 1].timeS > event.timeS) index--;
      events.splice(index, 0, event);
      if (index === events.length - 1 && event.timeS >= timeS) return doEvent(index);
      checkpoints = checkpoints.filter(({ done, timeS: at }) => done <= index && at <= event.timeS);
      const point = checkpoints[checkpoints.length - 1];
      goBackTo(point);
      let taken: Taken | undefined;
      for (let i = point.done; i < events.length; i++) {
        const outcome = doEvent(i);
        if (i === index) taken = outcome;
      }
      return taken;
    },
    copies(count) {
      const stride = members / count;
      return Array.from({ length: count }, (_, i) => {
        const pot = pots[Math.floor(i * stride)];
        const pan = createPan(prepared, pot.values, pot.rates);
        perform({ kind: 'heat', notch }, pot.y, pan, kit);
        return { y: pot.y.slice(), pan };
      });
    },
  };
}
