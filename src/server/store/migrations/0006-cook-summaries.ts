/** What lists show of a cook, derived from its log: kept so that no list has to lead a twin through it. */
import type { Kysely, Migration } from 'kysely';
import { sql } from 'kysely';

export const cookSummaries: Migration = {
  async up(db: Kysely<unknown>) {
    await sql`
      CREATE TABLE cook_summary (
        cook TEXT PRIMARY KEY REFERENCES cook (id),
        lastSeq INTEGER NOT NULL,
        form INTEGER NOT NULL,
        body TEXT NOT NULL CHECK (json_valid(body))
      ) STRICT`.execute(db);
  },
};
