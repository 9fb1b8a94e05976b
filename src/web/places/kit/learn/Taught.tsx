/** What a cook teaches: told again with and without it, the ranges, what stays open, and the next plan. */
import type { Learning } from '../../../../core/learn/learn.ts';
import { numberWords, tellingWords } from '../../../../core/learn/words.ts';
import type { NextPlan } from '../../../../core/planning/nextPlan.ts';
import { ChangesTable } from '../KnownTable.tsx';
import type { Lesson } from './lesson.worker.ts';
import { NextPlanView } from './NextPlanView.tsx';
import { RetoldFigure } from './RetoldFigure.tsx';

interface TaughtProps {
  readonly lesson: Lesson;
  readonly learning: Learning;
  readonly next: NextPlan | 'reckoning' | undefined;
}

/** Ranges that hardly changed are not listed. */
const hardly = 0.95;

export function Taught({ lesson: { changes }, learning, next }: TaughtProps) {
  const told = changes.filter(({ narrowing }) => narrowing < hardly);
  const open = changes.filter(({ toldBy }) => toldBy);
  return (
    <>
      <RetoldFigure retold={learning.retold} />
      {told.length > 0 && (
        <ChangesTable
          caption="What it taught"
          note="10-90 % ranges, before and after; nothing is kept yet"
          changes={told}
        />
      )}
      {open.length > 0 && (
        <section aria-labelledby="open">
          <h2 id="open">What this log could not tell</h2>
          <ul>
            {open.map(({ name, toldBy }) => (
              <li key={name}>
                {numberWords[name].name}: {toldBy && tellingWords[toldBy]} would
              </li>
            ))}
          </ul>
        </section>
      )}
      {learning.kind === 'learned' && <NextPlanView next={next} />}
    </>
  );
}
