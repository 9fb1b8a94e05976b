/** What was learned as a JSON document. */
import { faultText } from '../../core/learn/words.ts';
import type { LearnedLog, LearnedLogs } from './learnAll.ts';
import { changesDocument } from './numbers.ts';

export function learnDocument({ logs, kit, changes }: LearnedLogs) {
  return { format: 'umberpan-learn-1', logs: logs.map(logDocument), numbers: changesDocument(changes), kit };
}

function logDocument({ file, cook, outcome }: LearnedLog) {
  if (outcome.kind !== 'unfit') return { file, cook, outcome: outcome.kind, ...outcome.verdict };
  const faults = outcome.faults.map((fault) => ({ ...fault, message: faultText(fault) }));
  return { file, cook, outcome: outcome.kind, faults };
}
