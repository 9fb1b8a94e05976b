/** What documents of the command line are made of. */
import { z } from '../../api/zod.ts';

export const amount = z.number();

export const rangeSchema = z
  .strictObject({ low: amount, mid: amount, high: amount })
  .meta({ id: 'Range', description: 'The marks below which 10, 50 and 90 % of values lie.' });

export const rgbSchema = z.strictObject({ r: amount, g: amount, b: amount, clipped: z.boolean() }).meta({
  id: 'ScreenColour',
  description: 'sRGB, 0 to 255; clipped: darker or more saturated than a screen can show.',
});

export const cautionSchema = z
  .strictObject({
    id: z.string(),
    level: z.string().optional(),
    field: z.string().optional(),
    text: z.string(),
    source: z.string().optional(),
  })
  .meta({ id: 'Caution' });
