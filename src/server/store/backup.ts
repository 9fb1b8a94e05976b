/** Backup files beside the store: made whole or not at all, read through to prove that they can be, the newest ten kept. */
import { chmodSync, closeSync, fsyncSync, mkdirSync, openSync, readdirSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { proveCopy } from './proveCopy.ts';
import type { Database } from './sqlite.ts';

const KEPT = 10;
/** Ends the name of a copy of a store with damaged events. Such copies are counted apart, so that they push out no whole one. */
const DAMAGED = '-damaged.sqlite';

/** @returns the new backup's path */
export async function backUp(database: Database, folder: string, reason: string, now: Date): Promise<string> {
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  const name = `${now.toISOString().replaceAll(':', '')}-${reason}`;
  const unproved = join(folder, `${name}.sqlite.part`);
  dropHalfMade(folder);
  await database.backup(unproved);
  const damaged = await proveCopy(unproved);
  const file = join(folder, `${name}${damaged.length > 0 ? DAMAGED : '.sqlite'}`);
  chmodSync(unproved, 0o600);
  flush(unproved);
  renameSync(unproved, file);
  if (process.platform !== 'win32') flush(folder);
  dropOldest(folder);
  return file;
}

/** Whole ones first, each newest first. */
export function backupsIn(folder: string): string[] {
  try {
    const names = readdirSync(folder).filter((name) => name.endsWith('.sqlite'));
    const newestFirst = names.sort().reverse();
    return [...newestFirst.filter(isWhole), ...newestFirst.filter((name) => !isWhole(name))].map((name) =>
      join(folder, name),
    );
  } catch {
    return [];
  }
}

/** When the newest backup was made, ms since 1970; undefined when there is none. */
export function newestBackupMs(folder: string): number | undefined {
  const times = backupsIn(folder).flatMap((file) => {
    const [, day, hour, minute, second] = /(\d{4}-\d\d-\d\d)T(\d\d)(\d\d)([\d.]+)Z-[^/\\]*$/.exec(file) ?? [];
    return day === undefined ? [] : Date.parse(`${day}T${hour}:${minute}:${second}Z`);
  });
  return times.length > 0 ? Math.max(...times) : undefined;
}

function isWhole(file: string): boolean {
  return !file.endsWith(DAMAGED);
}

function flush(path: string) {
  const handle = openSync(path, 'r');
  fsyncSync(handle);
  closeSync(handle);
}

/** What a process that was killed left: one backup is made at a time, so that none of them is under way. */
function dropHalfMade(folder: string) {
  for (const name of readdirSync(folder)) if (/\.part(-\w+)?$/.test(name)) rmSync(join(folder, name));
}

function dropOldest(folder: string) {
  const files = backupsIn(folder);
  const surplus = [files.filter(isWhole), files.filter((file) => !isWhole(file))].flatMap((some) => some.slice(KEPT));
  for (const file of surplus) rmSync(file);
}
