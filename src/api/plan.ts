/** A plan as the store keeps it: what was asked for, and the kit that it was made for. It never changes. */
import { exactly, recordId } from './field.ts';
import { planRequestSchema } from './planRequest.ts';
import { z } from './zod.ts';

export const newPlanSchema = exactly({
  kitId: recordId().nullable().describe('The kit; null for a kitchen that is not kept.'),
  request: planRequestSchema,
}).meta({ id: 'NewPlan' });

export const planRecordSchema = z
  .object({
    id: recordId(),
    created: z.iso.datetime(),
    kitId: recordId().nullable(),
    request: planRequestSchema,
  })
  .meta({ id: 'PlanRecord' });

export type NewPlan = z.infer<typeof newPlanSchema>;
export type PlanRecord = z.infer<typeof planRecordSchema>;
