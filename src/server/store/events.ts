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
  const last = await lastEvent(transaction, cook);
  // Of a new cook nothing is there, unless an id was taken by another cook, which the table itself refuses.
  const there = last ? await rowsById(transaction, incoming) : new Map<string, EventRow>();
  const [rows, stored, fresh]: [EventRow[], Stored[], Stored[]] = [[], [], []];
  let seq = await lastPlace(transaction);
  let prevHash = last?.hash ?? chainStart;
  for (const [place, { event, tServer, content = canonicalJson(event) }] of incoming.entries()) {
    const { id, kind } = event;
    const known = there.get(id);
    if (known !== undefined && known.content !== content) throw new Differs(place);
    const hash = known?.hash ?? linkHash({ content, tServer, prevHash }, sha256);
    const row = known ?? { seq: ++seq, id, cook, kind, content, received: tServer, prevHash, hash };
    const one = storedAs(event, row);
    if (one) stored.push(one);
    if (known) continue;
    if (one) fresh.push(one);
    rows.push(row);
    there.set(id, row);
    prevHash = hash;
  }
  try {
    await insert(transaction, rows);
  } catch (error) {
    throw isTaken(error) ? new Differs(await placeOfTaken(transaction, cook, incoming)) : error;
  }
  const ofEnd = rows.filter(isOfEnd);
  if (ofEnd.length > 0) await noteEnd(transaction, cook, last ? await rowsOfEnd(transaction, cook) : ofEnd);
  return { outcome: 'stored', stored, fresh };
}

/** The highest place that was ever given: none is given twice. */
async function lastPlace(transaction: Kysely<Tables>): Promise<number> {
  const { rows } = await sql<{ place: number }>`
    SELECT coalesce(max(seq), 0) AS place
    FROM (SELECT seq FROM sqlite_sequence WHERE name = 'event' UNION ALL SELECT max(seq) FROM event)`.execute(
    transaction,
  );
  return rows[0].place;
}

/** As raw text: the query builder would take longer to put a statement of so many values together than SQLite to run it. */
async function insert(transaction: Kysely<Tables>, rows: readonly EventRow[]) {
  for (let at = 0; at < rows.length; at += rowsTogether) {
    const together = rows.slice(at, at + rowsTogether);
    const columns = 'seq, id, cook, kind, content, received, prevHash, hash';
    const places = together.map(() => '(?, ?, ?, ?, ?, ?, ?, ?)').join();
    const values: unknown[] = [];
    for (const { seq, id, cook, kind, content, received, prevHash, hash } of together) {
      values.push(seq, id, cook, kind, content, received, prevHash, hash);
    }
    await transaction.executeQuery(CompiledQuery.raw(`INSERT INTO event (${columns}) VALUES ${places}`, values));
  }
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

/** Whether an insert was refused because the id of an event is that of another. */
function isTaken(error: unknown): boolean {
  return error instanceof Error && error.message.includes('UNIQUE constraint failed: event.id');
}

/** Place of the first event whose id an event of another cook has. */
async function placeOfTaken(db: Kysely<Tables>, cook: string, incoming: readonly Incoming[]): Promise<number> {
  const there = await rowsById(db, incoming);
  return incoming.findIndex(({ event }) => (there.get(event.id)?.cook ?? cook) !== cook);
}

function isOfEnd({ kind }: EventRow): boolean {
  return kind === 'ended' || kind === 'correction';
}

function rowsOfEnd(db: Kysely<Tables>, cook: string): Promise<EventRow[]> {
  return db
    .selectFrom('event')
    .selectAll()
    .where('cook', '=', cook)
    .where('kind', 'in', ['ended', 'correction'])
    .orderBy('seq')
    .execute();
}

/**
 * Brings the cook's row up to date with whether its log says that it ended.
 * @param rows all ends and corrections of the log
 */
async function noteEnd(transaction: Kysely<Tables>, cook: string, rows: readonly EventRow[]) {
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
