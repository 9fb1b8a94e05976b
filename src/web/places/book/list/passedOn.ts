/** What a file is that another Umberpan passed on: the log of a cook, a report that carries its plan, or a plan. Told by what is in it. */
import { fieldErrors } from '../../../../api/fieldError.ts';
import { planRequestSchema } from '../../../../api/planRequest.ts';
import { planOfReport } from '../../../../core/book/report/planOf.ts';
import type { PlanRequest } from '../../../../core/planning/request.ts';

export type PassedOn =
  | { readonly kind: 'cook' }
  | { readonly kind: 'plan'; readonly request: PlanRequest }
  | { readonly kind: 'refused'; readonly why: string };

/** More than these would only hide them. */
const mostTold = 3;
const allowed = 'allowed: the log file of a cook, a report of one, or a plan as JSON';

export function passedOn(text: string): PassedOn {
  const plan = planOfReport(text);
  if (plan !== undefined) return planIn(parsed(plan));
  const end = text.indexOf('\n');
  const about = parsed(end < 0 ? text : text.slice(0, end));
  // What else has to be right about a log is the server's to say, line by line.
  return about?.['format'] === 'umberpan-cook' ? { kind: 'cook' } : planIn(parsed(text));
}

function planIn(said: Fields | undefined): PassedOn {
  if (said?.['format'] === 'umberpan-workspace') {
    return refused(`it is a whole workspace, for “Put everything in”; ${allowed}`);
  }
  if (said?.['format'] !== 'umberpan-plan-1') return refused(`it is nothing that is passed on; ${allowed}`);
  const { data, error } = planRequestSchema.safeParse(said['request']);
  if (data) return { kind: 'plan', request: data };
  const wrong = fieldErrors(error)
    .slice(0, mostTold)
    .map(({ message }) => message);
  return refused(`its plan can’t be made: ${wrong.join('; ')}`);
}

const refused = (why: string): PassedOn => ({ kind: 'refused', why });

type Fields = Readonly<Record<string, unknown>>;

function parsed(text: string): Fields | undefined {
  try {
    const value: unknown = JSON.parse(text);
    return typeof value === 'object' && value !== null ? (value as Fields) : undefined;
  } catch {
    return undefined;
  }
}
