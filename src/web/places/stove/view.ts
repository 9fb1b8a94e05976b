/** What the Stove shows of a cook at one moment, be it real or rehearsed. */
import type { Advice } from '../../../core/advice/advise.ts';
import type { Alarms } from '../../../core/advice/alarms/engine.ts';
import type { OtherUnit } from '../../../core/advice/alarms/readingDoubt.ts';
import { type Arrival, arrivalIn, awaitedC } from '../../../core/advice/arrival.ts';
import type { Belief, Followed } from '../../../core/advice/followed.ts';
import type { OpenDeeds } from '../../../core/advice/openDeeds.ts';
import { outlook } from '../../../core/advice/outlook.ts';
import type { Progress } from '../../../core/advice/progress.ts';
import { believedColour } from '../../../core/colour/pool.ts';
import type { AnyEntry } from '../../../core/log/corrections.ts';
import type { Apart } from '../../../core/log/probesApart.ts';
import type { Poured } from '../../../core/lot/yield.ts';
import type { TimedDeed } from '../../../core/pan/steps.ts';
import { type Range, rangeOf } from '../../../core/twin/range.ts';
import type { Unseen } from '../../../core/twin/unseen.ts';
import type { Revealing } from './rehearsal/revealing.ts';

/** What the twin believed at a time, the reading that it was told then, and the syrup's colour as a film. */
export interface Row {
  readonly timeS: number;
  readonly readingC: number | undefined;
  readonly believedC: Range;
  readonly unseen: Unseen<Range>;
  readonly colour: string;
}

/** The twin carried on with nothing done. */
export interface Ahead {
  readonly fromS: number;
  readonly everyS: number;
  /** Five minutes of it. */
  readonly temperatureC: readonly Range[];
  /** When it reaches what the step waits for; undefined where a step waits for no temperature. */
  readonly arrival: Arrival | undefined;
}

/** The clock of a rehearsal. */
export interface Pace {
  readonly running: boolean;
  /** Cook seconds for each second: as asked for, and as this machine does it; undefined before it is measured. */
  readonly asked: number;
  readonly measured: number | undefined;
  /** Goes at 1 for now, because a card asks for an act. */
  readonly slowed: boolean;
  readonly slowsForActs: boolean;
}

/** The last reading, as it came; `valueC` is null when what came was none. */
export interface LastReading {
  readonly id: string;
  readonly probe: string;
  readonly valueC: number | null;
  readonly atS: number;
  readonly byHand: boolean;
  readonly used: boolean | undefined;
  readonly otherUnit: OtherUnit | undefined;
}

export interface View {
  readonly timeS: number;
  readonly begun: boolean;
  readonly reading: LastReading | undefined;
  /** When a number last came from a thermometer, or the cook began. */
  readonly lastReadS: number;
  /** Is a reading overdue, so that the picture stands on the model alone? */
  readonly overdue: boolean;
  /** Two thermometers that disagree, while that is asked about. */
  readonly apart: Apart | undefined;
  readonly believedC: Range;
  readonly trendCPerMin: number;
  readonly notch: number;
  readonly progress: Progress;
  readonly advice: Advice;
  /** The advice was put aside for a while. */
  readonly aside: boolean;
  readonly unseen: Unseen<Range>;
  readonly open: OpenDeeds;
  readonly alarms: Alarms;
  /** After the pour: what came of it. */
  readonly poured: { readonly atS: number; readonly sugar: Poured } | undefined;
}

/** Rows that replace those from an index on: a late reading changes what was believed since. */
export interface NewRows {
  readonly from: number;
  readonly rows: readonly Row[];
}

/** What the worker tells: the moment, and what is new since it last told. */
export interface Told {
  readonly turn: number;
  readonly view: View;
  readonly newRows: NewRows;
  readonly deeds: readonly TimedDeed[];
  /** All that was done and said, as the log now has it, for looking back and putting right. */
  readonly entries: readonly AnyEntry[];
  readonly ahead: Ahead | undefined;
  readonly pace: Pace | undefined;
  readonly reveal: Revealing | undefined;
}

export function rowOf({ timeS, believedC, unseen, reading }: Belief): Row {
  const colour = believedColour(unseen.a430.mid, unseen.waterShare.mid);
  return { timeS, readingC: reading?.valueC, believedC, unseen, colour };
}

/** Five minutes ahead are drawn; where a temperature is waited for, twenty are looked at. Twenty pans can be counted by eye. */
const drawn = { reactionS: 0, everyS: 30, rows: 10, members: 20 } as const;
const awaitedRows = 40;

export function aheadOf({ twin, kit, steps, progress }: Followed): Ahead {
  const step = steps[progress.stepIndex];
  const toC = step && awaitedC(step, progress);
  const view = outlook(twin, kit, [], toC === undefined ? drawn : { ...drawn, rows: awaitedRows });
  return {
    fromS: twin.timeS,
    everyS: view.everyS,
    temperatureC: view.temperatureC.slice(0, drawn.rows + 1).map(rangeOf),
    arrival: toC === undefined ? undefined : arrivalIn(view, toC),
  };
}

/** What is believed a little after the twin's own time, between its rows ahead; the twin's many decide on where it starts. */
export function believedAt(timeS: number, now: Range, { fromS, everyS, temperatureC }: Ahead): Range {
  const at = Math.max(0, (timeS - fromS) / everyS);
  const i = Math.min(temperatureC.length - 2, Math.floor(at));
  const [before, after, first] = [temperatureC[i], temperatureC[i + 1], temperatureC[0]];
  if (!before || !after || !first) return now;
  const moved = (mark: keyof Range) =>
    now[mark] - first[mark] + before[mark] + (after[mark] - before[mark]) * Math.min(1, at - i);
  return { low: moved('low'), mid: moved('mid'), high: moved('high') };
}
