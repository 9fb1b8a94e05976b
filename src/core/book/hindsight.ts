/**
 * A cook as it is known when it is over: the kitchen that tells all of its readings best, and others nearly as good, cook it again from the
 * log's deeds. What is told of a moment then rests on what came after it, too.
 */

import { valuesAt } from '../learn/knowledge.ts';
import { fillAt, fitTo } from '../learn/learn.ts';
import type { CookState } from '../log/fold.ts';
import { advance } from '../pan/advance.ts';
import { solveTransposed } from '../pan/cholesky.ts';
import { filledPan, perform } from '../pan/deeds.ts';
import { createPan, type ModelValues } from '../pan/physics.ts';
import { type PreparedKit, prepareKit } from '../pan/preparedKit.ts';
import type { Charge } from '../pan/steps.ts';
import { normalNumbers } from '../reactions/normal.ts';
import { type Range, rangeOf } from '../twin/range.ts';
import { createTelling } from '../twin/toldByLog.ts';
import type { TwinEvent } from '../twin/twin.ts';
import { type Unseen, type UnseenName, unseenNames, unseenOf } from '../twin/unseen.ts';

export interface HindsightRow {
  readonly timeS: number;
  readonly believedC: Range;
  readonly unseen: Unseen<Range>;
}

export type Hindsight =
  | { readonly kind: 'known'; readonly rows: readonly HindsightRow[]; readonly draws: number }
  /** No kitchen that was likely tells this cook: readings are off by this much, C, root mean square. */
  | { readonly kind: 'untold'; readonly readingsOffC: number };

const usualDraws = 24;
const rowS = 30;
const tolerance = 1e-4;

/**
 * Takes some seconds: `onRun` is told after each run of the model, of which there are some hundreds to a few thousand.
 *
 * @returns nothing for a log that does not say how the cook began
 */
export function hindsightOf(
  state: CookState,
  { draws = usualDraws, onRun }: { readonly draws?: number; readonly onRun?: (runs: number) => void } = {},
): Hindsight | undefined {
  const { begun } = state;
  if (!begun) return undefined;
  const { kit, amounts } = begun.body;
  const { charge } = amounts;
  const prepared = prepareKit(kit);
  const events = untilPour(createTelling()(state));
  const { known, smoothed, verdict } = fitTo({ prepared, charge, events }, onRun);
  if (!verdict.accepted) return { kind: 'untold', readingsOffC: verdict.readingsOffC };
  const normal = normalNumbers(1);
  const cooks = Array.from({ length: draws }, () => {
    const off = solveTransposed(
      smoothed.precisionRoot,
      smoothed.centre.map(() => normal()),
    );
    const scores = smoothed.centre.map((score, i) => score + off[i]);
    const fills = scores.subarray(known.names.length).map(fillAt);
    return cookedAgain({ prepared, charge, events, values: valuesAt(known, scores), fills });
  });
  return { kind: 'known', rows: rowsOf(cooks), draws };
}

function untilPour(events: readonly TwinEvent[]): readonly TwinEvent[] {
  const pour = events.findIndex((event) => 'deed' in event && event.deed.kind === 'pour');
  return pour < 0 ? events : events.slice(0, pour + 1);
}

interface Again {
  readonly prepared: PreparedKit;
  readonly charge: Charge;
  readonly events: readonly TwinEvent[];
  readonly values: ModelValues;
  readonly fills: ArrayLike<number>;
}

interface Moment extends Unseen<number> {
  readonly timeS: number;
  readonly temperatureC: number;
}

/** A row each half minute, to the last event. */
function cookedAgain({ prepared, charge, events, values, fills }: Again): readonly Moment[] {
  const pan = createPan(prepared, values);
  const y = filledPan(charge, prepared.kit, values);
  const rows: Moment[] = [];
  let timeS = 0;
  let spooning = 0;
  const goTo = (toS: number) => {
    if (toS > timeS) advance(pan, y, toS - timeS, tolerance);
    timeS = Math.max(timeS, toS);
  };
  const look = () => {
    const seen = unseenOf({ y, values, ph: pan.view.ph }, charge);
    rows.push({ ...seen, timeS, temperatureC: pan.view.temperatureC });
  };
  pan.derivatives(y, new Float64Array(y.length));
  look();
  for (const event of events) {
    for (let next = rows.length * rowS; next <= event.timeS; next += rowS) {
      goTo(next);
      look();
    }
    if (!('deed' in event)) continue;
    goTo(event.timeS);
    const { deed } = event;
    const spooned = deed.kind === 'water' && deed.spoonfuls > 0;
    perform(deed, y, pan, prepared.kit, spooned ? fills[spooning++] : 1);
  }
  return rows;
}

function rowsOf(cooks: readonly (readonly Moment[])[]): readonly HindsightRow[] {
  return cooks[0].map(({ timeS }, row) => {
    const range = (of: (moment: Moment) => number) => rangeOf(cooks.map((rows) => of(rows[row])));
    const unseen = Object.fromEntries(
      unseenNames.map((name: UnseenName) => [name, range((moment) => moment[name])]),
    ) as Unseen<Range>;
    return { timeS, believedC: range(({ temperatureC }) => temperatureC), unseen };
  });
}
