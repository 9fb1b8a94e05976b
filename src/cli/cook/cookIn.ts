/** The log of a cook from a file, as the server and `umberpan import` write it. */
import { createHash } from 'node:crypto';
import { faultsOfFiled } from '../../api/filedEvent.ts';
import { type FiledEvent, readCookFile } from '../../core/log/cookFile.ts';
import { Stop } from '../stop.ts';
import { textIn } from '../textIn.ts';

interface Cook {
  readonly cook: string;
  readonly events: readonly FiledEvent[];
}

/** @param file a path, or `-` for standard input */
export function cookIn(file: string): Cook {
  return cookFrom(textIn(file, failing(file)), file);
}

/** @param file that the text came from */
export function cookFrom(text: string, file: string): Cook {
  const fail = failing(file);
  const read = readCookFile(text, (each) => createHash('sha256').update(each).digest('hex'));
  if (read.kind === 'refused') return fail(`line ${read.line}: ${read.reason}`);
  for (const [place, event] of read.events.entries()) {
    const [fault] = faultsOfFiled(event);
    if (fault) return fail(`line ${place + 2}: ${fault.message}`);
  }
  return read;
}

function failing(file: string): (trouble: string) => never {
  return (trouble) => {
    throw new Stop({ kind: 'misused', field: 'log', value: file, message: `${file}: ${trouble}` });
  };
}
