/** A sugar as `umberpan glass` and `prime` take it, whether it was cooked or bought. */
import { z } from '../../api/zod.ts';
import { amount, rangeSchema } from './figures.ts';

export const sugarSchema = z
  .strictObject({
    name: z.string(),
    solids: rangeSchema.describe('Dry solids, share of the mass.'),
    sucrose: rangeSchema.describe('Share of the solids that is sucrose still to be inverted.'),
    fermentable: rangeSchema.describe('Share of the solids that yeast takes.'),
    specific430: rangeSchema.describe('Absorbance at 430 nm of the dry solids, L/(g cm).'),
    hueIndex: amount,
    minerals: z
      .strictObject({ sodiumGPerKg: rangeSchema, calciumGPerKg: rangeSchema })
      .nullable()
      .describe('Null where nobody said what is in it.'),
    pricePerKg: amount.nullable().describe('In the user’s own currency.'),
    stockKg: amount.nullable().describe('Null for as much as is wanted.'),
  })
  .meta({ id: 'Sugar' });
