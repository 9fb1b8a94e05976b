/** What to mind before a bottle is closed: it is a pressure vessel of glass. */

import { anywhere, practice } from '../advice/safety.ts';
import type { Range } from '../twin/range.ts';
import { carbonDioxidePerAlcohol, extractPerAlcohol } from './balling.ts';
import { gramsPerLitreOfVolume } from './carbonDioxide.ts';
import type { GlassCaution } from './glassCautions.ts';
import type { PrimingNumbers } from './priming.ts';
import { type VesselKind, vessels } from './vessels.ts';

/** Real extract falls by 0.82 of what a hydrometer shows; a gravity point is 0.26 P, 2.6 g/L of extract (derived). */
const volumesOfPoint = (2.6 * 0.8192 * carbonDioxidePerAlcohol) / extractPerAlcohol / gramsPerLitreOfVolume;

export function primingCautions(numbers: PrimingNumbers<Range>, vessel: VesselKind): readonly GlassCaution[] {
  const { reachedVolumes, gaugePaAt20C, gaugePaAt30C } = numbers;
  const { cautionFrom, words, why, source, date, region } = vessels[vessel];
  const bar = ({ mid, high }: Range) => `${(mid / 1e5).toFixed(1)} bar (up to ${(high / 1e5).toFixed(1)})`;
  return [
    {
      id: 'PRI-FINISHED',
      level: 'warning',
      text: `Prime only when the gravity has stood still for three days. Each gravity point that is still to ferment adds ${volumesOfPoint.toFixed(1)} volumes on top.`,
      source: `${practice}; the figure by Balling`,
      ...anywhere,
    },
    {
      id: 'PRI-PRESSURE',
      level: reachedVolumes.high >= cautionFrom ? 'strong warning' : 'note',
      text: `Above the air: ${bar(gaugePaAt20C)} at 20 °C, ${bar(gaugePaAt30C)} at 30 °C. ${reachedVolumes.high >= cautionFrom ? `Near the limit: ${why}. ` : ''}Only into ${words}: whole, unscratched, made for pressure. Keep them cool, in a box with a lid; open one after a week.`,
      source,
      date,
      region,
    },
    {
      id: 'PRI-EVEN',
      level: 'note',
      text: 'Boil the sugar in a little water, cool it, and mix it gently through all of the beer: bottles that got more burst first. Weigh it; a spoon will not do.',
      source: practice,
      ...anywhere,
    },
  ];
}
