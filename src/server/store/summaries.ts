/** Summaries of cooks in the store. All of them follow from the logs: without them the next look at the Book makes them anew. */
import type { Kysely } from 'kysely';
import type { BookEntry } from '../../api/book.ts';
import type { CookRecord } from '../../api/cook.ts';
import { type Summary, summaryForm } from '../../core/book/summary.ts';
import { listCooks } from './cooks.ts';
import type { Tables } from './tables.ts';

/** A cook that has not ended, but of which nothing was heard for so long, is taken for over, ms. */
const silenceMs = 10 * 60_000;

/** @param before id of a cook: lists those that began earlier */
export async function listBook(
  db: Kysely<Tables>,
  now: string,
  limit: number,
  before?: string,
): Promise<(BookEntry & { readonly cook: CookRecord })[]> {
  const cooks = await listCooks(db, limit, before);
  const ids = cooks.map(({ id }) => id);
  const rows = ids.length > 0 ? await db.selectFrom('cook_summary').selectAll().where('cook', 'in', ids).execute() : [];
  const silent = await silentCooks(db, cooks, now);
  const kept = new Map(rows.map((row) => [row.cook, row]));
  return cooks.map((cook) => {
    const row = kept.get(cook.id);
    const current = row?.lastSeq === cook.lastSeq && row.form === summaryForm;
    const summary = row ? (JSON.parse(row.body) as Summary | null) : null;
    return { cook, summary, due: !current && (cook.ended !== null || silent.has(cook.id)) };
  });
}

/** @param summary null for a log that can't be summed up */
export async function keepSummary(
  db: Kysely<Tables>,
  cook: string,
  lastSeq: number,
  summary: Summary | null,
): Promise<void> {
  const row = { lastSeq, form: summaryForm, body: JSON.stringify(summary) };
  await db
    .insertInto('cook_summary')
    .values({ cook, ...row })
    .onConflict((conflict) => conflict.column('cook').doUpdateSet(row))
    .execute();
}

/** Cooks that were left without an end. */
export async function silentCooks(db: Kysely<Tables>, cooks: readonly CookRecord[], now: string): Promise<Set<string>> {
  const open = cooks.filter(({ ended }) => ended === null).map(({ lastSeq }) => lastSeq);
  if (open.length === 0) return new Set();
  const last = await db.selectFrom('event').select(['cook', 'received']).where('seq', 'in', open).execute();
  return new Set(
    last.filter(({ received }) => Date.parse(now) - Date.parse(received) > silenceMs).map(({ cook }) => cook),
  );
}
