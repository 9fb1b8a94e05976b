/** The document of `umberpan field --json`. */
import { kitSchema } from '../../api/kit.ts';
import { planRequestSchema } from '../../api/planRequest.ts';
import { z } from '../../api/zod.ts';
import { leverNames } from '../../core/planning/field/levers.ts';
import { amount, count, madeSchema, rangeSchema, refusalSchema, rgbSchema } from './figures.ts';

const axis = z
  .strictObject({ lever: z.enum(leverNames), low: amount, high: amount, count })
  .meta({ id: 'FieldAxis', description: 'A lever and its `count` values, evenly from low to high.' });

const spot = z
  .strictObject({
    x: amount.describe('Value of the lever across, in the unit of its name.'),
    y: amount.describe('Value of the lever that goes up.'),
    refusals: z.array(refusalSchema),
    made: madeSchema
      .extend({
        ebc: amount.describe('Of a 10 % w/w solution.'),
        drop: rgbSchema.describe('A drop on a white plate.'),
        glass: rgbSchema.describe('1 cm of the 10 % w/w solution.'),
      })
      .nullable()
      .describe('Null where it is refused, or not done within 6 hours.'),
    a430Range: rangeSchema
      .nullable()
      .describe('A430 that 8 in 10 cooks of it land at; null where it is not known, as where nothing is made.'),
  })
  .meta({ id: 'FieldSpot' });

export const fieldDocument = z
  .strictObject({
    format: z.literal('umberpan-field-1'),
    request: planRequestSchema.describe('What all have in common; its own values of the two levers do not count.'),
    kit: kitSchema,
    x: axis,
    y: axis,
    sucroseKg: amount.describe('Weighed in for each of them.'),
    rows: z.array(z.array(spot)).describe('From the lowest value of y up, each from the lowest of x.'),
  })
  .meta({ id: 'FieldDocument' });
