/** The server's word that it is up. */
import { z } from './zod.ts';

export const healthSchema = z
  .object({
    status: z.literal('up'),
    version: z.string().describe("Umberpan's version."),
  })
  .meta({ id: 'Health' });
