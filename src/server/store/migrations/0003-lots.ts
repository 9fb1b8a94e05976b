/** Lots: finished sugars. */
import type { Kysely, Migration } from 'kysely';
import { sql } from 'kysely';

export const lots: Migration = {
  async up(db: Kysely<unknown>) {
    // Cook and plan are named, not referred to: a lot made while the server was away may come before its cook, and outlives its plan.
    await sql`
      CREATE TABLE lot (
        id TEXT PRIMARY KEY,
        name TEXT NOT NULL,
        cook TEXT,
        "plan" TEXT,
        body TEXT NOT NULL CHECK (json_valid(body)),
        made TEXT NOT NULL,
        version INTEGER NOT NULL CHECK (version >= 1),
        created TEXT NOT NULL,
        updated TEXT NOT NULL
      ) STRICT`.execute(db);
    await sql`CREATE INDEX lot_by_made ON lot (made, id)`.execute(db);
    await sql`CREATE INDEX lot_by_cook ON lot (cook)`.execute(db);
  },
};
