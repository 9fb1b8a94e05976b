/** The twin led through the log of a cook that is over, by and by, so that whoever waits for it can do other things in between. */
import { createFollowed, type Followed } from '../advice/followed.ts';
import type { CookState } from '../log/fold.ts';
import { prepareKit } from '../pan/preparedKit.ts';
import { createTelling, type Told } from '../twin/toldByLog.ts';

/** Fewer pans than at the stove: a cook that is over is looked at by many more than cook it. */
const usualMembers = 64;
const readingsApartS = 9.5;

/**
 * Yields how much of the log is done, 0 to 1, after each event that the twin was told.
 *
 * @returns nothing for a log that does not say how the cook began
 */
export function* following(
  state: CookState,
  members = usualMembers,
): Generator<{ readonly done: number; readonly followed: Followed }, Followed | undefined, void> {
  const { begun } = state;
  if (!begun) return undefined;
  const { kit, steps, amounts } = begun.body;
  const followed = createFollowed({ prepared: prepareKit(kit), charge: amounts.charge, steps, members });
  const told = spaced(createTelling()(state));
  for (let count = 1; count <= told.length && !followed.progress.poured; count++) {
    followed.follow(told.slice(0, count));
    yield { done: count / told.length, followed };
  }
  return followed;
}

/** Of readings that crowd each other the first: looking back, no advice hangs on the newest one. */
function spaced(told: readonly Told[]): readonly Told[] {
  let lastS = Number.NEGATIVE_INFINITY;
  return told.filter((event) => {
    if (!('observation' in event) || event.observation.kind !== 'reading' || event.observation.byHand) return true;
    if (event.timeS - lastS < readingsApartS) return false;
    lastS = event.timeS;
    return true;
  });
}

/** The same in one go. */
export function followedBy(state: CookState, members?: number): Followed | undefined {
  const run = following(state, members);
  for (;;) {
    const { done, value } = run.next();
    if (done) return value as Followed | undefined;
  }
}
