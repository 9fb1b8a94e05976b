/** Notes on lots in the store. One that was kept never changes; a slip is taken away and written anew. */
import { isDeepStrictEqual } from 'node:util';
import type { Kysely } from 'kysely';
import type { NewNote, NoteRecord } from '../../api/lotNote.ts';
import { mostNotes } from '../../core/lot/note.ts';
import type { Made } from './made.ts';
import type { LotNoteTable, Tables } from './tables.ts';

/** Notes of lots, by the lot, the earliest first. */
export async function notesOf(db: Kysely<Tables>, lotIds: readonly string[]): Promise<Map<string, NoteRecord[]>> {
  const rows = await db
    .selectFrom('lot_note')
    .selectAll()
    .where('lot', 'in', lotIds)
    .orderBy('at')
    .orderBy('id')
    .execute();
  const notes = new Map<string, NoteRecord[]>();
  for (const row of rows) notes.set(row.lot, [...(notes.get(row.lot) ?? []), recordOf(row)]);
  return notes;
}

/** The lot has to be there. `full` when it has as many notes as are allowed. */
export function createNote(
  db: Kysely<Tables>,
  { id, lotId, note }: { readonly id: string; readonly lotId: string; readonly note: NewNote },
  now: Date,
): Promise<Made<NoteRecord> | 'full'> {
  return db.transaction().execute(async (transaction) => {
    const there = await transaction.selectFrom('lot_note').selectAll().where('id', '=', id).executeTakeFirst();
    if (there) {
      const record = recordOf(there);
      return { outcome: there.lot === lotId && isDeepStrictEqual(record.note, note) ? 'same' : 'taken', record };
    }
    const { n } = await transaction
      .selectFrom('lot_note')
      .select(({ fn }) => fn.countAll<number>().as('n'))
      .where('lot', '=', lotId)
      .executeTakeFirstOrThrow();
    if (n >= mostNotes) return 'full';
    const row = { id, lot: lotId, at: note.at, body: JSON.stringify(note), created: now.toISOString() };
    await transaction.insertInto('lot_note').values(row).execute();
    return { outcome: 'new', record: recordOf(row) };
  });
}

/** @returns whether there was one */
export async function removeNote(db: Kysely<Tables>, lotId: string, id: string): Promise<boolean> {
  const result = await db.deleteFrom('lot_note').where('id', '=', id).where('lot', '=', lotId).executeTakeFirst();
  return result.numDeletedRows > 0n;
}

function recordOf({ id, created, body }: LotNoteTable): NoteRecord {
  return { id, created, note: JSON.parse(body) as NewNote };
}
