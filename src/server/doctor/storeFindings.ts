/** The data folder: whose it is, whether the store is whole, event by event, how old its backup is, and how much room is left. */
import { accessSync, constants, existsSync, mkdtempSync, rmSync, statfsSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { backupsIn, newestBackupMs } from '../store/backup.ts';
import { proveCopy } from '../store/proveCopy.ts';
import { type Database, openDatabase } from '../store/sqlite.ts';
import { type Finding, mind, well, wrong } from './finding.ts';

const leastFreeBytes = 500e6;
const dayMs = 86_400_000;
/** One is made each day on which something was written, if Umberpan runs. */
const longBehindDays = 7;

export async function storeFindings(folder: string, nowMs: number): Promise<Finding[]> {
  const place = folderFinding(folder);
  const file = join(folder, 'umberpan.sqlite');
  if (!existsSync(file)) return [place, well('Store', 'none yet: it is made at the first start'), spaceFinding(folder)];
  const { findings, written } = await contentFindings(file, nowMs);
  return [place, ...findings, backupFinding(folder, written, nowMs), spaceFinding(folder)];
}

function folderFinding(folder: string): Finding {
  const name = 'Data folder';
  if (!existsSync(folder)) return well(name, `${folder} is not there yet; it is made at the first start`);
  try {
    accessSync(folder, constants.R_OK | constants.W_OK);
  } catch {
    return wrong(name, `${folder} can not be written`, 'Make it yours, or name another with --data.');
  }
  const open = process.platform !== 'win32' && (statSync(folder).mode & 0o077) !== 0;
  return open
    ? mind(name, `${folder} can be read by others on this machine`, `chmod 700 ${folder}`)
    : well(name, folder);
}

interface Content {
  readonly findings: Finding[];
  /** When something was last written; undefined when nothing was, or nobody knows. */
  readonly written?: string | undefined;
}

/** On a copy, so that a server that runs on it is left alone. */
async function contentFindings(file: string, nowMs: number): Promise<Content> {
  const scratch = mkdtempSync(join(tmpdir(), 'umberpan-doctor-'));
  const repair = `Stop Umberpan and put the newest backup in ${join(dirname(file), 'backups')} in its place. Keep the damaged file.`;
  let store: Database | undefined;
  try {
    store = openDatabase(file);
    const copy = join(scratch, 'copy.sqlite');
    await store.backup(copy);
    const [{ events, newest }] = store
      .prepare('SELECT count(*) AS events, max(received) AS newest FROM event')
      .all([]) as [{ events: number; newest: string | null }];
    const damaged = await proveCopy(copy);
    const chain =
      damaged.length === 0
        ? well('Logs', `${events} events, each as it was written`)
        : wrong('Logs', `${damaged.length} of ${events} events are not as they were written`, repair);
    return { findings: [well('Store', 'whole'), chain, clockFinding(newest, nowMs)], written: lastWritten(store) };
  } catch (error) {
    return { findings: [wrong('Store', error instanceof Error ? error.message : String(error), repair)] };
  } finally {
    store?.close();
    rmSync(scratch, { recursive: true, force: true });
  }
}

/** Where each table says when it was written; what devices do of themselves does not count. */
const writtenAt = {
  event: 'received',
  glass: 'updated',
  kit: 'updated',
  lot: 'updated',
  lot_note: 'created',
  plan: 'created',
  tasting: 'created',
} as const;

function lastWritten(store: Database): string | undefined {
  // A store of an earlier Umberpan has not all of them.
  const there = store.prepare("SELECT name FROM sqlite_master WHERE type = 'table'").all([]) as { name: string }[];
  const times = Object.entries(writtenAt)
    .filter(([table]) => there.some(({ name }) => name === table))
    .flatMap(([table, column]) => store.prepare(`SELECT max(${column}) AS at FROM ${table}`).all([]))
    .flatMap((row) => (row as { at: string | null }).at ?? []);
  return times.sort().at(-1);
}

function clockFinding(newest: string | null, nowMs: number): Finding {
  const name = 'Clock';
  const now = `${new Date(nowMs).toISOString()}, zone ${Intl.DateTimeFormat().resolvedOptions().timeZone}`;
  if (newest === null || Date.parse(newest) <= nowMs) return well(name, now);
  return wrong(name, `${now}; the newest event is later: ${newest}`, 'Set the clock of this machine.');
}

/** @param written when something was last written */
function backupFinding(folder: string, written: string | undefined, nowMs: number): Finding {
  const name = 'Backups';
  const backups = join(folder, 'backups');
  const newest = newestBackupMs(backups);
  const isBehind = written !== undefined && Date.parse(written) > (newest ?? Number.NEGATIVE_INFINITY);
  if (newest === undefined && !isBehind) return well(name, 'none yet: one is made when a cook begins or ends');
  // Without any, as old as what it would have to hold.
  const days = Math.floor((nowMs - (newest ?? Date.parse(written ?? ''))) / dayMs);
  const age = days < 1 ? 'less than a day old' : days === 1 ? 'a day old' : `${days} days old`;
  const found = newest === undefined ? 'none' : `${backupsIn(backups).length}, the newest ${age}`;
  if (!isBehind || days < 1) return well(name, found);
  const behind = `${found}; something was written since, last on ${written.slice(0, 10)}`;
  const advice = 'Start Umberpan: within a minute it makes one. If it runs, its log says why it made none.';
  return days < longBehindDays ? mind(name, behind, advice) : wrong(name, behind, advice);
}

function spaceFinding(folder: string): Finding {
  const there = existsSync(folder) ? folder : nearestThere(folder);
  const { bavail, bsize } = statfsSync(there);
  const free = bavail * bsize;
  const found = `${(free / 1e9).toFixed(1)} GB free`;
  return free < leastFreeBytes
    ? wrong('Space', found, 'Make room: a full disk means that nothing is kept.')
    : well('Space', found);
}

function nearestThere(path: string): string {
  return existsSync(path) ? path : nearestThere(dirname(path));
}
