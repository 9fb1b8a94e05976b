/**
 * Proves a copy of the store by reading all of it: SQLite's own check of the small tables, and the chain of hashes of every
 * cook, event by event. The check alone proves structure and not content; and it would hold up the whole server for a
 * large log, which is read here in short turns instead.
 */
import { setImmediate } from 'node:timers/promises';
import { chainStart, linkHash } from '../../core/log/hashChain.ts';
import { sha256 } from '../sha256.ts';
import type { Database } from './sqlite.ts';
import { openDatabase } from './sqlite.ts';

/** Events that are read in one turn: a few milliseconds. */
const inOneTurn = 500;

interface Link {
  readonly seq: number;
  readonly cook: string;
  readonly content: string;
  readonly received: string;
  readonly prevHash: string;
  readonly hash: string;
}

/**
 * @returns places of events that are not as they were written, or do not follow from the one before
 * @throws Error when the copy does not read back
 */
export async function proveCopy(file: string): Promise<number[]> {
  const copy = openDatabase(file);
  try {
    // Leaves the write-ahead log, so that the backup is one file.
    copy.exec('PRAGMA journal_mode = DELETE');
    const tables = copy.prepare(`SELECT name FROM sqlite_schema WHERE type = 'table'`).all([]) as { name: string }[];
    for (const { name } of tables) if (name !== 'event') check(copy, name, file);
    return tables.some(({ name }) => name === 'event') ? await damagedEvents(copy, file) : [];
  } finally {
    copy.close();
  }
}

function check(copy: Database, table: string, file: string) {
  const [row] = copy.prepare(`PRAGMA quick_check("${table}")`).all([]) as [{ quick_check: string }];
  if (row.quick_check !== 'ok') throw new Error(`The backup ${file} does not read back: ${row.quick_check}`);
}

async function damagedEvents(copy: Database, file: string): Promise<number[]> {
  const damaged: number[] = [];
  const chains = new Map<string, { prevHash: string; read: number }>();
  let seq = 0;
  for (let links = linksAfter(copy, seq); links.length > 0; links = linksAfter(copy, seq)) {
    for (const { received: tServer, cook, ...link } of links) {
      const chain = chains.get(cook) ?? { prevHash: chainStart, read: 0 };
      const isWhole = link.prevHash === chain.prevHash && link.hash === linkHash({ ...link, tServer }, sha256);
      if (!isWhole) damaged.push(link.seq);
      chains.set(cook, { prevHash: link.hash, read: chain.read + 1 });
      seq = link.seq;
    }
    await setImmediate();
  }
  for (const { id } of copy.prepare('SELECT id FROM cook').all([]) as { id: string }[]) {
    const [{ n }] = copy.prepare('SELECT count(*) AS n FROM event WHERE cook = ?').all([id]) as [{ n: number }];
    if (n !== (chains.get(id)?.read ?? 0))
      throw new Error(`The backup ${file} does not read back: events of ${id} are lost`);
    await setImmediate();
  }
  return damaged;
}

function linksAfter(copy: Database, seq: number): Link[] {
  const links = 'SELECT seq, cook, content, received, prevHash, hash FROM event';
  return copy.prepare(`${links} WHERE seq > ? ORDER BY seq LIMIT ${inOneTurn}`).all([seq]) as Link[];
}
