/** Runs a cook from the filled pan to the pour: the integrator between deeds, the person's hand at them. */

import { valueAt } from '../reactions/parameter.ts';
import type { Course, Ending, StepSpan } from './course.ts';
import { filledPan, perform } from './deeds.ts';
import { kitParameters } from './kitParameters.ts';
import { carefulPerson, createPerson, type Person, type PersonHabits, type Sight } from './person.ts';
import { createPan, type ModelValues } from './physics.ts';
import type { PreparedKit } from './preparedKit.ts';
import { createRecorder } from './recorder.ts';
import { acceptedStep, between, createStepper, shortestStepS } from './rosenbrock.ts';
import { place, solidsIn, stateSize } from './state.ts';
import type { Charge, Deed, Step, TimedDeed } from './steps.ts';

export interface SimulationOptions {
  /** Standard normal numbers for the scatter of spoonfuls; none: every spoonful is exact. */
  readonly normal?: () => number;
  readonly habits?: PersonHabits;
  /** Distance of the output rows, s. */
  readonly everyS?: number;
  /** Relative error allowed in one step of the integrator. */
  readonly tolerance?: number;
  /** The cook is broken off after this time, s. */
  readonly longestS?: number;
}

/**
 * Keeps every row of the reference cook within 4e-5 of a tight reference, and draws of all parameters within about 1e-4
 * (bench/results/simulate.md).
 */
const defaultTolerance = 3e-5;
/** The rows between two points are read from slopes, and in longer steps the stiff ones (boiling) would show too much of the error. */
const longestStepS = 20;
/** First step tried after a deed, s. */
const stepAfterDeedS = 1;

interface Recipe {
  readonly charge: Charge;
  readonly steps: readonly Step[];
}

/** What the person sees of a state. */
function sightOf(y: Float64Array, dy: Float64Array, values: ModelValues): Sight {
  return {
    readingC: y[place.tipC] + values.thermometerOffsetC,
    trendCPerS: dy[place.tipC],
    solids: solidsIn(y),
  };
}

/** The sight at a share u of the step between two points. */
function sightBetween(a: Sight, b: Sight, h: number, u: number): Sight {
  return {
    readingC: between(a.readingC, a.trendCPerS, b.readingC, b.trendCPerS, h, u),
    trendCPerS: a.trendCPerS + u * (b.trendCPerS - a.trendCPerS),
    solids: a.solids + u * (b.solids - a.solids),
  };
}

/**
 * Simulates a cook.
 *
 * @param recipe what is in the pan and the steps to follow
 * @param prepared the kit, tabulated by `prepareKit`
 * @param values one value of each model parameter
 * @returns the course with a row each `everyS` seconds (1 s unless asked otherwise)
 */
