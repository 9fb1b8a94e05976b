/** A plan as rows of numbers, so that two of them can be held beside each other. */
import type { Fact } from '../../../../core/book/differences.ts';
import { alkaliFacts } from '../../../../core/planning/handling.ts';
import { holdsOf } from '../../../../core/planning/holds.ts';
import { ebcOf } from '../../../parts/figures.ts';
import type { Picture } from '../../../parts/panLine/picture.ts';
import { stepNames } from '../../../parts/stepNames.ts';
import { inUnit, type TemperatureUnit } from '../../../parts/temperature.ts';

/** About 10 EBC: below, a tenth counts. */
const paleA430 = 0.4;

/** Sugar and form, what goes in, the holds, then what comes of it. */
export function planFacts({ plan, ends }: Pick<Picture, 'plan' | 'ends'>, unit: TemperatureUnit): readonly Fact[] {
  const { request, amounts, yieldKg } = plan;
  const last = ends.at(-1);
  const fact = (what: string, unitName: string, digits: number, value: number): Fact => ({
    what,
    unit: unitName,
    digits,
    value,
  });
  return [
    fact('Finished sugar', 'g', 0, 1000 * yieldKg),
    ...(request.form === 'syrup' ? [fact('Solids', '%', 0, 100 * request.syrupSolids)] : []),
    fact('Malt extract', 'g/kg', 1, request.maltExtractGPerKg),
    ...(request.route === 'pale' ? [fact('Citric acid', 'g/kg', 2, request.acidGPerKg)] : []),
    ...(amounts.alkali
      ? [
          fact(`Dose, ${alkaliFacts(amounts.alkali.substance).name}`, 'g/kg', 1, request.alkaliGPerKg),
          fact('Strength of the alkali', '%', 0, 100 * request.solutionStrength),
        ]
      : []),
    ...holdsOf(request).flatMap((hold) => [
      fact(`${stepNames[hold]} at`, `°${unit}`, 0, inUnit(request[`${hold}C`], unit)),
      fact(`${stepNames[hold]} for`, 'min', 0, request[`${hold}Minutes`]),
    ]),
    ...(request.moreHolds ?? []).flatMap(({ celsius, minutes }, at) => [
      fact(`Further hold ${at + 1} at`, `°${unit}`, 0, inUnit(celsius, unit)),
      fact(`Further hold ${at + 1} for`, 'min', 0, minutes),
    ]),
    ...(last
      ? [
          fact('Cold pan to pour', 'min', 0, last.endMinute),
          fact(
            'Spoonfuls',
            '',
            0,
            ends.reduce((sum, { spoonfuls }) => sum + spoonfuls, 0),
          ),
          // To as many figures as the page tells it with.
          fact('Colour', 'EBC', last.a430 < paleA430 ? 1 : 0, Number(ebcOf(last.a430))),
          fact('Inverted', '%', 0, 100 * last.inverted),
        ]
      : []),
  ];
}
