/** Notes on lots: measurements, tastings, what was taken; and lots that were taken off the shelf. */
import type { Kysely, Migration } from 'kysely';
import { sql } from 'kysely';

export const lotNotes: Migration = {
  async up(db: Kysely<unknown>) {
    // Taken off, not deleted: a label on a jar may still lead to it, and it can be put back.
    await sql`ALTER TABLE lot ADD COLUMN removed TEXT`.execute(db);
    await sql`
      CREATE TABLE lot_note (
        id TEXT PRIMARY KEY,
        lot TEXT NOT NULL REFERENCES lot (id),
        at TEXT NOT NULL,
        body TEXT NOT NULL CHECK (json_valid(body)),
        created TEXT NOT NULL
      ) STRICT`.execute(db);
    await sql`CREATE INDEX lot_note_by_lot ON lot_note (lot, at, id)`.execute(db);
    // What earlier lots did not say: where they came from, which their cooks tell, and their alkali, which nobody knows.
    await sql`
      UPDATE lot SET body = json_set(
        body,
        '$.origin', CASE (SELECT mode FROM cook WHERE cook.id = lot.cook) WHEN 'rehearsal' THEN 'rehearsed' ELSE 'cooked' END,
        '$.alkali', NULL
      )`.execute(db);
  },
};
