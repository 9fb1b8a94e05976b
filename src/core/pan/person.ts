/**
 * The cook's hand in a simulation: follows the steps by the thermometer as a careful person would. Holds a band from above with
 * spoonfuls of cold water and, when these come too often, with the dial; from below with the dial. Acts a reaction time after seeing.
 */
import { spoonFill } from './deeds.ts';
import type { Deed, Step } from './steps.ts';

export interface PersonHabits {
  /** From seeing to having acted, s. */
  readonly reactionS: number;
  /** Time given to a spoonful to show on the thermometer, s. */
  readonly patienceS: number;
  /** Scatter of a spoonful, as a share (20 %: common practice, no source). */
  readonly spoonScatter: number;
}

/** On the way to a band, warming slower than this is taken for a ring set too low; below the boil of syrup it only dissolves. */
export const stalledCPerS = 0.4 / 60;
const stalledAboveC = 108;

export const carefulPerson: PersonHabits = { reactionS: 8, patienceS: 20, spoonScatter: 0.2 };

/** What the person can see: the thermometer and how fast it moves, and, when letting down, the thickness. */
export interface Sight {
  readonly readingC: number;
  readonly trendCPerS: number;
  readonly solids: number;
}

export interface Person {
  /** Index of the step under way; the number of steps once poured. */
  readonly stepIndex: number;
  /** No look is taken before this time, s. */
  readonly lookFromS: number;
  /** A deed decided on, and when it will be done. */
  readonly pending: { readonly atS: number; readonly deeds: readonly Deed[] } | undefined;
  /** When the thermometer first showed the band's lower edge in this step, s; infinite before. */
  readonly heldFromS: number;
  /** What is done at the very start. */
  opening(): readonly Deed[];
  /** Would the person end a hold of so many minutes on this sight at this time? Pure. */
  wouldEnd(timeS: number, sight: Sight, heldMinutes: number): boolean;
  /** Would the person act on this sight at this time? Pure. */
  wouldAct(timeS: number, sight: Sight): boolean;
  /** Decides on what is seen; leaves `pending` or moves to the next step at once. Returns deeds done at once. */
  act(timeS: number, sight: Sight): readonly Deed[];
  /** Takes the pending deeds as done. */
  done(timeS: number): readonly Deed[];
}

/** Water and alkali go in with the heat off. */
function firstNotch({ letDown, alkali, approachNotch }: Step): number {
  return letDown || alkali.length > 0 ? 0 : approachNotch;
}

interface Making {
  readonly steps: readonly Step[];
  readonly spoonKg: number;
  readonly habits: PersonHabits;
  /** Highest dial setting. */
  readonly notches: number;
  /** How long the ring goes on after it is turned down, s: the person turns down that much ahead, and waits as long for a turn to tell. */
  readonly ringLagS: number;
  /** Source of standard normal numbers for the scatter of spoonfuls. */
  readonly normal: () => number;
}

