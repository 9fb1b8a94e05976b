/** Glasses: beers with the sugars in them; and how they tasted. */
import type { Kysely, Migration } from 'kysely';
import { sql } from 'kysely';

export const glassesAndTastings: Migration = {
  async up(db: Kysely<unknown>) {
    // A glass names its lots within its body: one that was made while the server was away may come before its lot.
    await sql`
      CREATE TABLE glass (
        id TEXT PRIMARY KEY,
        name TEXT NOT NULL,
        body TEXT NOT NULL CHECK (json_valid(body)),
        version INTEGER NOT NULL CHECK (version >= 1),
        created TEXT NOT NULL,
        updated TEXT NOT NULL
      ) STRICT`.execute(db);
    await sql`CREATE INDEX glass_by_created ON glass (created, id)`.execute(db);
    await sql`
      CREATE TABLE tasting (
        id TEXT PRIMARY KEY,
        glass TEXT NOT NULL REFERENCES glass (id),
        tasted TEXT NOT NULL,
        body TEXT NOT NULL CHECK (json_valid(body)),
        created TEXT NOT NULL
      ) STRICT`.execute(db);
    await sql`CREATE INDEX tasting_by_glass ON tasting (glass, tasted, id)`.execute(db);
  },
};
