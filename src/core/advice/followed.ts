/**
 * A cook as it is followed: the twin, and beside it where the cook stands in its steps. Whatever comes late or is corrected, both are
 * what they would be had it come in time.
 */
import type { Kit } from '../pan/kit.ts';
import type { PreparedKit } from '../pan/preparedKit.ts';
import type { Charge, Step } from '../pan/steps.ts';
import type { Taken } from '../twin/ensemble.ts';
import { type Range, rangeOf } from '../twin/range.ts';
import { type Companion, createTwin, type Twin, type TwinEvent } from '../twin/twin.ts';
import { type Unseen, unseenRanges } from '../twin/unseen.ts';
import { afterDeed, atTheStart, type Progress, progressed } from './progress.ts';

export interface FollowOptions {
  readonly prepared: PreparedKit;
  readonly charge: Charge;
  readonly steps: readonly Step[];
  readonly members?: number;
  readonly seed?: number;
}

/** What the twin believed at a time; and the reading that it was told then, with what came of it. */
export interface Belief {
  readonly timeS: number;
  readonly believedC: Range;
  readonly unseen: Unseen<Range>;
  readonly reading?: { readonly valueC: number; readonly taken: Taken };
}

export interface Followed {
  readonly twin: Twin;
  readonly kit: Kit;
  readonly steps: readonly Step[];
  readonly charge: Charge;
  readonly progress: Progress;
  /** Where the cook stood at an earlier time. */
  progressAt(timeS: number): Progress;
  /** From the start to now, in strides and at each reading. */
  readonly beliefs: readonly Belief[];
  /** What came of each event, in their order. */
  readonly taken: readonly (Taken | undefined)[];
  /** Goes by these events from now on, in the order of time; those after the pour are left out. */
  follow(events: readonly TwinEvent[]): void;
  /** Goes on to a time without an event, and no further than the pour. */
  moveTo(timeS: number): void;
}

/** Where the cook stood at a time, with so many events done. */
interface Standing {
  readonly timeS: number;
  readonly done: number;
  readonly progress: Progress;
}

/** @param prepared the kit, from `prepareKit` */
export function createFollowed({ prepared, charge, steps, ...options }: FollowOptions): Followed {
  const standings: Standing[] = [{ timeS: 0, done: 0, progress: atTheStart }];
  let events: readonly TwinEvent[] = [];
  let taken: (Taken | undefined)[] = [];
  const beliefs: (Belief & { readonly done: number })[] = [];
  const standing = (): Standing => standings[standings.length - 1];

  const companion: Companion = {
    moved(timeS) {
      const { timeS: beforeS, done, progress } = standing();
      const { believedC } = believe(timeS, done);
      const step = steps[progress.stepIndex];
      standings.push({ timeS, done, progress: progressed(progress, step, timeS, timeS - beforeS, believedC.mid) });
    },
    done(index, outcome) {
      const event = events[index];
      const { timeS } = event;
      const { progress } = standing();
      const done = index + 1;
      taken.push(outcome);
      standings.push({ timeS, done, progress: 'deed' in event ? afterDeed(progress, event.deed, timeS) : progress });
      if ('deed' in event || event.observation.kind !== 'reading' || !outcome) return;
      const before = beliefs.at(-1);
      // The same moment before it was told; but the first belief stays.
      if (beliefs.length > 1 && before?.timeS === timeS && !before.reading) beliefs.pop();
      believe(timeS, done, { valueC: event.observation.valueC, taken: outcome });
    },
    wentBack(timeS, done) {
      while (standing().timeS > timeS || standing().done > done) standings.pop();
      const kept = beliefs.findLastIndex((one) => one.timeS <= timeS && one.done <= done);
      beliefs.length = kept + 1;
      taken = taken.slice(0, done);
    },
  };
  const twin = createTwin(prepared, charge, { ...options, companion });
  believe(0, 0);

  function believe(timeS: number, done: number, reading?: Belief['reading']): Belief {
    const believedC = rangeOf(twin.members.map((member) => member.temperatureC));
    const belief = { timeS, done, believedC, unseen: unseenRanges(twin.members, charge), ...(reading && { reading }) };
    beliefs.push(belief);
    return belief;
  }

  return {
    twin,
    kit: prepared.kit,
    steps,
    charge,
    get progress() {
      return standing().progress;
    },
    progressAt: (timeS) => (standings.findLast((one) => one.timeS <= timeS) ?? standings[0]).progress,
    beliefs,
    get taken() {
      return taken;
    },
    follow(wanted) {
      const pour = wanted.findIndex((event) => 'deed' in event && event.deed.kind === 'pour');
      events = pour < 0 ? [...wanted] : wanted.slice(0, pour + 1);
      twin.follow(events);
    },
    moveTo(timeS) {
      if (!standing().progress.poured) twin.moveTo(timeS);
    },
  };
}
