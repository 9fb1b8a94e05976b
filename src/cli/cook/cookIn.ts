/** The log of a cook from a file, as the server and `umberpan import` write it. */
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { faultsOfFiled } from '../../api/filedEvent.ts';
import { type FiledEvent, readCookFile } from '../../core/log/cookFile.ts';
import { Stop } from '../stop.ts';

/** @param file a path, or `-` for standard input */
export function cookIn(file: string): { readonly cook: string; readonly events: readonly FiledEvent[] } {
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
