/** SQLite as the query builder should see it: tables can be made and changed inside a transaction. */
import { SqliteAdapter, SqliteDialect } from 'kysely';

/** Migrations then run all or not at all, also when the process is killed half-way. */
class TransactionalAdapter extends SqliteAdapter {
  override get supportsTransactionalDdl() {
    return true;
  }
}

export class TransactionalSqliteDialect extends SqliteDialect {
  override createAdapter() {
    return new TransactionalAdapter();
  }
}
