/** The workspace on disk: one SQLite file in the data folder, durable at each commit, owned by one process. */
import { chmodSync } from 'node:fs';
import { join } from 'node:path';
import type { Migration } from 'kysely';
import { Kysely } from 'kysely';
import { backUp, backupsIn, newestBackupMs } from './backup.ts';
import { connect } from './connection.ts';
import { TransactionalSqliteDialect } from './dialect.ts';
import { migrate } from './migrate.ts';
import { migrations as allMigrations } from './migrations/all.ts';
import { own } from './owner.ts';
import type { Database } from './sqlite.ts';
import { openDatabase } from './sqlite.ts';
import { StoreError } from './storeError.ts';
import type { Tables } from './tables.ts';

export interface Store {
  readonly db: Kysely<Tables>;
  /** Where it is, for what is laid beside it for a while. */
  readonly folder: string;
  /** Opens the file anew after a failed write. */
  reopen(): Promise<void>;
  /** Copies the live store beside it, one backup at a time, and proves the copy. */
  backUp(reason: string, now: Date): Promise<void>;
  /** When the newest backup was made, ms since 1970; undefined when there is none. */
  newestBackupMs(): number | undefined;
  /** Differs whenever something was written in between. */
  changes(): string;
  /** Notes where this process listens, for a second start to tell. */
  tellAddress(address: string): void;
  close(): Promise<void>;
}

/**
 * Opens the store of a data folder, making both when they are not there.
 * @throws StoreError when another process owns it, when the file is damaged, foreign or too new, or when a migration fails
 */
export async function openStore(
  folder: string,
  migrations: Readonly<Record<string, Migration>> = allMigrations,
): Promise<Store> {
  const ownership = own(folder, new Date());
  try {
    const file = join(folder, 'umberpan.sqlite');
    const backups = join(folder, 'backups');
    const { database, reopen } = connect(opener(file, backups));
    const db = new Kysely<Tables>({ dialect: new TransactionalSqliteDialect({ database }) });
    let backingUp = Promise.resolve();
    let connections = 1;
    const close = async () => {
      await backingUp;
      database.close();
      ownership.release();
    };
    try {
      await migrate(db as unknown as Kysely<never>, database, { file, backups, migrations, now: new Date() });
    } catch (error) {
      database.close();
      throw error;
    }
    return {
      db,
      folder,
      // Not while somebody is in the middle of a transaction.
      async reopen() {
        await db.connection().execute(async () => reopen());
        connections += 1;
      },
      backUp(reason, now) {
        const backup = backingUp.then(async () => void (await backUp(database, backups, reason, now)));
        backingUp = backup.catch(() => {});
        return backup;
      },
      newestBackupMs: () => newestBackupMs(backups),
      changes() {
        const [{ n }] = database.prepare('SELECT total_changes() AS n').all([]) as [{ n: number }];
        return `${connections}:${n}`;
      },
      tellAddress: ownership.tell,
      close,
    };
  } catch (error) {
    ownership.release();
    throw error;
  }
}

/** WAL with FULL: a commit is on the disk when it returns, if the disk keeps its word (sqlite.org/pragma.html#pragma_synchronous). */
const SETTINGS = [
  'busy_timeout = 2000',
  'journal_mode = WAL',
  'synchronous = FULL',
  // 32 MiB, so that the events of a long cook go in without pages being written that will change again.
  'cache_size = -32768',
  'foreign_keys = ON',
  'trusted_schema = OFF',
];

/** Opens the file with our settings; the first time after a check of it. */
function opener(file: string, backups: string): () => Database {
  let checked = false;
  return () => {
    const database = openDatabase(file);
    try {
      for (const setting of SETTINGS) database.exec(`PRAGMA ${setting}`);
      if (!checked) check(database);
      chmodSync(file, 0o600);
      checked = true;
      return database;
    } catch (error) {
      database.close();
      if (checked) throw error;
      const [newest] = backupsIn(backups);
      throw new StoreError(
        `${file} is damaged and was left untouched (${error instanceof Error ? error.message : error}). ` +
          (newest ? `The newest backup is ${newest}.` : 'There is no backup yet.'),
      );
    }
  };
}

function check(database: Database) {
  const [row] = database.prepare('PRAGMA quick_check(1)').all([]) as [{ quick_check: string }];
  if (row.quick_check !== 'ok') throw new Error(row.quick_check);
}
