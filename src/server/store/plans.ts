/** Plans in the store, newest first. A plan never changes; another is made. */
import { isDeepStrictEqual } from 'node:util';
import type { Kysely } from 'kysely';
import type { NewPlan, PlanRecord } from '../../api/plan.ts';
import type { Made } from './made.ts';
import type { PlanTable, Tables } from './tables.ts';

/** @param before id of a plan: lists those older than it */
export async function listPlans(db: Kysely<Tables>, limit: number, before?: string): Promise<PlanRecord[]> {
  let query = db.selectFrom('plan').selectAll().orderBy('created', 'desc').orderBy('id', 'desc').limit(limit);
  const last = before && (await findPlan(db, before));
  if (last) {
    query = query.where((where) => where(where.refTuple('created', 'id'), '<', where.tuple(last.created, last.id)));
  }
  return (await query.execute()).map(recordOf);
}

export async function findPlan(db: Kysely<Tables>, id: string): Promise<PlanRecord | undefined> {
  const row = await db.selectFrom('plan').selectAll().where('id', '=', id).executeTakeFirst();
  return row && recordOf(row);
}

export function createPlan(db: Kysely<Tables>, id: string, plan: NewPlan, now: Date): Promise<Made<PlanRecord>> {
  return db.transaction().execute(async (transaction) => {
    const there = await findPlan(transaction, id);
    if (there) {
      // A plan outlives its kit, and then names none: a repeated request is still the same one.
      const same = (there.kitId ?? plan.kitId) === plan.kitId && isDeepStrictEqual(there.request, plan.request);
      return { outcome: same ? 'same' : 'taken', record: there };
    }
    const { kitId, request } = plan;
    const row = { id, name: request.name, kit: kitId, request: JSON.stringify(request), created: now.toISOString() };
    await transaction.insertInto('plan').values(row).execute();
    return { outcome: 'new', record: recordOf(row) };
  });
}

export async function removePlan(db: Kysely<Tables>, id: string): Promise<boolean> {
  const result = await db.deleteFrom('plan').where('id', '=', id).executeTakeFirst();
  return result.numDeletedRows > 0n;
}

function recordOf({ id, created, kit, request }: PlanTable): PlanRecord {
  return { id, created, kitId: kit, request: JSON.parse(request) as PlanRecord['request'] };
}
