/** What commands print with `--json`, each with the schema of its document. */
import { z } from '../../api/zod.ts';
import { exitCodes } from '../stop.ts';
import {
  answerDocument,
  colourDocument,
  parametersDocument,
  photographedDocument,
  primeDocument,
  propertiesDocument,
} from './answers.ts';
import { comparisonDocument, planComparisonDocument } from './comparison.ts';
import { fieldDocument } from './field.ts';
import { refusalSchema } from './figures.ts';
import { badLine, doneLine, observedLine } from './follow.ts';
import { glassAim, glassBeer, glassSwap, glassWays } from './glass.ts';
import { checkDocument, importPreview, learnDocument } from './learning.ts';
import { planDocument } from './plan.ts';
import { rehearsalDocument } from './rehearsal.ts';
import { simulationDocument } from './simulation.ts';
import { doctorDocument, restored, restoredBefore, trustDocument, trustRemoved } from './upkeep.ts';

const problem = z
  .strictObject({
    error: z.strictObject({
      kind: z.enum(Object.keys(exitCodes) as [keyof typeof exitCodes, ...(keyof typeof exitCodes)[]]),
      message: z.string(),
      field: z.string().optional().describe('The option or the field that it is about.'),
      value: z.string().optional(),
      allowed: z.string().optional(),
      refusals: z.array(refusalSchema).optional(),
    }),
  })
  .meta({ id: 'ErrorDocument' });

/** By command, and by what was asked of it; the last stands on standard error when a command does not end as done. */
export const documents = {
  plan: planDocument,
  field: fieldDocument,
  simulate: simulationDocument,
  rehearse: rehearsalDocument,
  'follow, of a measurement': observedLine,
  'follow, of a deed': doneLine,
  'follow, of a bad line': badLine,
  'import --preview': importPreview,
  'check CHECK': checkDocument,
  learn: learnDocument,
  compare: comparisonDocument,
  'compare, of two plans': planComparisonDocument,
  colour: colourDocument,
  'colour --photo': photographedDocument,
  glass: glassBeer,
  'glass --swap': glassSwap,
  'glass, a wish that sugars meet': glassWays,
  'glass, a wish that none meets': glassAim,
  prime: primeDocument,
  'handbook PROPERTY': answerDocument,
  'handbook list': propertiesDocument,
  'handbook parameters': parametersDocument,
  restore: restored,
  'restore, of what is there already': restoredBefore,
  trust: trustDocument,
  'trust --remove': trustRemoved,
  doctor: doctorDocument,
  'any that fails': problem,
} as const satisfies Record<string, z.ZodType>;

export function documentsJsonSchema() {
  const { $schema, $defs } = z.toJSONSchema(z.object(documents), { io: 'input' });
  return { $schema, $id: 'urn:umberpan:documents:1', $defs };
}
