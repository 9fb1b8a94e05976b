/** Whether the demo is among what is kept, and where to look. */
import { recordId } from './field.ts';
import { z } from './zod.ts';

const ids = z.array(recordId());

export const demoSchema = z
  .object({
    isIn: z.boolean(),
    cooks: ids.describe('Cooks of the demo, those to lay over one another first; none while it is not in.'),
    lots: ids,
    glasses: ids,
  })
  .meta({ id: 'Demo' });
export type Demo = z.infer<typeof demoSchema>;
