/** What a device is let in for: one cook that a thermometer sends to, or that a guest sees. */
import type { Kysely, Migration } from 'kysely';
import { sql } from 'kysely';

export const devicesCooks: Migration = {
  async up(db: Kysely<unknown>) {
    // No reference: a cook may be put back from a backup in which it is not.
    await sql`ALTER TABLE device ADD COLUMN cook TEXT`.execute(db);
    await sql`UPDATE device SET cook = 'next' WHERE role = 'probe'`.execute(db);
  },
};
