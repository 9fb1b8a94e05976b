/** The first tables: kits, and the plans made for them. */
import type { Kysely, Migration } from 'kysely';
import { sql } from 'kysely';

export const kitsAndPlans: Migration = {
  async up(db: Kysely<unknown>) {
    await sql`
      CREATE TABLE kit (
        id TEXT PRIMARY KEY,
        name TEXT NOT NULL,
        body TEXT NOT NULL CHECK (json_valid(body)),
        version INTEGER NOT NULL CHECK (version >= 1),
        created TEXT NOT NULL,
        updated TEXT NOT NULL
      ) STRICT`.execute(db);
    await sql`
      CREATE TABLE plan (
        id TEXT PRIMARY KEY,
        name TEXT NOT NULL,
        kit TEXT REFERENCES kit (id) ON DELETE SET NULL,
        request TEXT NOT NULL CHECK (json_valid(request)),
        created TEXT NOT NULL
      ) STRICT`.execute(db);
    await sql`CREATE INDEX plan_by_kit ON plan (kit)`.execute(db);
    await sql`CREATE INDEX plan_by_created ON plan (created, id)`.execute(db);
  },
};
