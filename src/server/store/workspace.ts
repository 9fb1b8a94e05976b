/**
 * Everything that a person keeps, as one JSON file, out and in: kits, plans, cooks with their logs, lots, glasses and what was noted of
 * them. One row a line, so that a file of any size is written and read by and by. Who was let in, and with what, stays where it is.
 */
import { createHash } from 'node:crypto';
import type { Kysely } from 'kysely';
import { sql } from 'kysely';
import { canonicalJson } from '../../core/log/canonicalJson.ts';
import { chainStart, linkHash } from '../../core/log/hashChain.ts';
import { sha256 } from '../sha256.ts';
import { migrations } from './migrations/all.ts';
import { StoreError } from './storeError.ts';
import type { Tables } from './tables.ts';
import { faultOfRow } from './workspaceRow.ts';

const format = 'umberpan-workspace';
const formatVersion = 1;
const rowsTogether = 2000;

/** In an order in which each row comes after those that it refers to. */
const small = ['kit', 'plan', 'cook', 'lot', 'lot_note', 'glass', 'tasting'] as const satisfies (keyof Tables)[];
export const tables: readonly string[] = [...small, 'event'];

/** How many records of each kind are kept, events aside. */
export type Counts = Readonly<Record<(typeof small)[number], number>>;

/** @param schema of the connection's databases: `main`, or one that was attached */
export async function countsIn(db: Kysely<Tables>, schema: string): Promise<Counts> {
  const counts: [string, number][] = [];
  for (const table of small) {
    const { rows } = await sql<{ n: number }>`SELECT count(*) AS n FROM ${sql.id(schema, table)}`.execute(db);
    counts.push([table, rows[0].n]);
  }
  return Object.fromEntries(counts) as Counts;
}

type Row = Readonly<Record<string, unknown>>;

/** The file, piece by piece. What is written meanwhile is left out: small tables are read at one moment, and events up to it. */
export async function* workspaceText(db: Kysely<Tables>): AsyncGenerator<string, void, void> {
  const { rows, lastSeq } = await db.transaction().execute(async (transaction) => {
    const [{ seq }] = (await sql<{ seq: number }>`SELECT coalesce(max(seq), 0) AS seq FROM event`.execute(transaction))
      .rows;
    const all: [string, Row][] = [];
    for (const table of small) {
      const { rows: found } = await sql<Row>`SELECT * FROM ${sql.table(table)} ORDER BY id`.execute(transaction);
      for (const row of found) all.push([table, row]);
    }
    return { rows: all, lastSeq: seq };
  });
  const hash = createHash('sha256');
  let count = 0;
  const line = (table: string, row: Row): string => {
    const text = canonicalJson([table, row]);
    hash.update(`${text}\n`);
    return `${count++ === 0 ? '' : ',\n'}${text}`;
  };
  const head = { format, formatVersion, tables: Object.keys(migrations).at(-1) };
  yield `${JSON.stringify(head).slice(0, -1)},"rows":[\n`;
  yield rows.map(([table, row]) => line(table, row)).join('');
  for (let since = 0; since < lastSeq; ) {
    const events = await db
      .selectFrom('event')
      .selectAll()
      .where('seq', '>', since)
      .where('seq', '<=', lastSeq)
      .orderBy('seq')
      .limit(rowsTogether)
      .execute();
    yield events.map((event) => line('event', { ...event })).join('');
    since = events.at(-1)?.seq ?? lastSeq;
  }
  yield `${count > 0 ? '\n' : ''}],"count":${count},"sha256":"${hash.digest('hex')}"}\n`;
}

export interface WorkspaceHead {
  /** The last change of the tables that the file was written with. */
  readonly tables: string;
}

/** @throws StoreError for a first line that is not that of a workspace, or of one that a later Umberpan wrote */
export function readHead(line: string): WorkspaceHead {
  const head = parsed(`${line.replace(/,"rows":\[$/, '')}}`);
  if (head?.['format'] !== format) throw new StoreError('line 1: this is not the file of a workspace');
  const { formatVersion: version, tables: last } = head;
  if (version !== formatVersion || typeof last !== 'string' || !Object.hasOwn(migrations, last)) {
    throw new StoreError('line 1: a later Umberpan wrote this file; update Umberpan to read it');
  }
  return { tables: last };
}

