/** A workspace's file into a data folder in which nothing is kept yet. */
import { createHash } from 'node:crypto';
import { createReadStream, existsSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { migrations } from './migrations/all.ts';
import { openStore } from './store.ts';
import { StoreError } from './storeError.ts';
import { isEmpty, readHead, takeInWorkspace, workspaceText } from './workspace.ts';

export type Restored = { readonly kind: 'restored'; readonly rows: number } | { readonly kind: 'same' };

/** @throws StoreError when the file is not as it was written, or when other things are kept in the folder */
export async function restoreWorkspace(file: string, folder: string): Promise<Restored> {
  const stream = createReadStream(file);
  const lines = createInterface({ input: stream, crlfDelay: Number.POSITIVE_INFINITY })[Symbol.asyncIterator]();
  try {
    const first = await lines.next();
    const { tables } = readHead(first.done ? '' : first.value);
    const names = Object.keys(migrations);
    const path = join(folder, 'umberpan.sqlite');
    const isFresh = !existsSync(path);
    // An older file goes into the tables of its time, which are then brought up to date like any others.
    const upTo = isFresh ? names.slice(0, names.indexOf(tables) + 1) : names;
    const store = await openStore(folder, Object.fromEntries(upTo.map((name) => [name, migrations[name]])));
    let isRefused = true;
    try {
      if (!isFresh && !(await isEmpty(store.db))) {
        if ((await sha256OfFile(file)) !== (await sha256OfPieces(workspaceText(store.db)))) {
          throw new StoreError(`${folder} has other things in it; name a folder in which nothing is kept.`);
        }
        return { kind: 'same' };
      }
      if (!isFresh && tables !== names.at(-1)) {
        throw new StoreError('an older Umberpan wrote this file: name a folder that is not there yet.');
      }
      const rows = await takeInWorkspace(store.db, { [Symbol.asyncIterator]: () => lines });
      isRefused = false;
      return { kind: 'restored', rows };
    } finally {
      await store.close();
      // Empty tables of another time would be in the way of the next file.
      if (isFresh && isRefused) rmSync(path);
    }
  } finally {
    stream.destroy();
  }
}

export async function sha256OfFile(file: string): Promise<string> {
  return sha256OfPieces(createReadStream(file));
}

export async function sha256OfPieces(pieces: AsyncIterable<string | Buffer>): Promise<string> {
  const hash = createHash('sha256');
  for await (const piece of pieces) hash.update(piece);
  return hash.digest('hex');
}
