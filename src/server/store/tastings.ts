/** Tastings in the store, the latest first. One that was kept never changes; a slip is taken away and written anew. */
import { isDeepStrictEqual } from 'node:util';
import type { Kysely } from 'kysely';
import type { NewTasting, TastingRecord } from '../../api/tasting.ts';
import type { Made } from './made.ts';
import type { Tables, TastingTable } from './tables.ts';

/** At most this many of a glass are listed; a beer is tasted a few times. */
const mostListed = 500;

export async function listTastings(db: Kysely<Tables>, glassId: string): Promise<TastingRecord[]> {
  const rows = await db
    .selectFrom('tasting')
    .selectAll()
    .where('glass', '=', glassId)
    .orderBy('tasted', 'desc')
    .orderBy('id', 'desc')
    .limit(mostListed)
    .execute();
  return rows.map(recordOf);
}

/** The glass has to be there. */
export function createTasting(
  db: Kysely<Tables>,
  { id, glassId, tasting }: Pick<TastingRecord, 'id' | 'glassId' | 'tasting'>,
  now: Date,
): Promise<Made<TastingRecord>> {
  return db.transaction().execute(async (transaction) => {
    const there = await transaction.selectFrom('tasting').selectAll().where('id', '=', id).executeTakeFirst();
    if (there) {
      const record = recordOf(there);
      const same = record.glassId === glassId && isDeepStrictEqual(record.tasting, tasting);
      return { outcome: same ? 'same' : 'taken', record };
    }
    const body = JSON.stringify(tasting);
    const row = { id, glass: glassId, tasted: tasting.tastedAt, body, created: now.toISOString() };
    await transaction.insertInto('tasting').values(row).execute();
    return { outcome: 'new', record: recordOf(row) };
  });
}

/** @returns whether there was one */
export async function removeTasting(db: Kysely<Tables>, glassId: string, id: string): Promise<boolean> {
  const result = await db.deleteFrom('tasting').where('id', '=', id).where('glass', '=', glassId).executeTakeFirst();
  return result.numDeletedRows > 0n;
}

/** All of a glass. @returns them */
export async function removeTastingsOf(db: Kysely<Tables>, glassId: string): Promise<TastingRecord[]> {
  const rows = await db.deleteFrom('tasting').where('glass', '=', glassId).returningAll().execute();
  return rows.map(recordOf);
}

function recordOf({ id, glass, created, body }: TastingTable): TastingRecord {
  return { id, glassId: glass, created, tasting: JSON.parse(body) as NewTasting };
}
