/** What was learned as a JSON document. */
import type { Range } from '../../core/twin/range.ts';
import type { LearnedLog, LearnedLogs } from './learnAll.ts';
import { faultText, shownAs } from './words.ts';

export function learnDocument({ logs, kit, changes }: LearnedLogs) {
  return {
    format: 'umberpan-learn-1',
    logs: logs.map(logDocument),
    numbers: Object.fromEntries(
      changes.map(({ name, before, after, narrowing, toldBy = null }) => {
        const { key, scale } = shownAs[name];
        const scaled = ({ low, mid, high }: Range) => ({ low: low * scale, mid: mid * scale, high: high * scale });
        return [key, { before: scaled(before), after: scaled(after), narrowing, toldBy }];
      }),
    ),
    kit,
  };
}

function logDocument({ file, cook, outcome }: LearnedLog) {
  if (outcome.kind !== 'unfit') return { file, cook, outcome: outcome.kind, ...outcome.verdict };
  const faults = outcome.faults.map((fault) => ({ ...fault, message: faultText(fault) }));
  return { file, cook, outcome: outcome.kind, faults };
}
