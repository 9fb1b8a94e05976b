/** Everything that is said for safety: limits, classes, cautions, checks and first aid, each with where it comes from. */
import { hazards } from '../../src/core/advice/hazards.ts';
import { type Limit, limits, rules } from '../../src/core/advice/limits.ts';
import type { Sourced } from '../../src/core/advice/safety.ts';
import { defaultKit } from '../../src/core/pan/kit.ts';
import { prepareKit } from '../../src/core/pan/preparedKit.ts';
import { cautionsFor, cautionText } from '../../src/core/planning/handling.ts';
import { type Plan, planFor } from '../../src/core/planning/plan.ts';
import { checksFor } from '../../src/core/planning/preflight.ts';
import { defaultRequest, type PlanRequest } from '../../src/core/planning/request.ts';
import { emergencyNumbers, topics } from '../../src/web/places/care/statements.ts';
import { castOnly, whenBreaking, whileItSets } from '../../src/web/places/stove/setting/cautions.ts';
import { page, table } from './markdown.ts';

/** Plans that between them are told all that plans are told. */
const asked: readonly Partial<PlanRequest>[] = [
  { alkaliActive: 0.8, alkaliCarbonate: 0.1, solutionStrength: 0.02 },
  { route: 'bright', alkali: 'calciumHydroxide', alkaliGPerKg: 4, form: 'syrup' },
  { route: 'pale', form: 'syrup' },
];

export type Said = Sourced & { readonly says: string };

/** By heading, each thing that is said once. */
export function saidForSafety(): Readonly<Record<string, readonly Said[]>> {
  const plans = asked.map(planOf);
  return {
    Limits: [
      ...Object.values(limits).map((limit) => ({ ...limit, says: `${limitText(limit)}: ${limit.reason}` })),
      ...Object.values(rules).map((rule) => ({ ...rule, says: rule.reason })),
    ],
    'Classes of alkali': hazards.map((hazard) => ({ ...hazard, says: `${hazard.word}: ${hazard.says}` })),
    'Cautions of a plan': once(
      plans.flatMap((plan) => [
        ...plan.cautions.map((caution) => ({ ...caution, says: caution.message })),
        ...cautionsFor(plan).map((caution) => ({ ...caution, says: cautionText(caution) })),
      ]),
    ),
    'Checks before a cook': once(
      plans.flatMap((plan) => checksFor(plan, true)).map((check) => ({ ...check, says: check.text })),
    ),
    'While sugar sets, and when it is broken': [...whileItSets, ...castOnly, ...whenBreaking].map((caution) => ({
      ...caution,
      says: cautionText(caution),
    })),
    Care: topics.flatMap(({ statements }) => statements.map((statement) => ({ ...statement, says: statement.text }))),
    'Emergency numbers': emergencyNumbers.map(({ place, number, further, ...rest }) => ({
      ...rest,
      says: `${place}: ${number}${further ? `; ${further.name} ${further.number}` : ''}`,
    })),
  };
}

/** In the words of units, not in their codes. */
function limitText({ value, unit }: Limit): string {
  if (unit === '1') return `${100 * value} %`;
  return `${value} ${unit === 'Cel' ? '°C' : unit}`;
}

function planOf(changes: Partial<PlanRequest>): Plan {
  const planned = planFor({ ...defaultRequest, ...changes }, prepareKit(defaultKit));
  if (planned.kind === 'refused') throw new Error('the plan is refused');
  return planned.plan;
}

function once(said: readonly Said[]): readonly Said[] {
  return [...new Map(said.map((each) => [each.id, each])).values()];
}

export function safetyPage(): string {
  return page(
    'What is said for safety',
    'Limits that no plan breaks, and what is told to whoever cooks. The safety data sheet of your own alkali, local rules and the emergency services come before any of it.',
    Object.entries(saidForSafety()).map(
      ([heading, said]) =>
        `## ${heading}\n\n${table(
          ['id', 'what it says', 'source', 'written down', 'region'],
          said.map(({ id, says, source, date, region }) => [`\`${id}\``, says, source, date, region]),
        )}`,
    ),
  );
}
