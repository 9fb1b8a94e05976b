/** A cook as the store gives it: what lists show, and what its log comes to. */
import { recordId } from './field.ts';
import { z } from './zod.ts';

export const cookRecordSchema = z
  .object({
    id: recordId(),
    name: z.string(),
    mode: z.enum(['live', 'rehearsal']),
    begun: z.iso.datetime(),
    ended: z.enum(['done', 'abandoned']).nullable(),
    lastSeq: z.int().describe('Place of its newest event in the store.'),
  })
  .meta({ id: 'CookRecord' });

export type CookRecord = z.infer<typeof cookRecordSchema>;

export const cookSnapshotSchema = z
  .object({
    cook: cookRecordSchema,
    state: z.looseObject({}).describe('The fold of all events up to `lastSeq`.'),
    lastSeq: z.int(),
    damaged: z.array(z.int()).describe('Places in the store whose event is not as it was written, and is left out.'),
    tServer: z.iso.datetime({ precision: 3 }),
  })
  .meta({ id: 'CookSnapshot' });

/** Whether what comes in reaches the disk. While it does not, it is held in memory, shown, and not acknowledged. */
export const storageStateSchema = z
  .object({
    state: z.enum(['well', 'failing']),
    reason: z.string().nullable(),
    waiting: z.int().describe('Events held in memory until they can be written.'),
    dropped: z.int().describe('Events that there was no more room for.'),
  })
  .meta({ id: 'StorageState' });

export type StorageState = z.infer<typeof storageStateSchema>;
