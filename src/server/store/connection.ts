/** A database that can be opened anew under the hands of those who use it: after a failed write, nothing that the old connection remembers is to be believed. */
import type { Database } from './sqlite.ts';

export interface Connection {
  readonly database: Database;
  /** Replaces the connection; the old one stays when no other can be opened. */
  reopen(): void;
}

export function connect(open: () => Database): Connection {
  let current = open();
  return {
    database: {
      exec: (sql) => current.exec(sql),
      prepare: (sql) => current.prepare(sql),
      backup: (file) => current.backup(file),
      close: () => current.close(),
    },
    reopen() {
      const old = current;
      current = open();
      try {
        old.close();
      } catch {
        // It is given up for what it failed to do before.
      }
    },
  };
}
