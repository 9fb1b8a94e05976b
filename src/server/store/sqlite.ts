/**
 * The one seam to SQLite: Node's own module where it can do all that is asked of it (22.16 on), the better-sqlite3
 * addon before. No single driver is safe on both; docs/decisions/0001-stack.md says why.
 */
import { createRequire } from 'node:module';
import type { SqliteDatabase, SqliteStatement } from 'kysely';

/** An open database, as the query builder and the store need it. */
export interface Database extends SqliteDatabase {
  exec(sql: string): void;
  /** Copies the live database, with what is still in its log, to a new file. */
  backup(file: string): Promise<unknown>;
}

/** What is used of `node:sqlite`; its own types come with later versions of Node's types than the oldest Node here. */
interface OwnSqlite {
  DatabaseSync: new (file: string) => OwnDatabase;
  StatementSync: { prototype: object };
  backup(source: OwnDatabase, file: string): Promise<unknown>;
}
interface OwnDatabase {
  exec(sql: string): void;
  close(): void;
  prepare(sql: string): OwnStatement;
}
interface OwnStatement {
  columns(): unknown[];
  all(...parameters: unknown[]): unknown[];
  run(...parameters: unknown[]): ReturnType<SqliteStatement['run']>;
  iterate(...parameters: unknown[]): IterableIterator<unknown>;
}

const require = createRequire(import.meta.url);

/** Opens a database file, making it when it is not there. */
export function openDatabase(file: string): Database {
  const own = ownSqlite();
  return own ? openWithNode(own, file) : openWithAddon(file);
}

function ownSqlite(): OwnSqlite | undefined {
  const module = process.getBuiltinModule('node:sqlite') as unknown as OwnSqlite | undefined;
  return module && 'columns' in module.StatementSync.prototype ? module : undefined;
}

function openWithNode(own: OwnSqlite, file: string): Database {
  const database = new own.DatabaseSync(file);
  return {
    exec: (sql) => database.exec(sql),
    close: () => database.close(),
    backup: (copy) => own.backup(database, copy),
    prepare(sql) {
      const statement = database.prepare(sql);
      return {
        reader: statement.columns().length > 0,
        all: (parameters) => statement.all(...parameters),
        run: (parameters) => statement.run(...parameters),
        iterate: (parameters) => statement.iterate(...parameters),
      };
    },
  };
}

function openWithAddon(file: string): Database {
  const BetterSqlite = require('better-sqlite3') as new (file: string) => Database;
  return new BetterSqlite(file);
}
