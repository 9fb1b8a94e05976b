/** A workspace's file in the place of all that a running server keeps: read whole beside the store first, then put in at one stroke. */
import { createWriteStream } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import type { Kysely } from 'kysely';
import { sql } from 'kysely';
import { runningCooks } from './cooks.ts';
import { restoreWorkspace, sha256OfFile, sha256OfPieces } from './restore.ts';
import type { Store } from './store.ts';
import { silentCooks } from './summaries.ts';
import type { Tables } from './tables.ts';
import { type Counts, countsIn, tables, workspaceText } from './workspace.ts';

/** A file that was read whole and found to be in order, and the store that was made of it. */
export interface Staged {
  readonly file: string;
  readonly store: string;
  readonly rows: number;
  remove(): Promise<void>;
}

/**
 * Reads a file into a store of its own, beside the one that is in use.
 *
 * @throws StoreError when the file is not as it was written; whatever `pieces` throws
 */
export async function stageWorkspace({ folder }: Store, pieces: AsyncIterable<Buffer | string>): Promise<Staged> {
  const beside = await mkdtemp(join(folder, 'incoming-'));
  const remove = () => rm(beside, { recursive: true, force: true });
  try {
    const file = join(beside, 'workspace.json');
    await pipeline(Readable.from(pieces), createWriteStream(file, { mode: 0o600 }));
    const staged = join(beside, 'store');
    const restored = await restoreWorkspace(file, staged);
    const rows = restored.kind === 'restored' ? restored.rows : 0;
    return { file, store: join(staged, 'umberpan.sqlite'), rows, remove };
  } catch (error) {
    await remove();
    throw error;
  }
}

export type Replaced =
  | { readonly kind: 'replaced'; readonly rows: number }
  /** All of it was here already, and nothing else. */
  | { readonly kind: 'same'; readonly rows: number }
  /** Refused: other things are kept, and nobody said that they may go. */
  | { readonly kind: 'kept'; readonly here: Counts; readonly staged: Counts }
  /** Refused: somebody is at the stove. */
  | { readonly kind: 'underWay'; readonly cook: string };

export interface Consent {
  /** What is kept may go. It is backed up first. */
  readonly mayReplace: boolean;
  readonly now: string;
}

/** All or none: one transaction takes what is kept away and puts in what was staged. Devices and thermometers stay as they are. */
export async function replaceBy(store: Store, staged: Staged, { mayReplace, now }: Consent): Promise<Replaced> {
  const { db } = store;
  const { rows } = staged;
  const [there, here] = await Promise.all([sha256OfFile(staged.file), sha256OfPieces(workspaceText(db))]);
  if (there === here) return { kind: 'same', rows };
  const running = (await runningCooks(db)).filter(({ mode }) => mode === 'live');
  const silent = await silentCooks(db, running, now);
  const underWay = running.find(({ id }) => !silent.has(id));
  if (underWay) return { kind: 'underWay', cook: underWay.name };
  const kept = await countsIn(db, 'main');
  const isKept = Object.values(kept).some((count) => count > 0);
  return db.connection().execute(async (connection) => {
    await sql`ATTACH DATABASE ${staged.store} AS staged`.execute(connection);
    try {
      if (isKept && !mayReplace) return { kind: 'kept', here: kept, staged: await countsIn(connection, 'staged') };
      if (isKept) await store.backUp('before-replacing', new Date(now));
      await putIn(connection);
      return { kind: 'replaced', rows };
    } finally {
      await sql`DETACH DATABASE staged`.execute(connection);
    }
  });
}

/** The count of places in the log goes on where it was: a device that comes back with a place of before is noticed. */
function putIn(connection: Kysely<Tables>): Promise<void> {
  return connection.transaction().execute(async (transaction) => {
    for (const table of ['cook_summary', ...tables.toReversed()]) {
      await sql`DELETE FROM ${sql.table(table)}`.execute(transaction);
    }
    for (const table of tables) {
      await sql`INSERT INTO main.${sql.table(table)} SELECT * FROM staged.${sql.table(table)}`.execute(transaction);
    }
  });
}