export async function isEmpty(db: Kysely<Tables>): Promise<boolean> {
  for (const table of tables) {
    const { rows } = await sql`SELECT 1 FROM ${sql.table(table)} LIMIT 1`.execute(db);
    if (rows.length > 0) return false;
  }
  return true;
}

/**
 * Writes the rows of a file into an empty store, all or none.
 *
 * @param lines of the file, after the first
 * @returns how many rows there were
 * @throws StoreError naming the line that is not as it was written
 */
export function takeInWorkspace(db: Kysely<Tables>, lines: AsyncIterable<string>): Promise<number> {
  return db.transaction().execute(async (transaction) => {
    const columns = await columnsOf(transaction);
    const hash = createHash('sha256');
    const lastHash = new Map<string, string>();
    let count = 0;
    let number = 1;
    let end: Row | undefined;
    for await (const text of lines) {
      number++;
      const fail = (trouble: string): never => {
        throw new StoreError(`line ${number}: ${trouble}. Nothing was written.`);
      };
      if (end) {
        if (text === '') continue;
        fail('there is more after the end of the file');
      }
      if (text.startsWith('],')) {
        end = parsed(`{${text.slice(2)}`);
        continue;
      }
      const row = text.replace(/,$/, '');
      const said: unknown = parsed(row);
      const [table, cells]: readonly [string?, Row?] = Array.isArray(said) ? (said as [string?, Row?]) : [];
      const known = typeof table === 'string' ? columns.get(table) : undefined;
      if (!known || typeof cells !== 'object' || cells === null) return fail('this is no row of a workspace');
      const names = Object.keys(cells);
      if (names.some((name) => !known.includes(name))) fail(`${table} has columns that are not known`);
      hash.update(`${row}\n`);
      count++;
      if (table === 'event') refuseBroken(cells, lastHash, fail);
      const fault = faultOfRow(table as string, cells);
      if (fault) fail(`this row of ${table} can't be taken in: ${fault}`);
      try {
        await sql`INSERT INTO ${sql.table(table as string)} (${sql.join(names.map((name) => sql.ref(name)))}) VALUES (${sql.join(Object.values(cells))})`.execute(
          transaction,
        );
      } catch (error) {
        fail(`this row of ${table} can't be taken in (${error instanceof Error ? error.message : error})`);
      }
    }
    if (!end || end['count'] !== count) throw new StoreError('the file was cut off or added to. Nothing was written.');
    if (end['sha256'] !== hash.digest('hex')) throw new StoreError('the file was changed. Nothing was written.');
    return count;
  });
}

/** Events of a cook hang together by their hashes. */
function refuseBroken(cells: Row, lastHash: Map<string, string>, fail: (trouble: string) => never): void {
  const { cook, content, received, prevHash, hash } = cells as Readonly<Record<string, string>>;
  const link = { content, tServer: received, prevHash };
  const isText = [cook, content, received, prevHash].every((cell) => typeof cell === 'string');
  if (!isText || prevHash !== (lastHash.get(cook) ?? chainStart) || hash !== linkHash(link, sha256)) {
    fail('this event is not as it was written');
  }
  lastHash.set(cook, hash);
}

async function columnsOf(db: Kysely<Tables>): Promise<Map<string, readonly string[]>> {
  const found = new Map<string, readonly string[]>();
  for (const table of tables) {
    const { rows } = await sql<{ name: string }>`SELECT name FROM pragma_table_info(${table})`.execute(db);
    if (rows.length > 0)
      found.set(
        table,
        rows.map(({ name }) => name),
      );
  }
  return found;
}

function parsed(text: string): Row | undefined {
  try {
    const value: unknown = JSON.parse(text);
    return typeof value === 'object' && value !== null ? (value as Row) : undefined;
  } catch {
    return undefined;
  }
}
