/** Lots in the store, newest first. A change names the version that it was made from, as with kits. */
import { isDeepStrictEqual } from 'node:util';
import type { Kysely } from 'kysely';
import type { LotChange, LotRecord, NewLot } from '../../api/lot.ts';
import type { Made } from './made.ts';
import type { LotTable, Tables } from './tables.ts';

/** @param before id of a lot: lists those poured earlier */
export async function listLots(db: Kysely<Tables>, limit: number, before?: string): Promise<LotRecord[]> {
  let query = db.selectFrom('lot').selectAll().orderBy('made', 'desc').orderBy('id', 'desc').limit(limit);
  const last = before && (await findRow(db, before));
  if (last) query = query.where((where) => where(where.refTuple('made', 'id'), '<', where.tuple(last.made, last.id)));
  return (await query.execute()).map(recordOf);
}

export async function findLot(db: Kysely<Tables>, id: string): Promise<LotRecord | undefined> {
  const row = await findRow(db, id);
  return row && recordOf(row);
}

export function createLot(db: Kysely<Tables>, id: string, lot: NewLot, now: Date): Promise<Made<LotRecord>> {
  return db.transaction().execute(async (transaction) => {
    const there = await findLot(transaction, id);
    if (there) return { outcome: isSameLot(there, lot) ? 'same' : 'taken', record: there };
    const time = now.toISOString();
    const row = { id, ...columnsOf(lot), version: 1, created: time, updated: time };
    await transaction.insertInto('lot').values(row).execute();
    return { outcome: 'new', record: recordOf(row) };
  });
}

/** A repeated request is known by what can't change: name and weight may have been changed since. */
function isSameLot({ version, lot: there }: LotRecord, lot: NewLot): boolean {
  const { name, weighedKg } = version > 1 ? there : lot;
  return isDeepStrictEqual(there, { ...lot, name, weighedKg });
}

/** Changes a lot if it still is at `version`; otherwise returns it as it is now; undefined when there is none. */
export function changeLot(
  db: Kysely<Tables>,
  id: string,
  version: number,
  change: LotChange,
  now: Date,
): Promise<{ readonly changed: boolean; readonly record: LotRecord } | undefined> {
  return db.transaction().execute(async (transaction) => {
    const there = await findLot(transaction, id);
    if (!there || there.version !== version) return there && { changed: false, record: there };
    const row = { ...columnsOf({ ...there.lot, ...change }), version: version + 1, updated: now.toISOString() };
    await transaction.updateTable('lot').set(row).where('id', '=', id).execute();
    return { changed: true, record: recordOf({ id, created: there.created, ...row }) };
  });
}

function findRow(db: Kysely<Tables>, id: string): Promise<LotTable | undefined> {
  return db.selectFrom('lot').selectAll().where('id', '=', id).executeTakeFirst();
}

function columnsOf(lot: NewLot) {
  return { name: lot.name, cook: lot.cookId, plan: lot.planId, made: lot.madeAt, body: JSON.stringify(lot) };
}

function recordOf({ id, version, created, updated, body }: LotTable): LotRecord {
  return { id, version, created, updated, lot: JSON.parse(body) as LotRecord['lot'] };
}
