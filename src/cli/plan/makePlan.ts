/** From options to a kit, a request and a plan, or to the refusal that names the limit. */
import type { Refusal } from '../../core/advice/limits.ts';
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

/** The request and the kit that options and a kit's file name. */
export async function whatIsAsked(texts: Texts): Promise<{ readonly request: PlanRequest; readonly kit: Kit }> {
  const { kit: file } = texts;
  let kit = defaultKit;
  if (typeof file === 'string') {
    const { kitSchema } = await import('../../api/kit.ts');
    kit = await checked(kitSchema, readJson(file, '--kit'), '--kit');
  }
  return { request: requestFrom(texts), kit: kitFrom(kit, texts) };
}

export async function planFromOptions(texts: Texts): Promise<Planning> {
  const { request, kit } = await whatIsAsked(texts);
  return makePlan(request, kit);
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
  return planFromDocument(readJson(file, '--plan'), '--plan');
}

/** @param field to name in what is wrong with it */
export async function planFromDocument(value: unknown, field: string): Promise<Planning> {
  const { planDocumentSchema } = await import('./planDocument.ts');
  const document = await checked(planDocumentSchema, value, field);
  const planning = makePlan(document.request, document.kit);
  if (JSON.stringify(document.steps) !== JSON.stringify(planning.plan.steps)) {
    console.error('The steps in the file differ from what its request gives in this kit; these are used, not those.');
  }
  return planning;
}

function makePlan(request: PlanRequest, kit: Kit): Planning {
  const prepared = prepareKit(kit);
  const planned = planFor(request, prepared);
  if (planned.kind === 'refused') throw refusedStop(planned.refusals);
  requireDone(planned.course);
  return { plan: planned.plan, course: planned.course, kit, prepared };
}

/** How a command ends over limits of safety: each with the option that it is about. */
export function refusedStop(broken: readonly Refusal[]): Stop {
  const refusals = broken.map((refusal) => ({ ...refusal, field: optionOf(refusal.field) }));
  const message = refusals.map((each) => `Refused (${each.limit}, ${each.field}): ${each.message}.`).join('\n');
  return new Stop({ kind: 'refused', message, refusals });
}

/** Ends as failed over a cook that takes too long. */
export function requireDone({ ending }: Course): void {
  if (ending === 'poured') return;
  const message = 'in this kit the cook is not done within 6 hours: it takes more power, a wider pan or less sugar';
  throw new Stop({ kind: 'failed', field: '--power', message });
}

function optionOf(field: string): string {
  if (field === 'pan.material') return '--material';
  if (field === 'spoonM3') return '--spoon';
  // A field of a list is named by its place in it too.
  return flagOf(requestFields[field.split('.')[0] as keyof PlanRequest] ?? field);
}
