// Looks into a store from beside, to tell whether anything in it changed.
import { createHash } from 'node:crypto';
import { join } from 'node:path';
import { openDatabase } from '../../src/server/store/sqlite.ts';

export interface KeptStore {
  /** The same as long as nothing that a person keeps was changed. */
  state(): string;
  close(): void;
}

/** Made by the server of what is kept, whenever it finds the time. */
const derived = ['cook_summary', 'sqlite_sequence'];

export function keptStore(folder: string): KeptStore {
  const beside = openDatabase(join(folder, 'umberpan.sqlite'));
  let seen: { readonly version: number; readonly state: string } | undefined;
  return {
    state() {
      // Differs after every commit of another connection (sqlite.org/pragma.html#pragma_data_version).
      const [{ data_version: version }] = beside.prepare('PRAGMA data_version').all([]) as [{ data_version: number }];
      if (seen?.version !== version) seen = { version, state: contentOf() };
      return seen.state;
    },
    close: () => beside.close(),
  };

  function contentOf(): string {
    const hash = createHash('sha256');
    const tables = beside.prepare(`SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name`).all([]);
    for (const { name } of tables as { name: string }[]) {
      if (derived.includes(name)) continue;
      hash.update(JSON.stringify([name, beside.prepare(`SELECT * FROM "${name}" ORDER BY rowid`).all([])]));
    }
    return hash.digest('hex');
  }
}
