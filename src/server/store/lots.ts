/** Lots in the store, newest first, each with its notes. A change names the version that it was made from, as with kits. */
import { isDeepStrictEqual } from 'node:util';
import type { Kysely } from 'kysely';
import type { KeptLot, LotChange, LotRecord } from '../../api/lot.ts';
import type { NoteRecord } from '../../api/lotNote.ts';
import { notesOf } from './lotNotes.ts';
import type { Made } from './made.ts';
import type { LotTable, Tables } from './tables.ts';

/** Lots that stand on the shelf. @param before id of a lot: lists those poured earlier */
export async function listLots(db: Kysely<Tables>, limit: number, before?: string): Promise<LotRecord[]> {
  let query = db.selectFrom('lot').selectAll().where('removed', 'is', null);
  query = query.orderBy('made', 'desc').orderBy('id', 'desc').limit(limit);
  const last = before && (await findRow(db, before));
  if (last) query = query.where((where) => where(where.refTuple('made', 'id'), '<', where.tuple(last.made, last.id)));
  const rows = await query.execute();
  const notes = await notesOf(
    db,
    rows.map(({ id }) => id),
  );
  return rows.map((row) => recordOf(row, notes.get(row.id)));
}

/** Also one that was taken off the shelf. */
export async function findLot(db: Kysely<Tables>, id: string): Promise<LotRecord | undefined> {
  const row = await findRow(db, id);
  return row && recordOf(row, (await notesOf(db, [id])).get(id));
}

export function createLot(db: Kysely<Tables>, id: string, lot: KeptLot, now: Date): Promise<Made<LotRecord>> {
  return db.transaction().execute(async (transaction) => {
    const there = await findLot(transaction, id);
    if (there) return { outcome: isSameLot(there, lot) ? 'same' : 'taken', record: there };
    const time = now.toISOString();
    const row = { id, ...columnsOf(lot), version: 1, created: time, updated: time, removed: null };
    await transaction.insertInto('lot').values(row).execute();
    return { outcome: 'new', record: recordOf(row) };
  });
}

/** A repeated request is known by what can't change: the rest may have been changed since. */
function isSameLot({ version, lot: there }: LotRecord, lot: KeptLot): boolean {
  const { name, weighedKg, alkali } = version > 1 ? there : lot;
  return isDeepStrictEqual(there, { ...lot, name, weighedKg, alkali });
}

/** Changes a lot if it still is at `version`; otherwise returns it as it is now; undefined when there is none. */
export function changeLot(
  db: Kysely<Tables>,
  id: string,
  version: number,
  { alkali, ...change }: LotChange,
  now: Date,
): Promise<{ readonly changed: boolean; readonly record: LotRecord } | undefined> {
  return db.transaction().execute(async (transaction) => {
    const there = await findLot(transaction, id);
    if (!there || there.version !== version) return there && { changed: false, record: there };
    const lot = { ...there.lot, ...change, ...(alkali !== undefined && { alkali }) };
    const { created, removed, notes } = there;
    const row = { ...columnsOf(lot), version: version + 1, updated: now.toISOString() };
    await transaction.updateTable('lot').set(row).where('id', '=', id).execute();
    return { changed: true, record: recordOf({ id, created, removed, ...row }, notes) };
  });
}

/** Takes a lot off the shelf, or puts it back. @returns it as it is then; undefined when there is none */
export async function shelveLot(db: Kysely<Tables>, id: string, removed: Date | null): Promise<LotRecord | undefined> {
  await db
    .updateTable('lot')
    .set({ removed: removed?.toISOString() ?? null })
    .where('id', '=', id)
    .where('removed', removed ? 'is' : 'is not', null)
    .execute();
  return findLot(db, id);
}

function findRow(db: Kysely<Tables>, id: string): Promise<LotTable | undefined> {
  return db.selectFrom('lot').selectAll().where('id', '=', id).executeTakeFirst();
}

function columnsOf(lot: KeptLot) {
  return { name: lot.name, cook: lot.cookId, plan: lot.planId, made: lot.madeAt, body: JSON.stringify(lot) };
}

function recordOf({ id, version, created, updated, removed, body }: LotTable, notes: NoteRecord[] = []): LotRecord {
  return { id, version, created, updated, removed, lot: JSON.parse(body) as KeptLot, notes };
}
