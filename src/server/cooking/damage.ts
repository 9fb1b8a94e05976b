/** At the start: is the newest cook's log as it was written? The file alone can't tell; the chain of hashes can. */
import type { Kysely } from 'kysely';
import { listCooks } from '../store/cooks.ts';
import { readEvents } from '../store/events.ts';
import type { Tables } from '../store/tables.ts';

/** What to tell the person, if anything. The log stays as it is, and what is whole of it is used. */
export async function damageOfNewestCook(db: Kysely<Tables>): Promise<string | undefined> {
  const [newest] = await listCooks(db, 1);
  if (!newest) return undefined;
  const { damaged } = await readEvents(db, newest.id);
  if (damaged.length === 0) return undefined;
  return (
    `The log of "${newest.name}" (cook ${newest.id}) is not as it was written: ${damaged.length} of its events are ` +
    `damaged, the first at place ${damaged[0]}. They are left out; the backups folder has copies from before.`
  );
}
