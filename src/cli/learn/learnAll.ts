/** Learns from logs one after the other; one that is unfit leaves what is known as it was. */
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { faultsOfFiled } from '../../api/filedEvent.ts';
import { type Change, changesBy } from '../../core/learn/changes.ts';
import { type LogLearning, learnFromLog } from '../../core/learn/fromLog.ts';
import { type FiledEvent, readCookFile } from '../../core/log/cookFile.ts';
import type { Kit } from '../../core/pan/kit.ts';
import { Stop } from '../stop.ts';

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

function cookIn(file: string): { readonly cook: string; readonly events: readonly FiledEvent[] } {
  const fail = (trouble: string): never => {
    throw new Stop({ kind: 'misused', field: 'log', value: file, message: `${file}: ${trouble}` });
  };
  const read = readCookFile(textOf(file, fail), (text) => createHash('sha256').update(text).digest('hex'));
  if (read.kind === 'refused') return fail(`line ${read.line}: ${read.reason}`);
  for (const [place, event] of read.events.entries()) {
    const [fault] = faultsOfFiled(event);
    if (fault) return fail(`line ${place + 2}: ${fault.message}`);
  }
  return read;
}

function textOf(file: string, fail: (trouble: string) => never): string {
  try {
    return readFileSync(file === '-' ? 0 : file, 'utf8');
  } catch (error) {
    return fail(`can't be read (${(error as NodeJS.ErrnoException).code ?? error})`);
  }
}
