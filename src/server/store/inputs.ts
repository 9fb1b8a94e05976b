/** Inputs in the store: a handful, read whole. */
import type { Kysely } from 'kysely';
import type { Input } from '../../api/input.ts';
import type { Tables } from './tables.ts';

export interface KeptInput {
  readonly id: string;
  readonly input: Input;
}

export async function allInputs(db: Kysely<Tables>): Promise<KeptInput[]> {
  const rows = await db.selectFrom('input').selectAll().orderBy('created').orderBy('id').execute();
  return rows.map(({ id, body }) => ({ id, input: JSON.parse(body) as Input }));
}

export async function keepInput(db: Kysely<Tables>, { id, input }: KeptInput, now: Date): Promise<void> {
  const body = JSON.stringify(input);
  await db
    .insertInto('input')
    .values({ id, body, created: now.toISOString() })
    .onConflict((conflict) => conflict.column('id').doUpdateSet({ body }))
    .execute();
}

export async function removeInput(db: Kysely<Tables>, id: string): Promise<void> {
  await db.deleteFrom('input').where('id', '=', id).execute();
}
