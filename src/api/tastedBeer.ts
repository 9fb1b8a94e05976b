/** A beer that was tasted, as the Book needs it: how it was liked each time, and which cooks its sugars came from. */
import { likingRange } from '../core/beer/tasting.ts';
import { countIn, numberIn, recordId } from './field.ts';
import { z } from './zod.ts';

export const tastedBeerSchema = z
  .object({
    glassId: recordId(),
    name: z.string(),
    likings: z.array(countIn(likingRange)).describe('0 not at all to 10; one for each tasting that said it.'),
    cooks: z
      .array(z.object({ cookId: recordId(), share: numberIn([0, 1]) }))
      .describe('Each with its share of the mass of all sugar in the beer.'),
  })
  .meta({ id: 'TastedBeer' });

export type TastedBeerRecord = z.infer<typeof tastedBeerSchema>;
