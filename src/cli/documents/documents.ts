/** What commands print with `--json`, each with the schema of its document. */
import { z } from '../../api/zod.ts';
import { exitCodes } from '../stop.ts';
import { answerDocument, colourDocument, parametersDocument, primeDocument, propertiesDocument } from './answers.ts';
import { planDocument } from './plan.ts';
import { simulationDocument } from './simulation.ts';

const problem = z
  .strictObject({
    error: z.strictObject({
      kind: z.enum(Object.keys(exitCodes) as [keyof typeof exitCodes, ...(keyof typeof exitCodes)[]]),
      message: z.string(),
      field: z.string().optional().describe('The option or the field that it is about.'),
      value: z.string().optional(),
      allowed: z.string().optional(),
      refusals: z
        .array(z.strictObject({ limit: z.string(), field: z.string(), message: z.string() }))
        .optional()
        .describe('Limits of safety that are broken.'),
    }),
  })
  .meta({ id: 'ErrorDocument' });

/** By command; the last stands on standard error when a command does not end as done. */
export const documents = {
  plan: planDocument,
  simulate: simulationDocument,
  colour: colourDocument,
  prime: primeDocument,
  'handbook PROPERTY': answerDocument,
  'handbook list': propertiesDocument,
  'handbook parameters': parametersDocument,
  'any that fails': problem,
} as const satisfies Record<string, z.ZodType>;

export function documentsJsonSchema() {
  const { $schema, $defs } = z.toJSONSchema(z.object(documents), { io: 'input' });
  return { $schema, $id: 'urn:umberpan:documents:1', $defs };
}
