/** From options to a kit, a request and a plan, or to the refusal that names the limit. */
import type { Course } from '../../core/pan/course.ts';
import { defaultKit, type Kit } from '../../core/pan/kit.ts';
import { type PreparedKit, prepareKit } from '../../core/pan/preparedKit.ts';
import { type Plan, planFor } from '../../core/planning/plan.ts';
import type { PlanRequest } from '../../core/planning/request.ts';
import { flagOf, type Texts } from '../input.ts';
import { Stop } from '../stop.ts';
import { kitFrom, kitInputs } from './kitOptions.ts';
import { checked, readJson } from './readDocument.ts';
import { requestFields, requestFrom, requestInputs } from './requestOptions.ts';

export interface Planning {
  readonly plan: Plan;
  readonly course: Course;
  readonly kit: Kit;
  readonly prepared: PreparedKit;
}

export async function planFromOptions(texts: Texts): Promise<Planning> {
  const { kit: file } = texts;
  let kit = defaultKit;
  if (typeof file === 'string') {
    const { kitSchema } = await import('../../api/kit.ts');
    kit = await checked(kitSchema, readJson(file, '--kit'), '--kit');
  }
  return makePlan(requestFrom(texts), kitFrom(kit, texts));
}

/** A plan printed by `plan --json`, made again from its request and kit. */
export async function planFromFile(file: string, texts: Texts): Promise<Planning> {
  const spoken = [...Object.keys(requestInputs), ...Object.keys(kitInputs), 'kit'].find(
    (name) => texts[name] !== undefined,
  );
  if (spoken) {
    const message = `--plan already says what is cooked and where: leave out ${flagOf(spoken)}`;
    throw new Stop({ kind: 'misused', field: flagOf(spoken), message });
  }
  const { planDocumentSchema } = await import('./planDocument.ts');
  const document = await checked(planDocumentSchema, readJson(file, '--plan'), '--plan');
  const planning = makePlan(document.request, document.kit);
  if (JSON.stringify(document.steps) !== JSON.stringify(planning.plan.steps)) {
    console.error('The steps in the file differ from what its request gives in this kit; these are used, not those.');
  }
  return planning;
}

function makePlan(request: PlanRequest, kit: Kit): Planning {
  const prepared = prepareKit(kit);
  const planned = planFor(request, prepared);
  if (planned.kind === 'refused') {
    const refusals = planned.refusals.map((refusal) => ({ ...refusal, field: optionOf(refusal.field) }));
    const message = refusals.map((each) => `Refused (${each.limit}, ${each.field}): ${each.message}.`).join('\n');
    throw new Stop({ kind: 'refused', message, refusals });
  }
  if (planned.course.ending === 'out of time') {
    const message = 'in this kit the cook is not done within 6 hours: it takes more power, a wider pan or less sugar';
    throw new Stop({ kind: 'failed', field: '--power', message });
  }
  return { plan: planned.plan, course: planned.course, kit, prepared };
}

function optionOf(field: string): string {
  if (field === 'pan.material') return '--material';
  if (field === 'spoonM3') return '--spoon';
  return flagOf(requestFields[field as keyof PlanRequest] ?? field);
}
