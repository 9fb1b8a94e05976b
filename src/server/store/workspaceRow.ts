/** Whether a row of a workspace's file is a record that could be served again. What events say is proved by their hashes instead. */
import { cookRecordSchema } from '../../api/cook.ts';
import { fieldErrors } from '../../api/fieldError.ts';
import { glassRecordSchema } from '../../api/glass.ts';
import { kitRecordSchema } from '../../api/kit.ts';
import { lotRecordSchema } from '../../api/lot.ts';
import { noteRecordSchema } from '../../api/lotNote.ts';
import { planRecordSchema } from '../../api/plan.ts';
import { tastingRecordSchema } from '../../api/tasting.ts';
import type { z } from '../../api/zod.ts';

type Cells = Readonly<Record<string, unknown>>;

const records: Readonly<Record<string, (cells: Cells) => z.ZodSafeParseResult<unknown>>> = {
  kit: (cells) => kitRecordSchema.safeParse({ ...cells, kit: inside(cells['body']) }),
  plan: (cells) =>
    planRecordSchema.safeParse({ ...cells, kitId: cells['kit'] ?? null, request: inside(cells['request']) }),
  cook: (cells) => cookRecordSchema.safeParse({ ...cells, lastSeq: 0 }),
  lot: (cells) => lotRecordSchema.safeParse({ ...cells, lot: inside(cells['body']) }),
  lot_note: (cells) => noteRecordSchema.safeParse({ ...cells, note: inside(cells['body']) }),
  glass: (cells) => glassRecordSchema.safeParse({ ...cells, glass: inside(cells['body']) }),
  tasting: (cells) =>
    tastingRecordSchema.safeParse({ ...cells, glassId: cells['glass'], tasting: inside(cells['body']) }),
};

/** What is wrong with it, in words; undefined when nothing is. */
export function faultOfRow(table: string, cells: Cells): string | undefined {
  const error = Object.hasOwn(records, table) ? records[table](cells).error : undefined;
  return error && fieldErrors(error)[0]?.message;
}

function inside(text: unknown): unknown {
  try {
    return JSON.parse(String(text));
  } catch {
    return undefined;
  }
}
