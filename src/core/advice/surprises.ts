/** Surprises of a rehearsal: faults of its thermometer in the holds, so that alarms and their answers are practised before a real cook. */
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import type { EventBodies, EventKind } from '../log/bodies.ts';
import type { Step } from '../pan/steps.ts';
import type { Progress } from './progress.ts';
import { type SurpriseKind, type SurpriseName, surpriseKinds, surpriseNames } from './surpriseKinds.ts';

/** A fault to come: so long after a hold has begun, and for so long unless somebody puts it right, s. */
export interface Surprise {
  readonly name: SurpriseName;
  readonly stepIndex: number;
  readonly afterS: number;
  readonly lastsS: number;
}

/** A fault that came, and until when it lasts as things stand; for good (infinite) where the cook goes by it from now on. */
export interface Surprised {
  readonly name: SurpriseName;
  readonly beganS: number;
  readonly untilS: number;
}

/** The first minute of a hold is left in peace, and at its end there is time for the alarm; how long a fault lasts; s. */
const quietS = 60;
const soonestEndS = 120;
const lastsS = [180, 300] as const;
/** From seeing an alarm until the thermometer is right again, s (assumed). */
const rightingS = 30;

/** The generator's first numbers are much alike for seeds that are near each other. */
const unmixed = 8;

/** One or two faults, each of another kind and in a hold of its own; none where no hold is long enough. */
export function drawSurprises(seed: number, steps: readonly Step[]): readonly Surprise[] {
  // The hidden pan is drawn from twice the seed.
  const generator = xoroshiro128plus(2 * seed + 1);
  for (let i = 0; i < unmixed; i++) generator.next();
  const between = (low: number, high: number): number => low + (high - low) * uniformFloat64(generator);
  const takeFrom = <T>(left: T[]): T => left.splice(uniformInt(generator, 0, left.length - 1), 1)[0];
  const holds = steps.flatMap((step, stepIndex) => {
    const latestS = heldS(step) - soonestEndS;
    return latestS >= quietS ? [{ stepIndex, latestS }] : [];
  });
  const names = [...surpriseNames];
  return Array.from({ length: Math.min(holds.length, uniformInt(generator, 1, 2)) }, () => {
    const { stepIndex, latestS } = takeFrom(holds);
    const name = takeFrom(names);
    return { name, stepIndex, afterS: between(quietS, latestS), lastsS: between(...lastsS) };
  });
}

function heldS({ end, letDown }: Step): number {
  return 'heldMinutes' in end && !letDown ? 60 * end.heldMinutes : 0;
}

export interface Surprises {
  /** Those that came so far, in order. */
  readonly came: readonly Surprised[];
  /** What the thermometer sends at a time of what it shows, C; null: nothing. */
  sends(shownC: number, timeS: number): number | null;
  /** Takes in what was done or said at a time. */
  hear<K extends EventKind>(kind: K, body: EventBodies[K], timeS: number): void;
}

/** @param progress where the cook stands when it is asked */
export function createSurprises(
  drawn: readonly Surprise[],
  { steps, roomC, progress }: { readonly steps: readonly Step[]; readonly roomC: number; progress(): Progress },
): Surprises {
  let waiting = drawn;
  let came: readonly (Surprised & Surprise & { readonly firstC: number })[] = [];

  function isDue({ stepIndex, afterS }: Surprise, timeS: number): boolean {
    const now = progress();
    if (now.stepIndex !== stepIndex || now.inBandSinceS === undefined) return false;
    const allGiven = now.partsGiven >= steps[stepIndex].alkali.length;
    return allGiven && timeS - Math.max(now.inBandSinceS, now.lastPartS) >= afterS;
  }

  return {
    get came() {
      return came;
    },
    sends(shownC, timeS) {
      const due = waiting.filter((each) => isDue(each, timeS));
      waiting = waiting.filter((each) => !due.includes(each));
      const begun = due.map((each) => ({ ...each, beganS: timeS, untilS: timeS + each.lastsS, firstC: shownC }));
      came = [...came, ...begun];
      // A unit that the cook goes by is the last thing to befall a reading, whatever came later.
      return came.reduceRight<number | null>((sentC, { name, beganS, untilS, firstC }) => {
        if (sentC === null || timeS >= untilS) return sentC;
        const { sends }: SurpriseKind = surpriseKinds[name];
        return sends(sentC, { sinceS: timeS - beganS, firstC, roomC });
      }, shownC);
    },
    hear(kind, body, timeS) {
      came = came.map((each) => (timeS < each.untilS ? { ...each, untilS: untilS(each, kind, body, timeS) } : each));
    },
  };
}

/** Until when a fault lasts, once this was done or said about it. */
function untilS(fault: Surprised & Surprise, kind: EventKind, body: EventBodies[EventKind], timeS: number): number {
  if (fault.untilS === Number.POSITIVE_INFINITY) return fault.untilS;
  switch (kind) {
    // Who sees the alarm goes and puts the thermometer right, unless they stand by it as it is.
    case 'seen':
      return 'alarm' in body && body.alarm === surpriseKinds[fault.name].alarm
        ? Math.min(fault.untilS, timeS + rightingS)
        : fault.untilS;
    case 'vouched':
      return fault.beganS + fault.lastsS;
    case 'probeUnit':
      return fault.name === 'otherUnit' ? Number.POSITIVE_INFINITY : fault.untilS;
    // No fault is carried from its hold into the next step: nothing is rehearsed at the alkali.
    case 'step':
      return timeS;
    default:
      return fault.untilS;
  }
}
