/** A tasting as it comes in through the API, and as the store gives it back. Each belongs to a glass, and by that to lots and cooks. */
import { likingRange, weeksRange } from '../core/beer/tasting.ts';
import { longestNote } from '../core/lot/taste.ts';
import { countIn, exactly, numberIn, recordId } from './field.ts';
import { strengthsSchema } from './lotNote.ts';
import { refusal } from './refusalWords.ts';
import { z } from './zod.ts';

const noteRefused = refusal(`up to ${longestNote} characters`);

export const newTastingSchema = exactly({
  tastedAt: z.iso
    .datetime({ precision: 3, error: 'is not a time; allowed: RFC 3339 in UTC with milliseconds' })
    .describe('When it was tasted.'),
  weeks: numberIn(weeksRange).nullable().describe('Since it was bottled; null when nobody knows.'),
  strengths: strengthsSchema,
  liking: countIn(likingRange).nullable().describe('0 not at all to 10; null when it was not said.'),
  note: z.string({ error: noteRefused }).max(longestNote, { error: noteRefused }),
}).meta({ id: 'NewTasting' });

export const tastingRecordSchema = z
  .object({ id: recordId(), glassId: recordId(), created: z.iso.datetime(), tasting: newTastingSchema })
  .meta({ id: 'TastingRecord' });

export type NewTasting = z.infer<typeof newTastingSchema>;
export type TastingRecord = z.infer<typeof tastingRecordSchema>;
