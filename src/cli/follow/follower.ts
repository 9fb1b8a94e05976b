/** A twin that takes lines in any order: each goes to the place of its time, and what followed is done again. */
import { type Advice, advise } from '../../core/advice/advise.ts';
import type { Progress } from '../../core/advice/progress.ts';
import { rangeOf } from '../../core/twin/range.ts';
import { createTwin, type Taken, type Twin } from '../../core/twin/twin.ts';
import type { Planning } from '../plan/makePlan.ts';
import { misused } from '../stop.ts';
import { deedsSaid } from './deedsSaid.ts';
import { createHistory } from './history.ts';
import type { Line } from './line.ts';

/** Holds are counted by the temperature believed at least this often, s. */
const strideS = 10;

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
  const twin = createTwin(prepared, amounts.charge, options);
  const history = createHistory(steps);
  let timeS = 0;
  let progress = history.progressAt(0);

  function believe(): void {
    const believedC = rangeOf(twin.members.map(({ temperatureC }) => temperatureC)).mid;
    history.keep({ timeS: twin.timeS, believedC });
  }

  function goOnTo(toS: number): void {
    for (let t = timeS + strideS; t < toS; t += strideS) {
      twin.moveTo(t);
      believe();
    }
    twin.moveTo(toS);
  }

  function take({ timeS: atS, said }: Line): Taken | undefined {
    if (atS > history.pouredS) misused('t', String(atS), 'is after the pour', `up to ${history.pouredS} s`);
    const { stepIndex } = history.progressAt(atS);
    const { partsGiven } = history;
    const deeds = said.kind === 'observed' ? [] : deedsSaid(said, { kit, steps }, { stepIndex, partsGiven });
    const late = atS < timeS;
    if (!late) goOnTo(atS);
    const taken = said.kind === 'observed' ? twin.take({ timeS: atS, observation: said.observation }) : undefined;
    if (!late) believe();
    for (const deed of deeds) {
      if (deed.kind !== 'step' && deed.kind !== 'pour') twin.take({ timeS: atS, deed });
      history.keep({ timeS: atS, deed });
    }
    timeS = Math.max(timeS, atS);
    twin.moveTo(timeS);
    progress = history.progressAt(timeS);
    return taken;
  }

  return {
    get timeS() {
      return timeS;
    },
    twin,
    get progress() {
      return progress;
    },
    take,
    advice: () => (progress.poured ? undefined : advise({ twin, kit, steps, progress })),
  };
}
