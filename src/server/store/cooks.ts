/** Cooks in the store. A cook is its log; the row beside it holds what lists show. */
import type { Kysely } from 'kysely';
import type { CookRecord } from '../../api/cook.ts';
import type { EventOf } from '../../core/log/event.ts';
import { type Appended, appendEvents, type Incoming } from './events.ts';
import type { Tables } from './tables.ts';

/** @param before id of a cook: lists those that began earlier */
export async function listCooks(db: Kysely<Tables>, limit: number, before?: string): Promise<CookRecord[]> {
  let query = selectCooks(db).orderBy('begun', 'desc').orderBy('id', 'desc').limit(limit);
  const last = before && (await findCook(db, before));
  if (last) query = query.where((where) => where(where.refTuple('begun', 'id'), '<', where.tuple(last.begun, last.id)));
  return query.execute();
}

export function findCook(db: Kysely<Tables>, id: string): Promise<CookRecord | undefined> {
  return selectCooks(db).where('id', '=', id).executeTakeFirst();
}

/** Cooks that have not ended, the newest first. */
export function runningCooks(db: Kysely<Tables>): Promise<CookRecord[]> {
  return selectCooks(db).where('ended', 'is', null).orderBy('begun', 'desc').orderBy('id', 'desc').execute();
}

function selectCooks(db: Kysely<Tables>) {
  return db
    .selectFrom('cook')
    .selectAll()
    .select((e) =>
      e
        .selectFrom('event')
        .select(({ fn }) => fn.coalesce(fn.max('event.seq'), e.lit(0)).as('lastSeq'))
        .whereRef('event.cook', '=', 'cook.id')
        .as('lastSeq'),
    )
    .$narrowType<{ lastSeq: number }>();
}

/** Thrown to leave the transaction of a beginning without writing. */
class Taken extends Error {}

/** Makes a cook of its first event; `differs` when the cook began with another. */
export async function beginCook(db: Kysely<Tables>, begun: EventOf<'begun'>, tServer: string): Promise<Appended> {
  const refuseOther = async (transaction: Kysely<Tables>) => {
    if (!(await findCook(transaction, begun.cook))) return insertCook(transaction, begun, tServer);
    const same = await transaction.selectFrom('event').select('seq').where('id', '=', begun.id).executeTakeFirst();
    if (!same) throw new Taken();
  };
  try {
    return await appendEvents(db, begun.cook, [{ event: begun, tServer }], refuseOther);
  } catch (error) {
    if (error instanceof Taken) return { outcome: 'differs', place: 0 };
    throw error;
  }
}

/** Takes in a cook's events from a file, making the cook if it is not there. */
export function takeInCook(
  db: Kysely<Tables>,
  begun: EventOf<'begun'>,
  incoming: readonly Incoming[],
): Promise<Appended> {
  const tServer = incoming.find(({ event }) => event.id === begun.id)?.tServer ?? begun.tDevice;
  return appendEvents(db, begun.cook, incoming, async (transaction) => {
    if (!(await findCook(transaction, begun.cook))) await insertCook(transaction, begun, tServer);
  });
}

async function insertCook(transaction: Kysely<Tables>, { cook, body }: EventOf<'begun'>, begun: string) {
  const { name } = body.request as { readonly name: string };
  await transaction.insertInto('cook').values({ id: cook, name, mode: body.mode, begun, ended: null }).execute();
}
