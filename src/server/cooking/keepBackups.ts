/**
 * When the store is backed up while it runs: at the start and the end of each cook, once after cooks were taken in from
 * files, and each day on which something was written. (The fourth occasion, before the tables change, is at the start.)
 */
import type { Store } from '../store/store.ts';

const dayMs = 86_400_000;
/** After the last of several files, so that a year of cooks is backed up once and not pushed out by its own beginnings, ms. */
const quietMs = 60_000;
/** After a backup that failed, ms. */
const againMs = 3_600_000;

export interface KeepBackupsOptions {
  readonly store: Pick<Store, 'backUp' | 'newestBackupMs' | 'changes'>;
  readonly nowMs: () => number;
  readonly warn: (problem: unknown, message: string) => void;
}

export interface Backups {
  /** A cook began or ended. */
  now(reason: string): void;
  /** A cook was taken in from a file. */
  soon(): void;
  /** Makes what is due; to be called each minute or so. */
  look(): Promise<void>;
}

export function keepBackups({ store, nowMs, warn }: KeepBackupsOptions): Backups {
  // A copy from the future was made by a clock that was wrong then.
  let lastMs = Math.min(store.newestBackupMs() ?? Number.NEGATIVE_INFINITY, nowMs());
  /** State of the store in the last backup; undefined when it is not known. */
  let copied: string | undefined;
  let takenInMs: number | undefined;
  let failedMs = Number.NEGATIVE_INFINITY;

  async function make(reason: string) {
    const madeMs = nowMs();
    const changes = store.changes();
    const taken = takenInMs;
    try {
      await store.backUp(reason, new Date(madeMs));
      [lastMs, copied] = [madeMs, changes];
      if (takenInMs === taken) takenInMs = undefined;
    } catch (error) {
      failedMs = nowMs();
      warn(error, 'The backup was not made');
    }
  }

  function due(): string | undefined {
    const now = nowMs();
    if (now - failedMs < againMs) return undefined;
    if (takenInMs !== undefined && now - takenInMs >= quietMs) return 'taken-in';
    return now - lastMs >= dayMs && store.changes() !== copied ? 'daily' : undefined;
  }

  return {
    now: (reason) => void make(reason),
    soon() {
      takenInMs = nowMs();
    },
    async look() {
      try {
        const reason = due();
        if (reason) await make(reason);
      } catch (error) {
        warn(error, 'Whether a backup is due is not known');
      }
    },
  };
}
