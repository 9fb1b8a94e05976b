/** What the Stove shows of a rehearsal at one moment, taken from the core's rehearsal. */
import { type Advice, situationOf } from '../../../core/advice/advise.ts';
import { type OpenDeeds, openDeeds } from '../../../core/advice/openDeeds.ts';
import { outlook } from '../../../core/advice/outlook.ts';
import type { Progress } from '../../../core/advice/progress.ts';
import type { Rehearsal } from '../../../core/advice/rehearsal.ts';
import type { Kit } from '../../../core/pan/kit.ts';
import type { Step, TimedDeed } from '../../../core/pan/steps.ts';
import { type Range, rangeOf } from '../../../core/twin/range.ts';
import type { Unseen } from '../../../core/twin/unseen.ts';
import { filmDepthCm, likelyHueIndex, poolColour } from '../../parts/syrupPaint.ts';
import type { Revealing } from './revealing.ts';

/** A reading and what the twin made of it, with the syrup's colour as a film. */
export interface Row {
  readonly timeS: number;
  readonly readingC: number;
  readonly believedC: Range;
  readonly colour: string;
}

/** The twin carried on with nothing done. */
export interface Ahead {
  readonly fromS: number;
  readonly everyS: number;
  readonly temperatureC: readonly Range[];
}

export interface Pace {
  readonly running: boolean;
  /** Cook seconds for each second: as asked for, and as this machine does it; undefined before it is measured. */
  readonly asked: number;
  readonly measured: number | undefined;
  /** Goes at 1 for now, because a card asks for an act. */
  readonly slowed: boolean;
  readonly slowsForActs: boolean;
}

export interface View {
  readonly timeS: number;
  readonly begun: boolean;
  readonly readingC: number;
  readonly readingAtS: number;
  readonly believedC: Range;
  readonly trendCPerMin: number;
  readonly notch: number;
  readonly progress: Progress;
  readonly advice: Advice;
  /** The advice was put aside for a while. */
  readonly aside: boolean;
  readonly unseen: Unseen<Range>;
  readonly open: OpenDeeds;
  readonly pace: Pace;
}

/** What the worker tells: the moment, and what is new since it last told. */
export interface Told {
  readonly turn: number;
  readonly view: View;
  readonly rows: readonly Row[];
  readonly deeds: readonly TimedDeed[];
  readonly ahead: Ahead | undefined;
  readonly reveal: Revealing | undefined;
}

export const believedOf = ({ twin }: Rehearsal): Range => rangeOf(twin.members.map((m) => m.temperatureC));

export function rowOf(rehearsal: Rehearsal, unseen: Unseen<Range>): Row {
  const tone = {
    a430: unseen.a430.mid,
    hueIndex: likelyHueIndex(unseen.a430.mid),
    waterShare: Math.min(1, Math.max(0, unseen.waterShare.mid)),
  };
  return {
    timeS: rehearsal.twin.timeS,
    readingC: rehearsal.readingC,
    believedC: believedOf(rehearsal),
    colour: poolColour(tone, filmDepthCm),
  };
}

/** Five minutes ahead. */
const aheadHorizon = { reactionS: 0, everyS: 30, rows: 10, members: 16 } as const;

export function aheadOf({ twin }: Rehearsal, kit: Kit): Ahead {
  const { everyS, temperatureC } = outlook(twin, kit, [], aheadHorizon);
  return { fromS: twin.timeS, everyS, temperatureC: temperatureC.map(rangeOf) };
}

export function openNow({ twin, progress }: Rehearsal, kit: Kit, steps: readonly Step[]): OpenDeeds {
  return openDeeds(situationOf({ twin, kit, steps, progress }));
}
