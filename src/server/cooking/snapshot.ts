/** What a cook's log comes to now. */
import type { Kysely } from 'kysely';
import type { z } from 'zod';
import type { cookSnapshotSchema } from '../../api/cook.ts';
import { foldCook } from '../../core/log/fold.ts';
import { findCook } from '../store/cooks.ts';
import { readEvents } from '../store/events.ts';
import type { Tables } from '../store/tables.ts';

export type CookSnapshot = z.infer<typeof cookSnapshotSchema>;

export async function snapshotOf(db: Kysely<Tables>, id: string, tServer: string): Promise<CookSnapshot | undefined> {
  const cook = await findCook(db, id);
  if (!cook) return undefined;
  const { events, damaged } = await readEvents(db, id);
  const lastSeq = events.at(-1)?.seq ?? 0;
  return { cook: { ...cook, lastSeq }, state: { ...foldCook(events) }, lastSeq, damaged: [...damaged], tServer };
}
