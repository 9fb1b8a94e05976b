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

export async function storeFindings(folder: string, nowMs: number): Promise<Finding[]> {
  const place = folderFinding(folder);
  const file = join(folder, 'umberpan.sqlite');
  if (!existsSync(file)) return [place, well('Store', 'none yet: it is made at the first start'), spaceFinding(folder)];
  return [place, ...(await contentFindings(file, nowMs)), backupFinding(folder, nowMs), spaceFinding(folder)];
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

/** On a copy, so that a server that runs on it is left alone. */
async function contentFindings(file: string, nowMs: number): Promise<Finding[]> {
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
    return [well('Store', 'whole'), chain, clockFinding(newest, nowMs)];
  } catch (error) {
    return [wrong('Store', error instanceof Error ? error.message : String(error), repair)];
  } finally {
    store?.close();
    rmSync(scratch, { recursive: true, force: true });
  }
}

function clockFinding(newest: string | null, nowMs: number): Finding {
  const name = 'Clock';
  const now = `${new Date(nowMs).toISOString()}, zone ${Intl.DateTimeFormat().resolvedOptions().timeZone}`;
  if (newest === null || Date.parse(newest) <= nowMs) return well(name, now);
  return wrong(name, `${now}; the newest event is later: ${newest}`, 'Set the clock of this machine.');
}

function backupFinding(folder: string, nowMs: number): Finding {
  const backups = join(folder, 'backups');
  const newest = newestBackupMs(backups);
  if (newest === undefined) return well('Backups', 'none yet: one is made when a cook begins or ends');
  const days = Math.floor((nowMs - newest) / dayMs);
  const found = `${backupsIn(backups).length}, the newest ${days < 1 ? 'from today' : `${days} days old`}`;
  return well('Backups', found);
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
