/** Learning from the log of a finished cook: what is wrong with it first, then the fit. */
import type { LogEvent, Stamp } from '../log/event.ts';
import { foldCook } from '../log/fold.ts';
import type { Kit } from '../pan/kit.ts';
import { prepareKit } from '../pan/preparedKit.ts';
import type { Observation } from '../twin/observe.ts';
import { createTelling } from '../twin/toldByLog.ts';
import type { TwinEvent } from '../twin/twin.ts';
import { type Fault, faultsOf } from './faults.ts';
import { type Learning, type LearningFrom, learnFrom } from './learn.ts';

export interface LogLesson extends Pick<LearningFrom, 'at' | 'onRun'> {
  readonly events: readonly (LogEvent & Partial<Stamp>)[];
  /** The kit that is to learn, with what it knows. */
  readonly kit: Kit;
  /** What was measured of the finished sugar. */
  readonly measured?: readonly Observation[];
  /** Learn from a rehearsal, too: to try it out, since no real stove is behind it. */
  readonly rehearsed?: boolean;
}

export type LogLearning = Learning | { readonly kind: 'unfit'; readonly faults: readonly Fault[] };

export function learnFromLog({ events, kit, measured = [], rehearsed = false, at, onRun }: LogLesson): LogLearning {
  const state = foldCook(events);
  const faults = faultsOf(events, state, kit, rehearsed);
  const { begun } = state;
  if (!begun || faults.length > 0) return { kind: 'unfit', faults };
  // The day's own water, altitude and room; what is known is the kit's.
  const prepared = prepareKit({ ...begun.body.kit, learned: kit.learned });
  const told: readonly TwinEvent[] = createTelling()(state);
  const { charge } = begun.body.amounts;
  return learnFrom({ prepared, charge, events: withMeasured(told, measured) }, { name: events[0].cook, at, onRun });
}

/** Up to the pour, and what was measured after it: the contents then are no longer in the pan, so their weight tells nothing. */
function withMeasured(told: readonly TwinEvent[], measured: readonly Observation[]): readonly TwinEvent[] {
  const pour = told.findIndex((event) => 'deed' in event && event.deed.kind === 'pour');
  const cooked = pour < 0 ? told : told.slice(0, pour + 1);
  const after = pour < 0 ? [] : told.slice(pour + 1);
  const timeS = cooked.at(-1)?.timeS ?? 0;
  const later = after.filter(
    (event) => 'observation' in event && event.observation.kind !== 'reading' && event.observation.kind !== 'weight',
  );
  return [...cooked, ...later, ...measured.map((observation) => ({ timeS, observation }))];
}