export function simulate(
  recipe: Recipe,
  prepared: PreparedKit,
  values: ModelValues,
  options: SimulationOptions = {},
): Course {
  const { kit } = prepared;
  const { normal = () => 0, habits = carefulPerson, everyS = 1, longestS = 6 * 3600 } = options;
  const pan = createPan(prepared, values);
  const stepper = createStepper(pan, options.tolerance ?? defaultTolerance);
  const person = createPerson({
    steps: recipe.steps,
    spoonKg: kit.spoonM3 * 1000,
    habits,
    notches: kit.stove.notches,
    ringLagS: valueAt(kitParameters(kit).stoveLagS, 0),
    normal,
  });
  const recorder = createRecorder();
  const deeds: TimedDeed[] = [];

  let t = 0;
  let h = 1;
  let y: Float64Array = filledPan(recipe.charge, kit, values);
  let next: Float64Array = new Float64Array(stateSize);
  let dy: Float64Array = new Float64Array(stateSize);
  let dyNext: Float64Array = new Float64Array(stateSize);
  let hottestC = kit.roomC;
  let sight = sightOf(y, dy, values);

  /** Evaluates the present state, keeps it and has the person see it. */
  const look = () => {
    pan.derivatives(y, dy);
    keep();
    sight = sightOf(y, dy, values);
  };
  const keep = () => {
    recorder.keep(t, y, dy, pan);
    if (pan.view.temperatureC > hottestC) hottestC = pan.view.temperatureC;
  };
  const doAll = (list: readonly Deed[]) => {
    for (const deed of list) {
      perform(deed, y, pan, kit);
      deeds.push({ timeS: t, deed });
    }
    if (list.length > 0) {
      look();
      h = Math.min(h, stepAfterDeedS);
    }
  };

  look();
  doAll([
    { kind: 'step', index: 0 },
    { kind: 'heat', notch: recipe.steps[0].approachNotch },
  ]);

  while (person.stepIndex < recipe.steps.length && t < longestS) {
    // Act on what is in sight already; each act changes what comes next, so it ends.
    while (person.wouldAct(t, sight)) doAll(person.act(t, sight));
    if (person.stepIndex >= recipe.steps.length) break;

    const stopS = nextStop(person, t, longestS);
    const { takenS, nextS } = acceptedStep(stepper, y, dy, Math.min(h, longestStepS, stopS - t), next);
    pan.derivatives(next, dyNext);
    let seen = sightOf(next, dyNext, values);
    let advance = takenS;
    if (person.wouldAct(t + takenS, seen)) {
      const share = firstShare((u) => person.wouldAct(t + u * takenS, sightBetween(sight, seen, takenS, u)));
      if (share * takenS < takenS - shortestStepS) {
        advance = share * takenS;
        stepper.step(y, dy, advance, next);
        pan.derivatives(next, dyNext);
        seen = sightOf(next, dyNext, values);
      }
    }
    t = stopS - (t + advance) < 1e-6 ? stopS : t + advance;
    [y, next] = [next, y];
    [dy, dyNext] = [dyNext, dy];
    h = nextS;
    sight = seen;
    keep();
    if (person.pending && t >= person.pending.atS - 1e-6) doAll(person.done(t));
  }

  const ending: Ending = person.stepIndex >= recipe.steps.length ? 'poured' : 'out of time';
  const sampled = recorder.sample(everyS);
  return {
    ...sampled,
    readingC: shifted(sampled.states[place.tipC], values.thermometerOffsetC),
    steps: spans(recipe.steps, deeds, t),
    deeds,
    ending,
    last: y,
    hottestC,
  };
}

/** Next time at which the integrator must stop: a pending deed, the end of a wait, or the end. */
function nextStop(person: Person, timeS: number, longestS: number): number {
  if (person.pending) return person.pending.atS;
  return person.lookFromS > timeS + 1e-6 ? person.lookFromS : longestS;
}

/** Smallest share of a step at which a test that holds at its end holds, by bisection. */
function firstShare(holds: (u: number) => boolean): number {
  let low = 0;
  let high = 1;
  for (let i = 0; i < 14; i++) {
    const u = (low + high) / 2;
    if (holds(u)) high = u;
    else low = u;
  }
  return high;
}

/** A column with `by` added. */
function shifted(column: Float64Array, by: number): Float64Array {
  const out = new Float64Array(column.length);
  for (let i = 0; i < out.length; i++) out[i] = column[i] + by;
  return out;
}

/** Start, end and spoonfuls of each step from the deeds. */
function spans(steps: readonly Step[], deeds: readonly TimedDeed[], endS: number): StepSpan[] {
  const starts = deeds.filter(({ deed }) => deed.kind === 'step').map(({ timeS }) => timeS);
  return starts.map((startS, i) => {
    const stepEndS = starts[i + 1] ?? endS;
    const inStep = deeds.filter(({ timeS }) => timeS >= startS && timeS < stepEndS);
    const spoonfuls = inStep.reduce((sum, { deed }) => sum + (deed.kind === 'water' ? deed.spoonfuls : 0), 0);
    return { kind: steps[i].kind, startS, endS: stepEndS, spoonfuls };
  });
}
