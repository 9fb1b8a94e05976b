/** What a cook's log tells of time: how long it lasted, its deeds, its steps as they were begun, and its thermometer. */
import type { CookState } from '../log/fold.ts';
import type { StepSpan } from '../pan/course.ts';
import { spansBegun } from '../pan/spansBegun.ts';
import type { TimedDeed } from '../pan/steps.ts';
import { deedOf } from '../twin/toldByLog.ts';

/** Temperatures as the thermometer showed them, in the order of time. */
export interface Shown {
  readonly timeS: number;
  readonly valueC: number;
}

export interface Doings {
  /** The pour, or the last that was noted, s since the cook began. */
  readonly endS: number;
  readonly poured: boolean;
  readonly deeds: readonly TimedDeed[];
  readonly spans: readonly (StepSpan & { readonly index: number })[];
  readonly shown: readonly Shown[];
}

export function doingsOf(state: CookState): Doings {
  const deeds = state.deeds.flatMap((entry): TimedDeed[] => {
    const deed = deedOf(entry);
    return deed ? [{ timeS: Math.max(0, entry.timeS), deed }] : [];
  });
  const pour = deeds.find(({ deed }) => deed.kind === 'pour');
  const shown = state.readings.flatMap(({ timeS, body: { valueC, quality } }): Shown[] =>
    valueC === null || quality === 'doubtful' || quality === 'lost' ? [] : [{ timeS, valueC }],
  );
  const lastS = Math.max(0, deeds.at(-1)?.timeS ?? 0, shown.at(-1)?.timeS ?? 0);
  const endS = pour?.timeS ?? lastS;
  return {
    endS,
    poured: pour !== undefined,
    deeds,
    spans: spansBegun(state.begun?.body.steps ?? [], deeds, endS).filter(({ startS }) => startS <= endS),
    shown: shown.filter(({ timeS }) => timeS <= endS),
  };
}