export function createPerson({ steps, spoonKg, habits, notches, ringLagS, normal }: Making): Person {
  let stepIndex = 0;
  let lookFromS = 0;
  let pending: Person['pending'];
  let approaching = true;
  let heldFromS = Number.POSITIVE_INFINITY;
  let partsGiven = 0;
  let lastSpoonS = Number.NEGATIVE_INFINITY;
  let notch = firstNotch(steps[0]);
  let turnedS = 0;

  const aheadS = ringLagS + habits.reactionS;
  const stepNow = (): Step => steps[stepIndex];
  const middleC = (step: Step): number => (step.bandC[0] + step.bandC[1]) / 2;

  function isOver(timeS: number, { readingC, solids }: Sight): boolean {
    const step = stepNow();
    if (step.letDown) return solids <= step.letDown.solids;
    if (partsGiven < step.alkali.length) return false;
    return 'reachedC' in step.end ? readingC >= step.end.reachedC : timeS >= heldFromS + step.end.heldMinutes * 60;
  }

  function turnTo(wanted: number, timeS: number): Deed {
    notch = Math.min(notches, Math.max(0, wanted));
    turnedS = timeS;
    return { kind: 'heat', notch };
  }

  /** Has the last turn of the dial had time to tell? */
  const settled = (timeS: number): boolean => timeS - turnedS > Math.max(30, ringLagS);

  /** Never more than one at a time: water flashes to steam in syrup this hot. */
  function spoonful(): Deed {
    return { kind: 'water', waterKg: spoonKg * spoonFill(habits.spoonScatter, normal), spoonfuls: 1 };
  }

  function begin(index: number, timeS: number): readonly Deed[] {
    stepIndex = index;
    approaching = true;
    heldFromS = Number.POSITIVE_INFINITY;
    partsGiven = 0;
    lookFromS = timeS;
    if (index >= steps.length) return [{ kind: 'pour' }];
    const step = stepNow();
    return [{ kind: 'step', index }, turnTo(firstNotch(step), timeS)];
  }

  /** What the person would do with the heat and the spoon. Undefined: watch on. */
  function steer(timeS: number, { readingC, trendCPerS }: Sight): (() => readonly Deed[]) | undefined {
    const step = stepNow();
    const [lowC, highC] = step.bandC;
    if (approaching) {
      const target = 'reachedC' in step.end ? Number.POSITIVE_INFINITY : middleC(step);
      if (readingC + Math.max(0, trendCPerS) * aheadS >= target) {
        return () => {
          approaching = false;
          return [turnTo(step.holdNotch, timeS)];
        };
      }
      const stalled = readingC > stalledAboveC && trendCPerS < stalledCPerS;
      if (stalled && notch < notches && settled(timeS)) return () => [turnTo(notch + 1, timeS)];
      return undefined;
    }
    if (readingC > highC) {
      return () => {
        const often = timeS - lastSpoonS < 75;
        lastSpoonS = timeS;
        return often && notch > 0 && settled(timeS) ? [spoonful(), turnTo(notch - 1, timeS)] : [spoonful()];
      };
    }
    const falling = readingC + trendCPerS * aheadS < lowC;
    if (falling && notch < notches && settled(timeS)) return () => [turnTo(notch + 1, timeS)];
    return undefined;
  }

  /** Parts of alkali, and portions of water when letting down, come one after the other with a wait between. */
  function nextPart(sight: Sight): readonly Deed[] | undefined {
    const step = stepNow();
    if (step.letDown) {
      const portion = sight.readingC > 120 ? step.letDown.hotPortionKg : step.letDown.coolPortionKg;
      return [{ kind: 'water', waterKg: portion, spoonfuls: 0 }];
    }
    if (partsGiven >= step.alkali.length) return undefined;
    return [{ kind: 'alkali', part: step.alkali[partsGiven] }];
  }

  return {
    get stepIndex() {
      return stepIndex;
    },
    get lookFromS() {
      return lookFromS;
    },
    get pending() {
      return pending;
    },
    get heldFromS() {
      return heldFromS;
    },
    opening: () => [
      { kind: 'step', index: 0 },
      { kind: 'heat', notch },
    ],
    wouldEnd(timeS, sight, heldMinutes) {
      if (stepIndex >= steps.length || pending || timeS < lookFromS || partsGiven < stepNow().alkali.length)
        return false;
      const fromS = heldFromS < timeS || sight.readingC < stepNow().bandC[0] ? heldFromS : timeS;
      return timeS >= fromS + heldMinutes * 60 - 1e-6;
    },
    wouldAct(timeS, sight) {
      if (stepIndex >= steps.length || pending || timeS < lookFromS) return false;
      const step = stepNow();
      const enters = heldFromS === Number.POSITIVE_INFINITY && sight.readingC >= step.bandC[0];
      return enters || isOver(timeS, sight) || nextPart(sight) !== undefined || steer(timeS, sight) !== undefined;
    },
    act(timeS, sight) {
      const step = stepNow();
      if (heldFromS === Number.POSITIVE_INFINITY && sight.readingC >= step.bandC[0]) heldFromS = timeS;
      if (isOver(timeS, sight)) return begin(stepIndex + 1, timeS);
      const part = nextPart(sight);
      if (part) {
        if (!step.letDown) partsGiven++;
        lookFromS = timeS + step.waitS;
        if (partsGiven === step.alkali.length && !step.letDown) return [...part, turnTo(step.approachNotch, timeS)];
        return part;
      }
      const steering = steer(timeS, sight);
      if (steering) pending = { atS: timeS + habits.reactionS, deeds: steering() };
      return [];
    },
    done(timeS) {
      const deeds = pending?.deeds ?? [];
      pending = undefined;
      lookFromS = timeS + habits.patienceS;
      return deeds;
    },
  };
}
