/** Everything that is said for safety: limits, classes, cautions, checks and first aid, each with where it comes from. */
import { hazards } from '../../src/core/advice/hazards.ts';
import { type Limit, limits, rules } from '../../src/core/advice/limits.ts';
import type { Sourced } from '../../src/core/advice/safety.ts';
import { boughtSugar, tableSugar } from '../../src/core/beer/boughtSugar.ts';
import { gramsPerLitreOfVolume } from '../../src/core/beer/carbonDioxide.ts';
import { givenBy } from '../../src/core/beer/given.ts';
import { type Glass, usualPathCm, usualRest } from '../../src/core/beer/glass.ts';
import { glassCautions } from '../../src/core/beer/glassCautions.ts';
import { mineralGuidance } from '../../src/core/beer/mineralGuidance.ts';
import { primingFor, usualPriming } from '../../src/core/beer/priming.ts';
import { primingCautions } from '../../src/core/beer/primingCautions.ts';
import { vessels } from '../../src/core/beer/vessels.ts';
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

/** A beer that is told all that beers are told, but for its minerals: much sugar at every time, one of it very dark and of unknown minerals. */
const beer: Glass = {
  rest: { volumeL: 10, gravity: 1.04, a430PerCm: 0, ...usualRest },
  doses: [
    { sugar: boughtSugar({ name: 'a sugar', solids: 0.8, specific430AsIs: 0.8 }), massKg: 0.4, added: 'kettle' },
    { sugar: tableSugar, massKg: 0.4, added: 'late' },
    { sugar: tableSugar, massKg: 0.4, added: 'fermenter' },
  ],
  kettleLossL: 0,
  pathCm: usualPathCm,
};

export type Said = Sourced & { readonly says: string };

/** By heading, each thing that is said once. */
export function saidForSafety(): Readonly<Record<string, readonly Said[]>> {
  const plans = asked.map(planOf);
  return {
    Limits: [
      ...Object.values(limits).map((limit) => ({ ...limit, says: `${limitText(limit)}: ${limit.reason}` })),
      ...Object.values(rules).map((rule) => ({ ...rule, says: rule.reason })),
      ...Object.values(vessels).map((vessel) => ({ ...vessel, says: `${vessel.most} volumes: ${vessel.why}` })),
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
    'Cautions of a beer': [
      ...mineralGuidance.map((each) => ({
        ...each,
        says: `${each.metal}, ${each.fromMgPerL} mg/L and more ${each.of === 'added' ? 'added' : 'in all'}: ${each.meaning}`,
      })),
      ...glassCautions(beer, givenBy(beer)).map((caution) => ({ ...caution, says: caution.text })),
    ],
    'Cautions of priming': cautionsNearTheLimit().map((caution) => ({ ...caution, says: caution.text })),
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

function cautionsNearTheLimit() {
  const { vessel } = usualPriming;
  const wishGPerL = vessels[vessel].most * gramsPerLitreOfVolume;
  const priming = primingFor({ ...usualPriming, volumeL: 20, beerC: 20, wishGPerL }, tableSugar);
  if (priming.kind !== 'primed') throw new Error('the beer is not primed');
  return primingCautions(priming.numbers, vessel);
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
