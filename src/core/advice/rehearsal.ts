/** A rehearsal: a pan with hidden properties, the twin that follows it by its thermometer, and the deeds of whoever cooks. */
import { createHiddenPan, type HiddenPan } from '../pan/hiddenPan.ts';
import type { PreparedKit } from '../pan/preparedKit.ts';
import type { Charge, Deed, Step, TimedDeed } from '../pan/steps.ts';
import { normalNumbers } from '../reactions/normal.ts';
import { rangeOf } from '../twin/range.ts';
import { createTwin, type Twin } from '../twin/twin.ts';
import { type Advice, advise, usualHorizon } from './advise.ts';
import type { Horizon } from './outlook.ts';
import { atTheStart, begun, type Progress, progressed } from './progress.ts';

export interface RehearsalOptions {
  readonly prepared: PreparedKit;
  readonly charge: Charge;
  readonly steps: readonly Step[];
  /** Decides what is hidden, and every noise: the same seed is the same rehearsal. */
  readonly seed: number;
  readonly members?: number;
}

export interface Rehearsal {
  readonly timeS: number;
  readonly progress: Progress;
  readonly twin: Twin;
  /** The hidden pan; to be shown when all is over. */
  readonly hidden: HiddenPan;
  /** Last reading of the thermometer, C. */
  readonly readingC: number;
  /** All that was done, in order. */
  readonly deeds: readonly TimedDeed[];
  /** Readings taken in holds, from when the band was first reached, and how many found the hidden pan inside it. */
  readonly holds: { readonly looks: number; readonly inBand: number };
  /** Goes on to a time; the thermometer is read each `readEveryS` on the way. */
  moveTo(timeS: number): void;
  perform(deed: Deed): void;
  advice(horizon?: Horizon): Advice;
}

/** The thermometer of a rehearsal is read this often, s. */
export const readEveryS = 10;

export function createRehearsal({ prepared, charge, steps, seed, members }: RehearsalOptions): Rehearsal {
  const { kit } = prepared;
  const hidden = createHiddenPan(prepared, charge, normalNumbers(2 * seed));
  const twin = createTwin(prepared, charge, members === undefined ? { seed } : { seed, members });
  let progress = atTheStart;
  let readingC = hidden.reading();
  let holds = { looks: 0, inBand: 0 };
  const deeds: TimedDeed[] = [];

  function read(timeS: number): void {
    hidden.moveTo(timeS);
    readingC = hidden.reading();
    twin.take({ timeS, observation: { kind: 'reading', valueC: readingC, byHand: false } });
    const believed = rangeOf(twin.members.map(({ temperatureC }) => temperatureC)).mid;
    if (progress.poured) return;
    const step = steps[progress.stepIndex];
    progress = progressed(progress, step, timeS, readEveryS, believed);
    if (holding(progress, step)) {
      const inBand = hidden.temperatureC >= step.bandC[0] && hidden.temperatureC <= step.bandC[1];
      holds = { looks: holds.looks + 1, inBand: holds.inBand + (inBand ? 1 : 0) };
    }
  }

  return {
    get timeS() {
      return hidden.timeS;
    },
    get progress() {
      return progress;
    },
    twin,
    hidden,
    get readingC() {
      return readingC;
    },
    deeds,
    get holds() {
      return holds;
    },
    moveTo(toS) {
      const first = (Math.floor(hidden.timeS / readEveryS) + 1) * readEveryS;
      for (let t = first; t <= toS; t += readEveryS) read(t);
      hidden.moveTo(toS);
    },
    perform(deed) {
      const { timeS } = hidden;
      hidden.perform(deed);
      deeds.push({ timeS, deed });
      if (deed.kind === 'step') progress = begun(progress, deed.index, timeS);
      else if (deed.kind === 'pour') {
        progress = { ...progress, poured: true };
        twin.moveTo(timeS);
      } else twin.take({ timeS, deed });
      if (deed.kind === 'heat') progress = { ...progress, turnedS: timeS };
      if (deed.kind === 'alkali') progress = { ...progress, partsGiven: progress.partsGiven + 1, lastPartS: timeS };
    },
    advice: (horizon = usualHorizon) => advise({ twin, kit, steps, progress }, horizon),
  };
}

function holding({ inBandSinceS }: Progress, { end, letDown }: Step): boolean {
  return inBandSinceS !== undefined && 'heldMinutes' in end && !letDown;
}

export interface Following {
  /** From the advice to the act, s. */
  readonly reactionS: number;
  readonly longestS: number;
  readonly horizon?: Horizon;
}

/** Does what is advised a while after it is said, as a person would, until the pour or `longestS`; yields each piece of advice. */
export function* advised(
  rehearsal: Rehearsal,
  steps: readonly Step[],
  { reactionS, longestS, horizon }: Following,
): Generator<Advice, void, void> {
  rehearsal.perform({ kind: 'heat', notch: steps[0].approachNotch });
  let pending: { readonly atS: number; readonly deeds: readonly Deed[] } | undefined;
  while (!rehearsal.progress.poured && rehearsal.timeS < longestS) {
    const next = rehearsal.timeS + readEveryS / 2;
    rehearsal.moveTo(next);
    if (pending && next >= pending.atS) {
      for (const deed of pending.deeds) rehearsal.perform(deed);
      pending = undefined;
    }
    if (pending || rehearsal.progress.poured || next % readEveryS !== 0) continue;
    const advice = rehearsal.advice(horizon);
    yield advice;
    if (advice.deeds.length > 0) pending = { atS: next + reactionS, deeds: advice.deeds };
  }
}

/** The same to its end; `onLook` is told each piece of advice. */
export function followAdvice(
  rehearsal: Rehearsal,
  steps: readonly Step[],
  following: Following,
  onLook: (rehearsal: Rehearsal, advice: Advice) => void = () => undefined,
): void {
  for (const advice of advised(rehearsal, steps, following)) onLook(rehearsal, advice);
}
