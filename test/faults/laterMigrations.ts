// Two changes to the tables as a later Umberpan may bring them, which take a while: all events are written anew.
import type { Migration } from 'kysely';
import { sql } from 'kysely';
import { migrations } from '../../src/server/store/migrations/all.ts';

const markEvents: Migration = {
  async up(db) {
    await sql`ALTER TABLE event ADD COLUMN mark TEXT`.execute(db);
    await sql`UPDATE event SET mark = upper(hex(content))`.execute(db);
  },
};

const indexMarks: Migration = {
  async up(db) {
    await sql`CREATE INDEX event_by_mark ON event (mark, seq)`.execute(db);
    await sql`CREATE TABLE marked AS SELECT seq, mark FROM event`.execute(db);
  },
};

export const laterMigrations: Readonly<Record<string, Migration>> = {
  ...migrations,
  '9000-mark-events': markEvents,
  '9001-index-marks': indexMarks,
};
