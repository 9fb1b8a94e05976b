/** Puts the demo among what is kept, and takes it out again in one act. Its records are ordinary ones, known by their ids. */
import type { Kysely } from 'kysely';
import { sql } from 'kysely';
import type { Demo } from '../../api/demo.ts';
import type { EventOf } from '../../core/log/event.ts';
import type { Logbook } from '../cooking/logbook.ts';
import { findCook } from '../store/cooks.ts';
import { createGlass } from '../store/glasses.ts';
import { createKit } from '../store/kits.ts';
import { createNote } from '../store/lotNotes.ts';
import { createLot } from '../store/lots.ts';
import { createPlan } from '../store/plans.ts';
import type { Tables } from '../store/tables.ts';
import { createTasting } from '../store/tastings.ts';
import { cooks, demoId, demoIdsOf, glasses, kits, lots, plans } from './club.ts';
import { glassRecord, lotRecord, notesOf, tastingRecord } from './records.ts';
import { type DemoCooked, simulatedCook } from './simulated.ts';

/** What is left of it: somebody may have taken a part away. Real cooks come before the rehearsal. */
export async function stateOfDemo(db: Kysely<Tables>): Promise<Demo> {
  const idsIn = async (table: 'kit' | 'cook' | 'lot' | 'glass'): Promise<string[]> => {
    let query = db
      .selectFrom(table)
      .select('id')
      .where('id', 'like', `${demoIdsOf(table)}%`)
      .orderBy('id');
    if (table === 'cook') query = query.where('cook.mode', '=', 'live');
    return (await query.execute()).map(({ id }) => id);
  };
  const [kitIds, ...[cookIds, lotIds, glassIds]] = await Promise.all([
    idsIn('kit'),
    idsIn('cook'),
    idsIn('lot'),
    idsIn('glass'),
  ]);
  return { isIn: kitIds.length > 0, cooks: cookIds, lots: lotIds, glasses: glassIds };
}

async function isWhole(db: Kysely<Tables>): Promise<boolean> {
  const { isIn, ...there } = await stateOfDemo(db);
  const live = cooks.filter(({ mode }) => mode === 'live');
  return (
    isIn &&
    there.cooks.length === live.length &&
    there.lots.length === lots.length &&
    there.glasses.length === glasses.length
  );
}

/** What is there already stays as it is: after an interruption the rest comes with the next try. */
export async function putInDemo(db: Kysely<Tables>, logbook: Logbook, now: Date): Promise<void> {
  if (await isWhole(db)) return;
  const nowMs = now.getTime();
  const cooked: DemoCooked[] = [];
  for (const number of cooks.keys()) {
    // Each takes some tenths of a second of the machine: others get their answers in between.
    await new Promise(setImmediate);
    cooked.push(simulatedCook(number, nowMs));
  }
  for (const [i, kit] of kits.entries()) await createKit(db, demoId('kit', i), kit, now);
  for (const [i, { kit, request }] of plans.entries()) {
    await createPlan(db, demoId('plan', i), { kitId: demoId('kit', kit), request }, now);
  }
  for (const [i, { events }] of cooked.entries()) {
    if (await findCook(db, demoId('cook', i))) continue;
    const incoming = events.map((event) => ({ event, tServer: event.tDevice }));
    await logbook.takeIn(events[0] as EventOf<'begun'>, incoming);
  }
  const alkalis = [];
  let notes = 0;
  for (const [i, lot] of lots.entries()) {
    const lotId = demoId('lot', i);
    const record = lotRecord(lot, cooked[lot.cook]);
    alkalis.push(record.alkali);
    await createLot(db, lotId, record, now);
    for (const note of notesOf(lot, cooked[lot.cook])) {
      await createNote(db, { id: demoId('lot_note', notes++), lotId, note }, now);
    }
  }
  let tastings = 0;
  for (const [i, glass] of glasses.entries()) {
    const glassId = demoId('glass', i);
    await createGlass(db, glassId, glassRecord(glass, alkalis[glass.lot], nowMs), now);
    for (const tasted of glass.tastings) {
      const tasting = tastingRecord(tasted, glass.bottledDaysAgo ?? 0, nowMs);
      await createTasting(db, { id: demoId('tasting', tastings++), glassId, tasting }, now);
    }
  }
}

/** Takes out all that came with the demo, and what was noted of its lots and glasses since; all or none. */
export function takeOutDemo(db: Kysely<Tables>): Promise<void> {
  return db.transaction().execute(async (transaction) => {
    const remove = (table: keyof Tables, column: string, kind: Parameters<typeof demoIdsOf>[0]) =>
      sql`DELETE FROM ${sql.table(table)} WHERE ${sql.ref(column)} LIKE ${`${demoIdsOf(kind)}%`}`.execute(transaction);
    await remove('tasting', 'glass', 'glass');
    await remove('glass', 'id', 'glass');
    await remove('lot_note', 'lot', 'lot');
    await remove('lot', 'id', 'lot');
    await remove('cook_summary', 'cook', 'cook');
    await remove('event', 'cook', 'cook');
    await remove('cook', 'id', 'cook');
    await remove('plan', 'id', 'plan');
    await remove('kit', 'id', 'kit');
  });
}
