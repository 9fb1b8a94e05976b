/** Backup files beside the store: made whole or not at all, opened to prove that they can be read, the newest ten kept. */
import { chmodSync, closeSync, fsyncSync, mkdirSync, openSync, readdirSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import type { Database } from './sqlite.ts';
import { openDatabase } from './sqlite.ts';

const KEPT = 10;

/** @returns the new backup's path */
export async function backUp(database: Database, folder: string, reason: string, now: Date): Promise<string> {
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  const file = join(folder, `${now.toISOString().replaceAll(':', '')}-${reason}.sqlite`);
  const unproved = `${file}.part`;
  rmSync(unproved, { force: true });
  await database.backup(unproved);
  prove(unproved);
  chmodSync(unproved, 0o600);
  flush(unproved);
  renameSync(unproved, file);
  if (process.platform !== 'win32') flush(folder);
  dropOldest(folder);
  return file;
}

/** Newest first. */
export function backupsIn(folder: string): string[] {
  try {
    return readdirSync(folder)
      .filter((name) => name.endsWith('.sqlite'))
      .sort()
      .reverse()
      .map((name) => join(folder, name));
  } catch {
    return [];
  }
}

function prove(file: string) {
  const copy = openDatabase(file);
  try {
    // Leaves the write-ahead log, so that the backup is one file.
    copy.exec('PRAGMA journal_mode = DELETE');
    const [row] = copy.prepare('PRAGMA quick_check').all([]) as [{ quick_check: string }];
    if (row.quick_check !== 'ok') throw new Error(`The backup ${file} does not read back: ${row.quick_check}`);
  } finally {
    copy.close();
  }
}

function flush(path: string) {
  const handle = openSync(path, 'r');
  fsyncSync(handle);
  closeSync(handle);
}

function dropOldest(folder: string) {
  for (const file of backupsIn(folder).slice(KEPT)) rmSync(file);
}
