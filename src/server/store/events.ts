/** Events in the store: appended all or none, linked in a chain of hashes for each cook, and checked against it when they are read. */
import type { Kysely, Selectable } from 'kysely';
import { canonicalJson } from '../../core/log/canonicalJson.ts';
import type { LogEvent, Stamp, StampedEvent } from '../../core/log/event.ts';
import { foldCook } from '../../core/log/fold.ts';
import { brokenLinks, chainStart, linkHash } from '../../core/log/hashChain.ts';
import { sha256 } from '../sha256.ts';
import type { EventTable, Tables } from './tables.ts';

/** Rows that go into one statement; SQLite takes 32,766 values in one. */
const rowsTogether = 500;

/** An event, and when the server had it. */
export interface Incoming {
  readonly event: LogEvent;
  readonly tServer: string;
}

export type Appended =
  /** `stored`: every event, as it is in the store; `fresh`: those that were not there before. */
  | { readonly outcome: 'stored'; readonly stored: readonly StampedEvent[]; readonly fresh: readonly StampedEvent[] }
  /** The event at this place has the id of another, and nothing was written. */
  | { readonly outcome: 'differs'; readonly place: number };

type EventRow = Selectable<EventTable>;

/** Thrown to leave the transaction without writing. */
class Differs extends Error {
  readonly place: number;

  constructor(place: number) {
    super('an event differs');
    this.place = place;
  }
}

/**
 * Appends events of one cook. An event that is there already, with the same content, is left as it is.
 * @param before what to do first in the same transaction
 */
export async function appendEvents(
  db: Kysely<Tables>,
  cook: string,
  incoming: readonly Incoming[],
  before?: (transaction: Kysely<Tables>) => Promise<void>,
): Promise<Appended> {
  try {
    return await db.transaction().execute(async (transaction) => {
      await before?.(transaction);
      return append(transaction, cook, incoming);
    });
  } catch (error) {
    if (error instanceof Differs) return { outcome: 'differs', place: error.place };
    throw error;
  }
}

async function append(transaction: Kysely<Tables>, cook: string, incoming: readonly Incoming[]): Promise<Appended> {
  const contents = incoming.map(({ event }) => canonicalJson(event));
  const there = await contentsById(transaction, incoming);
  const rows: Omit<EventRow, 'seq'>[] = [];
  let prevHash = (await lastEvent(transaction, cook))?.hash ?? chainStart;
  for (const [place, { event, tServer }] of incoming.entries()) {
    const content = contents[place];
    const known = there.get(event.id);
    if (known !== undefined && known !== content) throw new Differs(place);
    if (known !== undefined) continue;
    const hash = linkHash({ content, tServer, prevHash }, sha256);
    rows.push({ id: event.id, cook, kind: event.kind, content, received: tServer, prevHash, hash });
    there.set(event.id, content);
    prevHash = hash;
  }
  for (let at = 0; at < rows.length; at += rowsTogether) {
    await transaction
      .insertInto('event')
      .values(rows.slice(at, at + rowsTogether))
      .execute();
  }
  if (rows.some(({ kind }) => kind === 'ended' || kind === 'correction')) await noteEnd(transaction, cook);
  const stored = await eventsById(transaction, incoming);
  const fresh = new Set(rows.map(({ id }) => id));
  return { outcome: 'stored', stored, fresh: stored.filter(({ id }) => fresh.delete(id)) };
}

export interface CookLog {
  readonly events: readonly StampedEvent[];
  /** Places in the store whose row is not as it was written. The events there are left out, if it is they that changed. */
  readonly damaged: readonly number[];
}

/** A cook's events after a place, in the order in which they came in. */
export async function readEvents(db: Kysely<Tables>, cook: string, since = 0, limit?: number): Promise<CookLog> {
  let query = db.selectFrom('event').selectAll().where('cook', '=', cook).where('seq', '>', since).orderBy('seq');
  if (limit !== undefined) query = query.limit(limit);
  const rows = await query.execute();
  const links = rows.map(({ received, ...row }) => ({ ...row, tServer: received }));
  const broken = new Set(brokenLinks(links, sha256, since === 0 ? chainStart : links[0]?.prevHash));
  const read = rows.map((row, place) => ({
    row,
    event: broken.has(place) && !isItself(row) ? undefined : eventOf(row),
  }));
  return {
    events: read.flatMap(({ event }) => event ?? []),
    damaged: read.flatMap(({ row, event }, place) => (broken.has(place) || event === undefined ? [row.seq] : [])),
  };
}

export async function lastEvent(db: Kysely<Tables>, cook: string): Promise<Pick<Stamp, 'seq' | 'hash'> | undefined> {
  return db
    .selectFrom('event')
    .select(['seq', 'hash'])
    .where('cook', '=', cook)
    .orderBy('seq', 'desc')
    .limit(1)
    .executeTakeFirst();
}

/** Whether the row is whole, though the one before it may not be. */
function isItself(row: EventRow): boolean {
  return row.hash === linkHash({ ...row, tServer: row.received }, sha256);
}

/** Undefined when what stands beside the event does not agree with it. */
function eventOf(row: EventRow): StampedEvent | undefined {
  const event = JSON.parse(row.content) as LogEvent;
  const agrees = event.id === row.id && event.cook === row.cook && event.kind === row.kind;
  return agrees ? { ...event, seq: row.seq, tServer: row.received, prevHash: row.prevHash, hash: row.hash } : undefined;
}

async function rowsById(db: Kysely<Tables>, incoming: readonly Incoming[]): Promise<Map<string, EventRow>> {
  const rows = new Map<string, EventRow>();
  for (let at = 0; at < incoming.length; at += rowsTogether) {
    const ids = incoming.slice(at, at + rowsTogether).map(({ event }) => event.id);
    const found = await db.selectFrom('event').selectAll().where('id', 'in', ids).execute();
    for (const row of found) rows.set(row.id, row);
  }
  return rows;
}

async function contentsById(db: Kysely<Tables>, incoming: readonly Incoming[]): Promise<Map<string, string>> {
  return new Map([...(await rowsById(db, incoming))].map(([id, { content }]) => [id, content]));
}

async function eventsById(db: Kysely<Tables>, incoming: readonly Incoming[]): Promise<StampedEvent[]> {
  const rows = await rowsById(db, incoming);
  return incoming.flatMap(({ event }) => {
    const row = rows.get(event.id);
    return (row && eventOf(row)) ?? [];
  });
}

/** Brings the cook's row up to date with whether its log says that it ended. */
async function noteEnd(transaction: Kysely<Tables>, cook: string) {
  const end = await transaction
    .selectFrom('event')
    .select('seq')
    .where('cook', '=', cook)
    .where('kind', '=', 'ended')
    .executeTakeFirst();
  if (!end) return;
  const { ended } = foldCook((await readEvents(transaction, cook)).events);
  await transaction
    .updateTable('cook')
    .set({ ended: ended?.body.how ?? null })
    .where('id', '=', cook)
    .execute();
}
