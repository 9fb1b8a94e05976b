/** A plan as `plan --json` prints it and `simulate --plan` reads it. */
import { kitSchema } from '../../api/kit.ts';
import { planRequestSchema } from '../../api/planRequest.ts';
import { refusal } from '../../api/refusalWords.ts';
import { z } from '../../api/zod.ts';
import { ebcFromA430 } from '../../core/colour/scales.ts';
import { centralValues } from '../../core/pan/model.ts';
import { describe } from '../../core/planning/forecast.ts';
import { alkaliFacts, cautionsFor } from './cautions.ts';
import type { Planning } from './makePlan.ts';

/** What is read back; the rest follows from it and is let pass. */
export const planDocumentSchema = z.looseObject({
  format: z.literal('umberpan-plan-1', { error: refusal('umberpan-plan-1, as `umberpan plan --json` prints it') }),
  request: planRequestSchema,
  kit: kitSchema,
  steps: z.array(z.unknown()),
});

export function planDocument({ plan, course, kit }: Planning) {
  const { alkali } = plan.amounts;
  const { ends } = describe(course, centralValues(kit), 1);
  return {
    format: 'umberpan-plan-1',
    request: plan.request,
    kit,
    amounts: plan.amounts,
    ...(alkali && { alkaliHazard: alkaliFacts(alkali.substance).hazard(alkali.strength) }),
    fit: plan.fit,
    steps: plan.steps,
    yieldKg: plan.yieldKg,
    expected: ends.map(({ a430, ...end }, at) => ({
      kind: plan.steps[at]?.kind,
      ...end,
      a430,
      ebc: ebcFromA430(a430),
    })),
    cautions: [...plan.cautions.map(({ id, field, message }) => ({ id, field, text: message })), ...cautionsFor(plan)],
  };
}
