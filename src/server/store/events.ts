/** Events in the store: appended all or none, linked in a chain of hashes for each cook, and checked against it when they are read. */
import type { Kysely, Selectable } from 'kysely';
import { CompiledQuery, sql } from 'kysely';
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
  /** The event in canonical form, where it is at hand. */
  readonly content?: string;
}

/** An event that is in the store, and its stamp there. */
export interface Stored extends Stamp {
  readonly id: string;
  readonly kind: string;
  readonly event: LogEvent;
}

export type Appended =
  /** `stored`: every event, as it is in the store; `fresh`: those that were not there before. */
  | { readonly outcome: 'stored'; readonly stored: readonly Stored[]; readonly fresh: readonly Stored[] }
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
  const there = await rowsById(transaction, incoming);
  const last = await lastEvent(transaction, cook);
  const rows: EventRow[] = [];
  let prevHash = last?.hash ?? chainStart;
  for (const [place, { event, tServer, content = canonicalJson(event) }] of incoming.entries()) {
    const known = there.get(event.id);
    if (known !== undefined && known.content !== content) throw new Differs(place);
    if (known !== undefined) continue;
    const { id, kind } = event;
    const hash = linkHash({ content, tServer, prevHash }, sha256);
    // The store gives the place.
    const row = { seq: 0, id, cook, kind, content, received: tServer, prevHash, hash };
    rows.push(row);
    there.set(id, row);
    prevHash = hash;
  }
  await insert(transaction, rows);
  for (const [place, seq] of (await seqsAfter(transaction, cook, last?.seq ?? 0)).entries()) rows[place].seq = seq;
  if (rows.some(({ kind }) => kind === 'ended' || kind === 'correction')) await noteEnd(transaction, cook);
  const stored = incoming.flatMap(({ event }) => storedAs(event, there.get(event.id) as EventRow) ?? []);
  const fresh = new Set(rows.map(({ id }) => id));
  return { outcome: 'stored', stored, fresh: stored.filter(({ id }) => fresh.delete(id)) };
}

/** As raw text: the query builder would take longer to put a statement of so many values together than SQLite to run it. */
async function insert(transaction: Kysely<Tables>, rows: readonly EventRow[]) {
  for (let at = 0; at < rows.length; at += rowsTogether) {
    const together = rows.slice(at, at + rowsTogether);
    const columns = 'id, cook, kind, content, received, prevHash, hash';
    const places = together.map(() => '(?, ?, ?, ?, ?, ?, ?)').join();
    const values: string[] = [];
    for (const { id, cook, kind, content, received, prevHash, hash } of together) {
      values.push(id, cook, kind, content, received, prevHash, hash);
    }
    await transaction.executeQuery(CompiledQuery.raw(`INSERT INTO event (${columns}) VALUES ${places}`, values));
  }
}

/** Places of a cook's events after one, rising. */
async function seqsAfter(transaction: Kysely<Tables>, cook: string, last: number): Promise<number[]> {
  const rows = await transaction
    .selectFrom('event')
    .select('seq')
    .where('cook', '=', cook)
    .where('seq', '>', last)
    .orderBy('seq')
    .execute();
  return rows.map(({ seq }) => seq);
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
  if (!agrees(event, row)) return undefined;
  return { ...event, seq: row.seq, tServer: row.received, prevHash: row.prevHash, hash: row.hash };
}

function storedAs(event: LogEvent, row: EventRow): Stored | undefined {
  if (!agrees(event, row)) return undefined;
  const { seq, id, kind, received, prevHash, hash } = row;
  return { id, kind, event, seq, tServer: received, prevHash, hash };
}

/** Whether what stands beside the event is what the event says. */
function agrees(event: LogEvent, row: EventRow): boolean {
  return event.id === row.id && event.cook === row.cook && event.kind === row.kind;
}

async function rowsById(db: Kysely<Tables>, incoming: readonly Incoming[]): Promise<Map<string, EventRow>> {
  const ids = JSON.stringify(incoming.map(({ event }) => event.id));
  const { rows } = await sql<EventRow>`SELECT * FROM event WHERE id IN (SELECT value FROM json_each(${ids}))`.execute(
    db,
  );
  return new Map(rows.map((row) => [row.id, row]));
}

/** Brings the cook's row up to date with whether its log says that it ended. */
async function noteEnd(transaction: Kysely<Tables>, cook: string) {
  const rows = await transaction
    .selectFrom('event')
    .selectAll()
    .where('cook', '=', cook)
    .where('kind', 'in', ['ended', 'correction'])
    .orderBy('seq')
    .execute();
  const ends = rows.filter(({ kind }) => kind === 'ended');
  if (ends.length === 0) return;
  // Which of several ends or corrections of an end holds, the whole log has to tell; one end alone speaks for itself.
  const isPlain =
    ends.length === 1 && isItself(ends[0]) && rows.every((row) => row === ends[0] || !row.content.includes(ends[0].id));
  const events = isPlain ? ends.flatMap((row) => eventOf(row) ?? []) : (await readEvents(transaction, cook)).events;
  const { ended } = foldCook(events);
  await transaction
    .updateTable('cook')
    .set({ ended: ended?.body.how ?? null })
    .where('id', '=', cook)
    .execute();
}
