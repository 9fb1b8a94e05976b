/** Devices that were let in, and thermometers that the server listens to. */
import type { Kysely, Migration } from 'kysely';
import { sql } from 'kysely';

export const devicesAndInputs: Migration = {
  async up(db: Kysely<unknown>) {
    // Of a token only its hash is kept: who reads the file can not pass for the device.
    await sql`
      CREATE TABLE device (
        id TEXT PRIMARY KEY,
        name TEXT NOT NULL,
        role TEXT NOT NULL CHECK (role IN ('keeper', 'cook', 'reader', 'probe')),
        tokenHash TEXT NOT NULL UNIQUE CHECK (length(tokenHash) = 64),
        paired TEXT NOT NULL,
        lastSeen TEXT NOT NULL,
        expires TEXT
      ) STRICT`.execute(db);
    await sql`
      CREATE TABLE input (
        id TEXT PRIMARY KEY,
        body TEXT NOT NULL CHECK (json_valid(body)),
        created TEXT NOT NULL
      ) STRICT`.execute(db);
  },
};
