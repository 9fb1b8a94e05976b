/** Brings a store's tables up to date, with a backup before; and refuses files that are not ours or are too new. */
import type { Kysely, Migration } from 'kysely';
import { Migrator } from 'kysely';
import { backUp } from './backup.ts';
import type { Database } from './sqlite.ts';
import { StoreError } from './storeError.ts';

/** `UMBP` in ASCII; marks the file as ours to tools that look at its header. */
const APPLICATION_ID = 0x554d4250;

export interface MigrateOptions {
  readonly file: string;
  readonly backups: string;
  readonly migrations: Readonly<Record<string, Migration>>;
  readonly now: Date;
}

export async function migrate(db: Kysely<never>, database: Database, options: MigrateOptions): Promise<void> {
  const known = Object.keys(options.migrations).length;
  const before = readVersion(database);
  refuseForeignOrNewer(database, before, known, options.file);
  const migrator = new Migrator({ db, provider: { getMigrations: async () => ({ ...options.migrations }) } });
  const pending = (await migrator.getMigrations()).filter((migration) => !migration.executedAt);
  if (pending.length > 0) await bringUpToDate();
  // Also after a start that was cut off between the change of the tables and this mark of it.
  if (before !== known) database.exec(`PRAGMA application_id = ${APPLICATION_ID}; PRAGMA user_version = ${known}`);

  async function bringUpToDate() {
    if (before > 0) await backUp(database, options.backups, `before-${pending[0]?.name}`, options.now);
    const { error } = await migrator.migrateToLatest();
    if (error)
      throw new StoreError(`${options.file} could not be brought up to date and is as it was: ${reason(error)}`);
  }
}

function refuseForeignOrNewer(database: Database, version: number, known: number, file: string) {
  const { application_id: owner } = first<{ application_id: number }>(database, 'PRAGMA application_id');
  const { tables } = first<{ tables: number }>(database, 'SELECT count(*) AS tables FROM sqlite_schema');
  const untouched = owner === 0 && version === 0;
  if (owner !== APPLICATION_ID && !(untouched && (tables === 0 || isOurs(database)))) {
    throw new StoreError(`${file} is another program's database; it was left untouched.`);
  }
  if (version > known) {
    throw new StoreError(
      `${file} was written by a newer Umberpan (its tables are at version ${version}, this one knows ${known}); update Umberpan to open it.`,
    );
  }
}

/** True for a store whose first start was cut off after its tables were made and before it was marked as ours. */
function isOurs(database: Database) {
  return (
    first<{ n: number }>(database, "SELECT count(*) AS n FROM sqlite_schema WHERE name = 'kysely_migration'").n > 0
  );
}

function readVersion(database: Database) {
  return first<{ user_version: number }>(database, 'PRAGMA user_version').user_version;
}

function first<Row>(database: Database, query: string) {
  return database.prepare(query).all([])[0] as Row;
}

function reason(error: unknown) {
  return error instanceof Error ? error.message : String(error);
}
