/**
 * The twin of the pan: an ensemble of simulated pans that goes through the events of a cook. Everything is a pure function of seed and
 * events in time order; a late event goes back to a checkpoint and forward again.
 */
import type { Pan } from '../pan/physics.ts';
import type { PreparedKit } from '../pan/preparedKit.ts';
import type { Charge, Deed } from '../pan/steps.ts';
import { normalNumbers } from '../reactions/normal.ts';
import { createEnsemble, defaultSeed, type EnsembleOptions, type Kept, type Taken } from './ensemble.ts';
import type { Observation, Seen } from './observe.ts';

export type TwinEvent = { readonly timeS: number } & ({ readonly deed: Deed } | { readonly observation: Observation });

/** Is told where the twin goes, so that what hangs on its course can be kept beside it. */
export interface Companion {
  /** It went on, at most `strideS` at a time. */
  moved(timeS: number): void;
  /** An event has been done, the first time or again after going back. */
  done(index: number, taken: Taken | undefined): void;
  /** It went back: events from this index on, and all after this time, will be done again. */
  wentBack(timeS: number, index: number): void;
}

export interface TwinOptions extends EnsembleOptions {
  readonly companion?: Companion;
}

const checkpointEveryS = 60;
/** It goes on by no more than this at a time, so that holds are counted by temperatures that were really believed, s. */
const strideS = 10;

interface Checkpoint extends Kept {
  /** Events done before it. */
  readonly done: number;
}

export interface Twin {
  readonly timeS: number;
  /** Dial setting in force. */
  readonly notch: number;
  readonly members: readonly Seen[];
  /** Takes an event; one older than the newest is put in its place, and what followed is done again. */
  take(event: TwinEvent): Taken | undefined;
  /** Goes by these events, in the order of time: from the first that is not the very same as before on, all is done again. */
  follow(events: readonly TwinEvent[]): void;
  /** Moves on to a time without an event. */
  moveTo(timeS: number): void;
  /** Copies of `count` members spread over the ensemble, ready to be carried further. */
  copies(count: number): readonly { readonly y: Float64Array; readonly pan: Pan }[];
}

/**
 * @param prepared the kit, from `prepareKit`
 * @param charge what is in the pan at time 0, the start of the cook
 */
export function createTwin(prepared: PreparedKit, charge: Charge, options: TwinOptions = {}): Twin {
  const { companion, seed = defaultSeed } = options;
  const ensemble = createEnsemble(prepared, charge, options);
  let events: readonly TwinEvent[] = [];
  /** How many of them have been done. */
  let done = 0;
  let checkpoints: Checkpoint[] = [{ ...ensemble.kept(), done }];

  function moveTo(toS: number): void {
    while (ensemble.timeS < toS) {
      ensemble.goOn(Math.min(toS, ensemble.timeS + strideS));
      companion?.moved(ensemble.timeS);
    }
  }

  /** Does the event at an index of the ordered list. */
  function doEvent(index: number): Taken | undefined {
    const event = events[index];
    moveTo(event.timeS);
    const normal = normalNumbers(seed * 7919 + index + 1);
    const taken =
      ('deed' in event ? ensemble.perform(event.deed, normal) : ensemble.observe(event.observation, normal)) ??
      undefined;
    done = index + 1;
    if (ensemble.timeS - checkpoints[checkpoints.length - 1].timeS >= checkpointEveryS)
      checkpoints.push({ ...ensemble.kept(), done });
    companion?.done(index, taken);
    return taken;
  }

  /** Does all events from an index on, those before it being done; returns what came of each. */
  function doFrom(index: number): Map<number, Taken | undefined> {
    const due = events[index]?.timeS ?? Number.POSITIVE_INFINITY;
    let next = index;
    if (index < done || due < ensemble.timeS) {
      checkpoints = checkpoints.filter((point) => point.done <= index && point.timeS <= due);
      const point = checkpoints[checkpoints.length - 1];
      ensemble.goBackTo(point);
      done = point.done;
      companion?.wentBack(point.timeS, point.done);
      next = point.done;
    }
    const taken = new Map<number, Taken | undefined>();
    for (; next < events.length; next++) taken.set(next, doEvent(next));
    return taken;
  }

  return {
    get timeS() {
      return ensemble.timeS;
    },
    get notch() {
      return ensemble.notch;
    },
    members: ensemble.members,
    moveTo,
    take(event) {
      let index = events.length;
      while (index > 0 && events[index - 1].timeS > event.timeS) index--;
      events = events.toSpliced(index, 0, event);
      return doFrom(index).get(index);
    },
    follow(wanted) {
      const index = wanted.findIndex((event, i) => event !== events[i]);
      const from = index < 0 ? wanted.length : index;
      events = [...wanted];
      doFrom(from);
    },
    copies: ensemble.copies,
  };
}
