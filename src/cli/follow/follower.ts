/** A cook that is followed by lines in any order: each goes to the place of its time, and what followed is done again. */
import { type Advice, advise } from '../../core/advice/advise.ts';
import { createFollowed } from '../../core/advice/followed.ts';
import type { Progress } from '../../core/advice/progress.ts';
import type { Taken } from '../../core/twin/ensemble.ts';
import type { Twin, TwinEvent } from '../../core/twin/twin.ts';
import type { Planning } from '../plan/makePlan.ts';
import { misused } from '../stop.ts';
import { deedsSaid } from './deedsSaid.ts';
import type { Line } from './line.ts';

export interface Follower {
  /** The newest time that a line has told. */
  readonly timeS: number;
  readonly twin: Twin;
  readonly progress: Progress;
  /** @throws Stop when the line doesn't go with the others; nothing is taken then */
  take(line: Line): Taken | undefined;
  /** None after the pour. */
  advice(): Advice | undefined;
}

export function createFollower(
  { plan: { amounts, steps }, prepared, kit }: Planning,
  options: { readonly members: number; readonly seed: number },
): Follower {
  const followed = createFollowed({ prepared, charge: amounts.charge, steps, ...options });
  let events: readonly TwinEvent[] = [];
  let timeS = 0;

  const deedsDone = () => events.flatMap((event) => ('deed' in event ? [{ timeS: event.timeS, ...event.deed }] : []));
  const partsGiven = (): number => deedsDone().filter(({ kind }) => kind === 'alkali').length;
  const pouredS = (): number => deedsDone().find(({ kind }) => kind === 'pour')?.timeS ?? Number.POSITIVE_INFINITY;

  function take({ timeS: atS, said }: Line): Taken | undefined {
    if (atS > pouredS()) misused('t', String(atS), 'is after the pour', `up to ${pouredS()} s`);
    const { stepIndex } = followed.progressAt(atS);
    const told: readonly TwinEvent[] =
      said.kind === 'observed'
        ? [{ timeS: atS, observation: said.observation }]
        : deedsSaid(said, { kit, steps }, { stepIndex, partsGiven: partsGiven() }).map((deed) => ({
            timeS: atS,
            deed,
          }));
    const place = events.findLastIndex((event) => event.timeS <= atS) + 1;
    events = events.toSpliced(place, 0, ...told);
    followed.follow(events);
    timeS = Math.max(timeS, atS);
    followed.moveTo(timeS);
    return followed.taken[place];
  }

  return {
    get timeS() {
      return timeS;
    },
    twin: followed.twin,
    get progress() {
      return followed.progress;
    },
    take,
    advice: () => (followed.progress.poured ? undefined : advise(followed)),
  };
}
