/** What lines told and what the twin believed, in the order of time; and where the cook stood by them. */
import { atTheStart, begun, type Progress, progressed } from '../../core/advice/progress.ts';
import type { Deed, Step } from '../../core/pan/steps.ts';

export type Mark = { readonly timeS: number } & ({ readonly believedC: number } | { readonly deed: Deed });

export interface History {
  readonly partsGiven: number;
  /** When the sugar was poured, s. */
  readonly pouredS: number;
  keep(mark: Mark): void;
  /** Where the cook stood at a time. */
  progressAt(timeS: number): Progress;
}

export function createHistory(steps: readonly Step[]): History {
  const marks: Mark[] = [];
  let partsGiven = 0;
  let pouredS = Number.POSITIVE_INFINITY;
  return {
    get partsGiven() {
      return partsGiven;
    },
    get pouredS() {
      return pouredS;
    },
    keep(mark) {
      const before = marks.findLastIndex(({ timeS }) => timeS <= mark.timeS);
      marks.splice(before + 1, 0, mark);
      if ('believedC' in mark) return;
      if (mark.deed.kind === 'alkali') partsGiven++;
      if (mark.deed.kind === 'pour') pouredS = mark.timeS;
    },
    progressAt(untilS) {
      let progress = atTheStart;
      let lastS = 0;
      for (const mark of marks) {
        if (mark.timeS > untilS) break;
        if ('deed' in mark) progress = afterDeed(progress, mark.deed, mark.timeS);
        else {
          const step = steps[progress.stepIndex];
          if (step) progress = progressed(progress, step, mark.timeS, mark.timeS - lastS, mark.believedC);
          lastS = mark.timeS;
        }
      }
      return progress;
    },
  };
}

function afterDeed(progress: Progress, deed: Deed, timeS: number): Progress {
  const { partsGiven, lastPartS } = progress;
  switch (deed.kind) {
    case 'heat':
      return { ...progress, turnedS: timeS };
    case 'alkali':
      return { ...progress, partsGiven: partsGiven + 1, lastPartS: timeS };
    case 'step':
      // Parts of alkali count over the whole cook: a step that is begun again must not ask for them again.
      return { ...begun(progress, deed.index, timeS), partsGiven, lastPartS };
    case 'pour':
      return { ...progress, poured: true };
    case 'water':
      return progress;
  }
}
