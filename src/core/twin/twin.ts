/**
 * The twin of the pan: an ensemble of simulated pans that goes through the deeds of a cook and is corrected by what is observed.
 * Everything is a pure function of seed and events in time order; a late event goes back to a checkpoint and forward again.
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

export type TwinEvent = { readonly timeS: number } & ({ readonly deed: Deed } | { readonly observation: Observation });

/** What came of an observation. */
export interface Taken {
  /** What was expected, and the standard deviation of expected and observed together, in the units compared. */
  readonly expected: number;
  readonly sd: number;
  /** Observed less expected, in those standard deviations. */
  readonly surprise: number;
  readonly used: boolean;
}

/** Is told where the twin goes, so that what hangs on its course can be kept beside it. */
export interface Companion {
  /** It went on, at most `strideS` at a time. */
  moved(timeS: number): void;
  /** An event has been done, the first time or again after going back. */
  done(index: number, taken: Taken | undefined): void;
  /** It went back: events from this index on, and all after this time, will be done again. */
  wentBack(timeS: number, index: number): void;
}

export interface TwinOptions {
  readonly members?: number;
  readonly seed?: number;
  /** Relaxation of the spread for each group; chosen by measured coverage. */
  readonly relaxation?: Readonly<Record<Group, number>>;
  /** First spread of the parameters against their stated standard deviations; chosen by measured coverage. */
  readonly widening?: number;
  readonly companion?: Companion;
}

const defaultMembers = 256;
const tolerance = 3e-4;
/**
 * An observation further off than this many standard deviations is held back, however often it comes: a probe that has fallen out of the
 * pan agrees with itself. Only the cook's word that the thermometer is right lets it in.
 */
export const surpriseLimit = 4;
const checkpointEveryS = 60;
/** It goes on by no more than this at a time, so that holds are counted by temperatures that were really believed, s. */
const strideS = 10;

const defaultRelaxation: Readonly<Record<Group, number>> = {
  heat: 0.3,
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

interface Checkpoint {
  readonly timeS: number;
  readonly driftedS: number;
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
  /** Goes by these events, in the order of time: from the first that is not the very same as before on, all is done again. */
  follow(events: readonly TwinEvent[]): void;
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
  const { companion } = options;
  const { kit } = prepared;
  const variables = createVariables(kit);
  const names = variables.parameterNames;
  const ensemble = new Float64Array(members * variables.count);
  const expected = new Float64Array(members);
  const dy = new Float64Array(stateSize);

  let notch = 0;
  let timeS = 0;
  let driftedS = 0;
  let events: readonly TwinEvent[] = [];
  /** How many of them have been done. */
  let done = 0;
  let checkpoints: Checkpoint[] = [];

  const pots: Pot[] = firstPots();
  keepCheckpoint();

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
    while (timeS < toS) {
      const nextS = Math.min(toS, timeS + strideS);
      for (const pot of pots) {
        advance(pot.pan, pot.y, nextS - timeS, tolerance);
        pot.temperatureC = pot.pan.view.temperatureC;
        pot.ph = pot.pan.view.ph;
      }
      timeS = nextS;
      companion?.moved(timeS);
    }
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

  function keepCheckpoint(): void {
    checkpoints.push({
      timeS,
      driftedS,
      done,
      ys: pots.map(({ y }) => y.slice()),
      scores: pots.map(({ scores }) => scores.slice()),
      notch,
    });
  }

  function goBackTo(point: Checkpoint): void {
    ({ timeS, driftedS, notch, done } = point);
    pots.forEach((pot, i) => {
      pot.y.set(point.ys[i]);
      pot.scores.set(point.scores[i]);
      renew(pot, groupNames);
    });
  }

  /** Does the event at an index of the ordered list. */
  function doEvent(index: number): Taken | undefined {
    const event = events[index];
    moveTo(event.timeS);
    const normal = normalNumbers(seed * 7919 + index + 1);
    const taken = ('deed' in event ? doDeed(event.deed, normal) : observe(event.observation, normal)) ?? undefined;
    done = index + 1;
    if (timeS - checkpoints[checkpoints.length - 1].timeS >= checkpointEveryS) keepCheckpoint();
    companion?.done(index, taken);
    return taken;
  }

  /** Does all events from an index on, those before it being done; returns what came of each. */
  function doFrom(index: number): Map<number, Taken | undefined> {
    const due = events[index]?.timeS ?? Number.POSITIVE_INFINITY;
    let next = index;
    if (index < done || due < timeS) {
      checkpoints = checkpoints.filter((point) => point.done <= index && point.timeS <= due);
      const point = checkpoints[checkpoints.length - 1];
      goBackTo(point);
      companion?.wentBack(point.timeS, point.done);
      next = point.done;
    }
    const taken = new Map<number, Taken | undefined>();
    for (; next < events.length; next++) taken.set(next, doEvent(next));
    return taken;
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
      events = events.toSpliced(index, 0, event);
      return doFrom(index).get(index);
    },
    follow(wanted) {
      const index = wanted.findIndex((event, i) => event !== events[i]);
      const from = index < 0 ? wanted.length : index;
      events = [...wanted];
      doFrom(from);
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
