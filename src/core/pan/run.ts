/** A pan with a person at it, from some moment on: the integrator between deeds, the person's hand at them. */
import { valueAt } from '../reactions/parameter.ts';
import { perform } from './deeds.ts';
import type { Kit } from './kit.ts';
import { kitParameters } from './kitParameters.ts';
import { carefulPerson, createPerson, type Person, type PersonHabits, type Sight } from './person.ts';
import type { ModelValues, Pan } from './physics.ts';
import { acceptedStep, between, createStepper, shortestStepS } from './rosenbrock.ts';
import { place, solidsIn, stateSize } from './state.ts';
import type { Deed, Step, TimedDeed } from './steps.ts';

/** First step tried after a deed, s. */
const stepAfterDeedS = 1;

export interface RunOptions {
  readonly pan: Pan;
  readonly kit: Kit;
  /** State to begin with; it becomes the run's own. */
  readonly y: Float64Array;
  /** What the person does from here on; the first step begins now. */
  readonly steps: readonly Step[];
  /** Relative error allowed in one step of the integrator, and its longest step, s. */
  readonly tolerance: number;
  readonly longestStepS: number;
  /** Standard normal numbers for the scatter of spoonfuls; none: every spoonful is exact. */
  readonly normal?: (() => number) | undefined;
  readonly habits?: PersonHabits | undefined;
  /** Told of every point, with the pan's view of it; two points at one time stand for a deed between them. */
  readonly keep: (timeS: number, y: Float64Array, dy: Float64Array) => void;
}

export interface Run {
  /** Since the run began, s. */
  readonly timeS: number;
  /** Present state; another array after each `go`. */
  readonly y: Float64Array;
  readonly deeds: readonly TimedDeed[];
  readonly heldFromS: number;
  /** Are all steps done? */
  readonly over: boolean;
  /** Would the hold under way end here if it were this long? */
  wouldEnd(heldMinutes: number): boolean;
  /** The person acts on what is in sight; false when that was the last act. */
  act(): boolean;
  /** Goes on by one step of the integrator, up to `untilS` or to what the person acts on next. */
  go(untilS: number): void;
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

export function createRun({ pan, kit, steps, keep, ...options }: RunOptions): Run {
  const { normal = () => 0, habits = carefulPerson, longestStepS } = options;
  const { values } = pan;
  const stepper = createStepper(pan, options.tolerance);
  const person = createPerson({
    steps,
    spoonKg: kit.spoonM3 * 1000,
    habits,
    notches: kit.stove.notches,
    ringLagS: valueAt(kitParameters(kit).stoveLagS, 0),
    normal,
  });
  const deeds: TimedDeed[] = [];
  let t = 0;
  let h = 1;
  let { y } = options;
  let next: Float64Array = new Float64Array(stateSize);
  let dy: Float64Array = new Float64Array(stateSize);
  let dyNext: Float64Array = new Float64Array(stateSize);
  let sight = sightOf(y, dy, values);

  /** Evaluates the present state, keeps it and has the person see it. */
  const look = () => {
    pan.derivatives(y, dy);
    keep(t, y, dy);
    sight = sightOf(y, dy, values);
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
  const isOver = () => person.stepIndex >= steps.length;

  look();
  doAll(person.opening());

  return {
    get timeS() {
      return t;
    },
    get y() {
      return y;
    },
    deeds,
    get heldFromS() {
      return person.heldFromS;
    },
    get over() {
      return isOver();
    },
    wouldEnd: (heldMinutes) => person.wouldEnd(t, sight, heldMinutes),
    act() {
      // Each act changes what comes next.
      while (!isOver() && person.wouldAct(t, sight)) doAll(person.act(t, sight));
      return !isOver();
    },
    go(untilS) {
      const stopS = nextStop(person, t, untilS);
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
      keep(t, y, dy);
      if (person.pending && t >= person.pending.atS - 1e-6) doAll(person.done(t));
    },
  };
}

/** Next time at which the integrator must stop: a pending deed, the end of a wait, or what it was asked to go to. */
function nextStop(person: Person, timeS: number, untilS: number): number {
  if (person.pending) return Math.min(untilS, person.pending.atS);
  return person.lookFromS > timeS + 1e-6 ? Math.min(untilS, person.lookFromS) : untilS;
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
