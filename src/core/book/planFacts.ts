/** A plan as rows of numbers, so that two of them can be held beside each other. */
import { ebcFromA430 } from '../colour/scales.ts';
import type { StepEnd } from '../planning/forecast.ts';
import { alkaliFacts } from '../planning/handling.ts';
import { holdsOf } from '../planning/holds.ts';
import type { Plan } from '../planning/plan.ts';
import { usualDissolveC } from '../planning/request.ts';
import { type Fact, fact } from './differences.ts';
import { stepWords } from './words.ts';

/** Below this a tenth counts, EBC. */
const paleEbc = 10;

/**
 * Sugar and form, what goes in, the holds, then what comes of it; temperatures in °C.
 *
 * @param ends how each step ends by the plan's central course
 */
export function planFacts({ request, amounts, yieldKg }: Plan, ends: readonly StepEnd[]): readonly Fact[] {
  const { charge, alkali } = amounts;
  return [
    fact('Finished sugar', 'g', 0, 1000 * yieldKg),
    ...(request.form === 'syrup' ? [fact('Solids', '%', 0, 100 * request.syrupSolids)] : []),
    fact('Water at the start', 'g/kg sugar', 0, (1000 * charge.waterKg) / charge.sucroseKg),
    fact('Dissolve by', '°C', 0, request.dissolveC ?? usualDissolveC),
    fact('Malt extract', 'g/kg', 1, request.maltExtractGPerKg),
    ...(request.route === 'pale' ? [fact('Citric acid', 'g/kg', 2, request.acidGPerKg)] : []),
    ...(alkali
      ? [
          fact(`Dose, ${alkaliFacts(alkali.substance).name}`, 'g/kg', 1, request.alkaliGPerKg),
          fact('Strength of the alkali', '%', 0, 100 * request.solutionStrength),
        ]
      : []),
    ...holdsOf(request).flatMap((hold) => [
      fact(`${stepWords[hold]} at`, '°C', 0, request[`${hold}C`]),
      fact(`${stepWords[hold]} for`, 'min', 0, request[`${hold}Minutes`]),
    ]),
    ...(request.moreHolds ?? []).flatMap(({ celsius, minutes }, at) => [
      fact(`Further hold ${at + 1} at`, '°C', 0, celsius),
      fact(`Further hold ${at + 1} for`, 'min', 0, minutes),
    ]),
    ...cameOf(ends),
  ];
}

function cameOf(ends: readonly StepEnd[]): readonly Fact[] {
  const last = ends.at(-1);
  if (!last) return [];
  const ebc = ebcFromA430(last.a430);
  const spoonfuls = ends.reduce((sum, end) => sum + end.spoonfuls, 0);
  return [
    fact('Cold pan to pour', 'min', 0, last.endMinute),
    fact('Spoonfuls', '', 0, spoonfuls),
    fact('Colour', 'EBC', ebc < paleEbc ? 1 : 0, ebc),
    fact('Inverted', '%', 0, 100 * last.inverted),
  ];
}
