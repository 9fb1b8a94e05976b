/**
 * One process owns a data folder. The lock is SQLite's own lock on a small file, which the system drops when its holder
 * ends, however it ends; a note beside it says who holds it.
 */
import { chmodSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { openDatabase } from './sqlite.ts';
import { StoreError } from './storeError.ts';

interface OwnerNote {
  readonly pid: number;
  readonly started: string;
  readonly address?: string;
}

export interface Ownership {
  /** Notes where this process listens, for a second start to tell. */
  tell(address: string): void;
  release(): void;
}

/** @throws StoreError when another process owns the folder, saying which and where it listens */
export function own(folder: string, started: Date): Ownership {
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  const note = join(folder, 'owner.json');
  const lock = openDatabase(join(folder, 'owner.lock'));
  try {
    lock.exec('PRAGMA busy_timeout = 200; BEGIN EXCLUSIVE');
  } catch {
    lock.close();
    throw new StoreError(`Umberpan already runs with the data in ${folder}${ownerIn(note)}.`);
  }
  const write = (content: OwnerNote) => writeFileSync(note, JSON.stringify(content), { mode: 0o600 });
  const who = { pid: process.pid, started: started.toISOString() };
  chmodSync(join(folder, 'owner.lock'), 0o600);
  write(who);
  return {
    tell: (address) => write({ ...who, address }),
    release() {
      rmSync(note, { force: true });
      lock.close();
    },
  };
}

function ownerIn(note: string) {
  try {
    const { pid, address } = JSON.parse(readFileSync(note, 'utf8')) as OwnerNote;
    return `${address ? ` and listens at ${address}` : ''} (process ${pid})`;
  } catch {
    return '';
  }
}
