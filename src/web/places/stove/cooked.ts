/** Everything so far of a cook, as the page holds it. */
import type { AnyEntry } from '../../../core/log/corrections.ts';
import type { TimedDeed } from '../../../core/pan/steps.ts';
import type { Cook } from './deedWords.ts';
import type { Planned } from './planned.ts';
import type { Revealing } from './rehearsal/revealing.ts';
import type { Ahead, Pace, Row, Told, View } from './view.ts';

export interface Cooked {
  readonly planned: Planned;
  readonly view: View;
  readonly rows: readonly Row[];
  readonly deeds: readonly TimedDeed[];
  readonly entries: readonly AnyEntry[];
  readonly ahead: Ahead | undefined;
  readonly pace: Pace | undefined;
  readonly reveal: Revealing | undefined;
}

/** Where the cook stands, as deeds are spoken of. */
export function cookIn({ view, planned }: Cooked): Cook {
  const { kit, steps } = planned.begun;
  const { partsGiven, stepIndex } = view.progress;
  return { kit, steps, notch: view.notch, partsGiven, stepIndex };
}

/** @param before none: the first telling of a cook, which tells all */
export function grown(planned: Planned, before: Cooked | undefined, told: Told): Cooked {
  const { view, newRows, deeds, entries, ahead, pace, reveal } = told;
  const kept = before?.rows ?? [];
  const same = newRows.rows.length === 0 && newRows.from === kept.length;
  return {
    planned,
    view,
    rows: same ? kept : [...kept.slice(0, newRows.from), ...newRows.rows],
    deeds: deeds.length === before?.deeds.length && same ? before.deeds : deeds,
    entries,
    ahead: ahead ?? before?.ahead,
    pace,
    reveal,
  };
}
