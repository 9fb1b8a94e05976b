/** The documents of `umberpan compare --json`. */

import { kitSchema } from '../../api/kit.ts';
import { z } from '../../api/zod.ts';
import { outcomeNames } from '../../core/book/explain.ts';
import { factorNames } from '../../core/book/factors.ts';
import { amount, count, eachOf, rangeSchema } from './figures.ts';

const landed = z.strictObject({
  ebc: rangeSchema.describe('Of a 10 % w/w solution.'),
  inverted: rangeSchema.describe('Share of the sucrose.'),
  waterShare: rangeSchema,
});

const outcome = eachOf(outcomeNames, amount);

const explained = z.strictObject({
  first: outcome.describe('As the model cooks it again: EBC, share of the sucrose, indices of taste.'),
  second: outcome,
  difference: eachOf(outcomeNames, rangeSchema).describe('Second less first.'),
  shares: eachOf(outcomeNames, z.array(z.strictObject({ factor: z.enum(factorNames), adds: rangeSchema }))).describe(
    'What each factor adds on the way from the first to the second, the largest first.',
  ),
  draws: count.describe('That the ranges rest on.'),
});

const rows = z.array(
  z.strictObject({
    what: z.string(),
    unit: z.string(),
    first: amount.nullable().describe('Null where it has none.'),
    second: amount.nullable(),
  }),
);

export const comparisonDocument = z
  .strictObject({
    format: z.literal('umberpan-comparison-1'),
    cooks: z
      .array(
        z.strictObject({
          file: z.string(),
          name: z.string(),
          mode: z.enum(['live', 'rehearsal']),
          landed: landed.nullable().describe('As the twin believed at the pour; null where it was not poured.'),
        }),
      )
      .length(2),
    rows,
    explained: explained.optional().describe('With --explain.'),
  })
  .meta({ id: 'ComparisonDocument' });

export const planComparisonDocument = z
  .strictObject({
    format: z.literal('umberpan-plan-comparison-1'),
    plans: z.array(z.strictObject({ file: z.string(), name: z.string(), kit: kitSchema })).length(2),
    rows,
    explained: explained.optional().describe('With --explain.'),
  })
  .meta({ id: 'PlanComparisonDocument' });
