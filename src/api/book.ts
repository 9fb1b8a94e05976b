/** The Book's list: each cook with what its log comes to. */
import type { Summary } from '../core/book/summary.ts';
import type { StepKind } from '../core/pan/steps.ts';
import { cookRecordSchema } from './cook.ts';
import { oneOf } from './field.ts';
import { z } from './zod.ts';

const stepKinds = ['dissolve', 'climb', 'invert', 'brown', 'roast', 'cast', 'letDown'] as const satisfies StepKind[];

const range = (meaning: string) =>
  z
    .object({ low: z.number(), mid: z.number(), high: z.number() })
    .describe(`${meaning} The marks below which 10, 50 and 90 % lie.`);

const summarySchema = z
  .object({
    endS: z.number().describe('The pour, or the last that was noted, s since the cook began.'),
    poured: z.boolean(),
    landed: z
      .object({
        ebc: range('EBC of a 10 % w/w solution.'),
        inverted: range('Sucrose that is inverted, share of its moles.'),
        waterShare: range('Water, share of the mass.'),
      })
      .nullable()
      .describe('What the twin believed at the pour; null for a cook that was not poured.'),
    hottestC: z.number().nullable().describe('Highest reading, C.'),
    readings: z.int(),
    spoonfuls: z.number(),
    steps: z.array(z.object({ kind: oneOf(stepKinds), startS: z.number() })),
    line: z
      .object({ timeS: z.array(z.number()), celsius: z.array(z.number()), colours: z.array(z.string()) })
      .describe('What the twin believed, and of each fourth time the syrup’s colour as a film.'),
    facts: z
      .array(z.object({ what: z.string(), unit: z.string(), digits: z.int(), value: z.number() }))
      .describe('What went in, how each step went, and what came out.'),
  })
  .meta({ id: 'CookSummary' });

export const bookEntrySchema = z
  .object({
    cook: cookRecordSchema,
    summary: summarySchema.nullable().describe('Null until the log of a cook that is over has been gone through.'),
    due: z.boolean().describe('Whether a summary, or a newer one, is being made.'),
  })
  .meta({ id: 'BookEntry' });

export interface BookEntry extends Omit<z.infer<typeof bookEntrySchema>, 'summary'> {
  readonly summary: Summary | null;
}
