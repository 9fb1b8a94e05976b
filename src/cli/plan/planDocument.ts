/** A plan as `plan --json` prints it and `simulate --plan` reads it. */
import { kitSchema } from '../../api/kit.ts';
import { planRequestSchema } from '../../api/planRequest.ts';
import { refusal } from '../../api/refusalWords.ts';
import { z } from '../../api/zod.ts';
import { ebcFromA430 } from '../../core/colour/scales.ts';
import { centralValues } from '../../core/pan/model.ts';
import type { Account } from '../../core/planning/account.ts';
import { describe } from '../../core/planning/forecast.ts';
import { cautionsFor, cautionText, hazardNamed } from '../../core/planning/handling.ts';
import { checksFor } from '../../core/planning/preflight.ts';
import type { Aimed } from './aimedPlan.ts';
import type { Planning } from './makePlan.ts';

/** What is read back; the rest follows from it and is let pass. */
export const planDocumentSchema = z.looseObject({
  format: z.literal('umberpan-plan-1', { error: refusal('umberpan-plan-1, as `umberpan plan --json` prints it') }),
  request: planRequestSchema,
  kit: kitSchema,
  steps: z.array(z.unknown()),
});

/** An aim and its odds are told when the plan was made for one. */
function aimOf(planning: Planning | Aimed) {
  if (!('landed' in planning)) return {};
  const { landed, odds, band } = planning;
  const { aimA430, offBy, hueLeft, short = null, made } = landed;
  return { aim: { a430: aimA430, ebc: ebcFromA430(aimA430), band, offBy, hueLeft, short, odds }, made };
}

export function planDocument(planning: Planning | Aimed, account?: Account) {
  const { plan, course, kit } = planning;
  const { alkali } = plan.amounts;
  const { ends } = describe(course, centralValues(kit), 1);
  return {
    format: 'umberpan-plan-1',
    request: plan.request,
    kit,
    amounts: plan.amounts,
    ...(alkali && { alkaliHazard: hazardNamed(alkali.substance, alkali.strength) }),
    fit: plan.fit,
    steps: plan.steps,
    yieldKg: plan.yieldKg,
    ...aimOf(planning),
    ...(account && { account }),
    expected: ends.map(({ a430, ...end }, at) => ({
      kind: plan.steps[at]?.kind,
      ...end,
      a430,
      ebc: ebcFromA430(a430),
    })),
    checks: checksFor(plan, false),
    cautions: [
      ...plan.cautions.map(({ message, ...caution }) => ({ ...caution, text: message })),
      ...cautionsFor(plan).map(({ head, text, ...caution }) => ({ ...caution, text: cautionText({ head, text }) })),
    ],
  };
}
