/** Kits in the store. A change names the version that it was made from, so that two people never overwrite each other unseen. */
import { isDeepStrictEqual } from 'node:util';
import type { Kysely } from 'kysely';
import type { KitRecord } from '../../api/kit.ts';
import type { Kit } from '../../core/pan/kit.ts';
import type { Made } from './made.ts';
import type { KitTable, Tables } from './tables.ts';

/** At most this many are listed; a kitchen has a handful. */
const MOST_LISTED = 500;

export async function listKits(db: Kysely<Tables>): Promise<KitRecord[]> {
  const rows = await db.selectFrom('kit').selectAll().orderBy('name').orderBy('id').limit(MOST_LISTED).execute();
  return rows.map(recordOf);
}

export async function findKit(db: Kysely<Tables>, id: string): Promise<KitRecord | undefined> {
  const row = await db.selectFrom('kit').selectAll().where('id', '=', id).executeTakeFirst();
  return row && recordOf(row);
}

export function createKit(db: Kysely<Tables>, id: string, kit: Kit, now: Date): Promise<Made<KitRecord>> {
  return db.transaction().execute(async (transaction) => {
    const there = await findKit(transaction, id);
    if (there) return { outcome: isDeepStrictEqual(there.kit, kit) ? 'same' : 'taken', record: there };
    const time = now.toISOString();
    const row = { id, name: kit.name, body: JSON.stringify(kit), version: 1, created: time, updated: time };
    await transaction.insertInto('kit').values(row).execute();
    return { outcome: 'new', record: recordOf(row) };
  });
}

/** Replaces a kit if it still is at `version`; otherwise returns it as it is now; undefined when there is none. */
export function replaceKit(
  db: Kysely<Tables>,
  id: string,
  version: number,
  kit: Kit,
  now: Date,
): Promise<{ readonly replaced: boolean; readonly record: KitRecord } | undefined> {
  return db.transaction().execute(async (transaction) => {
    const result = await transaction
      .updateTable('kit')
      .set({ name: kit.name, body: JSON.stringify(kit), version: version + 1, updated: now.toISOString() })
      .where('id', '=', id)
      .where('version', '=', version)
      .executeTakeFirst();
    const record = await findKit(transaction, id);
    return record && { replaced: result.numUpdatedRows > 0n, record };
  });
}

/** @returns whether there was one; plans made for it stay, without their kit */
export async function removeKit(db: Kysely<Tables>, id: string): Promise<boolean> {
  const result = await db.deleteFrom('kit').where('id', '=', id).executeTakeFirst();
  return result.numDeletedRows > 0n;
}

function recordOf({ id, version, created, updated, body }: KitTable): KitRecord {
  return { id, version, created, updated, kit: JSON.parse(body) as KitRecord['kit'] };
}
