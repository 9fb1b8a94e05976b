/** SQLite as the query builder should see it: tables can be made and changed inside a transaction, and a failed write may have ended it. */
import type { DatabaseConnection, SqliteDialectConfig } from 'kysely';
import { SqliteAdapter, SqliteDialect, SqliteDriver } from 'kysely';

/** Migrations then run all or not at all, also when the process is killed half-way. */
class TransactionalAdapter extends SqliteAdapter {
  override get supportsTransactionalDdl() {
    return true;
  }
}

/** After a full disk or a failed write SQLite may have rolled back by itself (sqlite.org/lang_transaction.html); what counts is the error before. */
class ForgivingDriver extends SqliteDriver {
  override async rollbackTransaction(connection: DatabaseConnection) {
    try {
      await super.rollbackTransaction(connection);
    } catch (error) {
      if (!(error instanceof Error && /no transaction is active/.test(error.message))) throw error;
    }
  }
}

export class TransactionalSqliteDialect extends SqliteDialect {
  readonly #config: SqliteDialectConfig;

  constructor(config: SqliteDialectConfig) {
    super(config);
    this.#config = config;
  }

  override createAdapter() {
    return new TransactionalAdapter();
  }

  override createDriver() {
    return new ForgivingDriver(this.#config);
  }
}
