/** Glasses in the store, newest first. A change names the version that it was made from, as with kits. */
import { isDeepStrictEqual } from 'node:util';
import type { Kysely } from 'kysely';
import type { GlassRecord, NewGlass } from '../../api/glass.ts';
import type { TastingRecord } from '../../api/tasting.ts';
import type { Made } from './made.ts';
import type { GlassTable, Tables } from './tables.ts';
import { removeTastingsOf } from './tastings.ts';

/** @param before id of a glass: lists those made earlier */
export async function listGlasses(db: Kysely<Tables>, limit: number, before?: string): Promise<GlassRecord[]> {
  let query = db.selectFrom('glass').selectAll().orderBy('created', 'desc').orderBy('id', 'desc').limit(limit);
  const last = before && (await findRow(db, before));
  if (last) {
    query = query.where((where) => where(where.refTuple('created', 'id'), '<', where.tuple(last.created, last.id)));
  }
  return (await query.execute()).map(recordOf);
}

export async function findGlass(db: Kysely<Tables>, id: string): Promise<GlassRecord | undefined> {
  const row = await findRow(db, id);
  return row && recordOf(row);
}

export function createGlass(db: Kysely<Tables>, id: string, glass: NewGlass, now: Date): Promise<Made<GlassRecord>> {
  return db.transaction().execute(async (transaction) => {
    const there = await findGlass(transaction, id);
    if (there) return { outcome: isDeepStrictEqual(there.glass, glass) ? 'same' : 'taken', record: there };
    const time = now.toISOString();
    const row = { id, ...columnsOf(glass), version: 1, created: time, updated: time };
    await transaction.insertInto('glass').values(row).execute();
    return { outcome: 'new', record: recordOf(row) };
  });
}

/** Changes a glass if it still is at `version`; otherwise returns it as it is now; undefined when there is none. */
export function changeGlass(
  db: Kysely<Tables>,
  id: string,
  version: number,
  glass: NewGlass,
  now: Date,
): Promise<{ readonly changed: boolean; readonly record: GlassRecord } | undefined> {
  return db.transaction().execute(async (transaction) => {
    const there = await findGlass(transaction, id);
    if (!there || there.version !== version) return there && { changed: false, record: there };
    const row = { ...columnsOf(glass), version: version + 1, updated: now.toISOString() };
    await transaction.updateTable('glass').set(row).where('id', '=', id).execute();
    return { changed: true, record: recordOf({ id, created: there.created, ...row }) };
  });
}

/** What was taken away. */
interface Removed {
  readonly removed: true;
  readonly record: GlassRecord;
  readonly tastings: TastingRecord[];
}

/** Takes a glass away with its tastings if it still is at `version`; otherwise returns it as it is now; undefined when there is none. */
export function removeGlass(
  db: Kysely<Tables>,
  id: string,
  version: number,
): Promise<Removed | { readonly removed: false; readonly record: GlassRecord } | undefined> {
  return db.transaction().execute(async (transaction) => {
    const record = await findGlass(transaction, id);
    if (!record || record.version !== version) return record && { removed: false, record };
    const tastings = await removeTastingsOf(transaction, id);
    await transaction.deleteFrom('glass').where('id', '=', id).execute();
    return { removed: true, record, tastings };
  });
}

function findRow(db: Kysely<Tables>, id: string): Promise<GlassTable | undefined> {
  return db.selectFrom('glass').selectAll().where('id', '=', id).executeTakeFirst();
}

function columnsOf(glass: NewGlass) {
  return { name: glass.name, body: JSON.stringify(glass) };
}

function recordOf({ id, version, created, updated, body }: GlassTable): GlassRecord {
  return { id, version, created, updated, glass: JSON.parse(body) as NewGlass };
}
