/** Learns from logs one after the other; one that is unfit leaves what is known as it was. */
import { type Change, changesBy } from '../../core/learn/changes.ts';
import { type LogLearning, learnFromLog } from '../../core/learn/fromLog.ts';
import type { Kit } from '../../core/pan/kit.ts';
import { cookIn } from '../cook/cookIn.ts';

export interface LearnedLog {
  readonly file: string;
  readonly cook: string;
  readonly outcome: LogLearning;
}

export interface LearnedLogs {
  readonly logs: readonly LearnedLog[];
  readonly kit: Kit;
  /** All logs together; empty when nothing was learned. */
  readonly changes: readonly Change[];
}

export function learnAll(files: readonly string[], before: Kit, rehearsed: boolean): LearnedLogs {
  // All are read before the first is learned from: a damaged one stops it with nothing done.
  const cooks = files.map((file) => ({ file, ...cookIn(file) }));
  let kit = before;
  const logs = cooks.map(({ file, cook, events }) => {
    const outcome = learnFromLog({ events, kit, rehearsed });
    if (outcome.kind === 'learned') kit = { ...kit, learned: outcome.learned };
    return { file, cook, outcome };
  });
  const learned = kit === before ? undefined : kit.learned;
  return { logs, kit, changes: learned ? changesBy(before, learned) : [] };
}
