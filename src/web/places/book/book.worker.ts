/** What takes long of looking back: the twin led through a log, what is known afterwards, alarms, explanations and reports. */
import { expose } from 'comlink';
import type { Belief } from '../../../core/advice/followed.ts';
import { asCooked } from '../../../core/book/asCooked.ts';
import { type Explained, explaining } from '../../../core/book/explain.ts';
import { following } from '../../../core/book/following.ts';
import { type Hindsight, hindsightOf } from '../../../core/book/hindsight.ts';
import { type Judged, judgedAgain } from '../../../core/book/judgedAgain.ts';
import { type Landed, landedOf } from '../../../core/book/landed.ts';
import type { ReportedLot } from '../../../core/book/report/lotsPart.ts';
import { reportHtml } from '../../../core/book/report/reportHtml.ts';
import { foldCook } from '../../../core/log/fold.ts';
import type { ReadEvent } from '../../records/readLog.ts';

type OnPart = (done: number) => void;

/** Members of the twin; the server's summaries have as many. */
const members = 64;
/** How often it is told how far the work is, ms. */
const tellEveryMs = 150;

export interface LookedBack {
  readonly beliefs: readonly Belief[];
  readonly landed: Landed | undefined;
}

function telling(onPart: OnPart): OnPart {
  let toldMs = performance.now();
  return (done) => {
    const nowMs = performance.now();
    if (nowMs - toldMs < tellEveryMs) return;
    toldMs = nowMs;
    onPart(done);
  };
}

const book = {
  /** What the twin believed at each time, by what it had been told by then. */
  lookBack(events: readonly ReadEvent[], onPart: OnPart): LookedBack | undefined {
    const tell = telling(onPart);
    const run = following(foldCook(events), members);
    for (;;) {
      const next = run.next();
      if (!next.done) {
        tell(next.value.done);
        continue;
      }
      const { value } = next;
      return value && { beliefs: value.beliefs.map(plain), landed: landedOf(value) };
    }
  },

  hindsight(events: readonly ReadEvent[], onPart: OnPart): Hindsight | undefined {
    const tell = telling(onPart);
    // How many runs it takes is not known before: most of what is usual.
    return hindsightOf(foldCook(events), { onRun: (runs) => tell(runs / (runs + 600)) });
  },

  /** Alarms and surprises as they came, judged again from the log. */
  alarms: (events: readonly ReadEvent[], onPart: OnPart): Judged =>
    judgedAgain(foldCook(events), events, members, telling(onPart)),

  explain(first: readonly ReadEvent[], second: readonly ReadEvent[], onPart: OnPart): Explained | undefined {
    const [a, b] = [asCooked(foldCook(first)), asCooked(foldCook(second))];
    if (!a || !b) return undefined;
    const tell = telling(onPart);
    const run = explaining(a, b);
    for (;;) {
      const next = run.next();
      if (next.done) return next.value;
      tell(next.value);
    }
  },

  report(events: readonly ReadEvent[], looked: LookedBack, lots: readonly ReportedLot[]): string | undefined {
    return reportHtml({ state: foldCook(events), beliefs: looked.beliefs, landed: looked.landed, lots });
  },
};

/** Without what the twin keeps beside it for itself. */
const plain = ({ timeS, believedC, unseen, reading }: Belief): Belief => ({
  timeS,
  believedC,
  unseen,
  ...(reading && { reading }),
});

export type Book = typeof book;

expose(book);
