/** Cooks, and the log that each of them is. */
import type { Kysely, Migration } from 'kysely';
import { sql } from 'kysely';

export const cooksAndEvents: Migration = {
  async up(db: Kysely<unknown>) {
    await sql`
      CREATE TABLE cook (
        id TEXT PRIMARY KEY,
        name TEXT NOT NULL,
        mode TEXT NOT NULL CHECK (mode IN ('live', 'rehearsal')),
        begun TEXT NOT NULL,
        ended TEXT CHECK (ended IN ('done', 'abandoned'))
      ) STRICT`.execute(db);
    await sql`CREATE INDEX cook_by_begun ON cook (begun, id)`.execute(db);
    // No check of the content: a damaged event must be found by its hash, and not keep the whole file from being opened.
    await sql`
      CREATE TABLE event (
        seq INTEGER PRIMARY KEY AUTOINCREMENT,
        id TEXT NOT NULL UNIQUE,
        cook TEXT NOT NULL REFERENCES cook (id),
        kind TEXT NOT NULL,
        content TEXT NOT NULL,
        received TEXT NOT NULL,
        prevHash TEXT NOT NULL,
        hash TEXT NOT NULL
      ) STRICT`.execute(db);
    await sql`CREATE INDEX event_by_cook ON event (cook, seq)`.execute(db);
  },
};
