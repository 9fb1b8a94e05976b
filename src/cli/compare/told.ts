/** What a file tells, as it is laid beside another: a cook by its log, or a plan. */
import { type AsCooked, asCooked } from '../../core/book/asCooked.ts';
import { type DifferenceRow, differencesOf, type Fact, factsOf, rowsBeside } from '../../core/book/differences.ts';
import { followedBy } from '../../core/book/following.ts';
import { type Landed, landedOf } from '../../core/book/landed.ts';
import { planFacts } from '../../core/book/planFacts.ts';
import { planOfReport } from '../../core/book/report/planOf.ts';
import { type CookState, foldCook } from '../../core/log/fold.ts';
import { centralValues } from '../../core/pan/model.ts';
import { describe } from '../../core/planning/forecast.ts';
import { cookFrom } from '../cook/cookIn.ts';
import { type Planning, planFromDocument } from '../plan/makePlan.ts';
import { jsonFrom } from '../plan/readDocument.ts';
import { Stop } from '../stop.ts';
import { textIn } from '../textIn.ts';

interface Told {
  readonly file: string;
  readonly name: string;
  readonly facts: readonly Fact[];
  /** For the model to cook it again; nothing where too little is told. */
  readonly recipe: () => AsCooked | undefined;
}

export interface ToldCook extends Told {
  readonly kind: 'cook';
  readonly state: CookState;
  readonly landed: Landed | null;
}

export interface ToldPlan extends Told {
  readonly kind: 'plan';
  readonly planning: Planning;
}

export type ToldPair = readonly [ToldCook, ToldCook] | readonly [ToldPlan, ToldPlan];

/** @throws Stop where a file tells nothing, or the two tell different things */
export async function toldPair(first: string, second: string): Promise<ToldPair> {
  const [one, other] = [await told(first, 'first'), await told(second, 'second')];
  if (one.kind === 'cook' && other.kind === 'cook') return [one, other];
  if (one.kind === 'plan' && other.kind === 'plan') return [one, other];
  throw new Stop({
    kind: 'misused',
    field: 'second',
    value: second,
    message: `${first} tells a ${one.kind} and ${second} a ${other.kind}; allowed: two cooks, or two plans`,
  });
}

export function rowsOf([first, second]: ToldPair): readonly DifferenceRow[] {
  const facts = [first.facts, second.facts];
  return first.kind === 'cook' ? differencesOf(facts) : rowsBeside(facts);
}

async function told(file: string, field: string): Promise<ToldCook | ToldPlan> {
  const fail = (trouble: string): never => {
    throw new Stop({ kind: 'misused', field, value: file, message: `${file}: ${trouble}` });
  };
  const text = textIn(file, fail);
  return isDocument(text)
    ? toldPlan(file, await planFromDocument(jsonFrom(text, fail), file))
    : toldCook(file, text, fail);
}

/** A plan is one document, or a report that carries one; a log is many, a line each. */
function isDocument(text: string): boolean {
  if (planOfReport(text) !== undefined) return true;
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}

function toldPlan(file: string, planning: Planning): ToldPlan {
  const { plan, course, kit, prepared } = planning;
  const { ends } = describe(course, centralValues(kit), 1);
  const recipe = { kit, prepared, charge: plan.amounts.charge, steps: plan.steps };
  return {
    kind: 'plan',
    file,
    name: plan.request.name,
    facts: planFacts(plan, ends),
    recipe: () => recipe,
    planning,
  };
}

function toldCook(file: string, text: string, fail: (trouble: string) => never): ToldCook {
  const state = foldCook(cookFrom(text, file).events);
  const followed = followedBy(state);
  if (!followed) return fail('the log does not say how the cook began');
  const { request } = state.begun?.body ?? { request: {} };
  const name = 'name' in request ? String(request.name) : file;
  const landed = landedOf(followed) ?? null;
  return { kind: 'cook', file, name, state, landed, facts: factsOf(state, landed), recipe: () => asCooked(state) };
}
