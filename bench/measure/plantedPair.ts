/**
 * Two logs of cooks that differ in one thing that was planted: cooked in one hidden kitchen by a person with a thermometer, each with its
 * own noise and its own spoonfuls.
 */
import { type AsCooked, asCooked } from '../../src/core/book/asCooked.ts';
import type { OutcomeName } from '../../src/core/book/explain.ts';
import type { Factor } from '../../src/core/book/factors.ts';
import { foldCook } from '../../src/core/log/fold.ts';
import { defaultKit, type Kit } from '../../src/core/pan/kit.ts';
import { defaultRequest, type PlanRequest } from '../../src/core/planning/request.ts';
import { normalNumbers } from '../../src/core/reactions/normal.ts';
import { cookedLog } from '../../test/cookedLog.ts';

/** What can be planted, and the outcome on which it is looked for: the one that it mostly moves. The batch is planted nowhere: amounts count for each kg. */
export const planted = {
  alkali: 'ebc',
  holdTime: 'ebc',
  temperature: 'ebc',
  water: 'inverted',
  nitrogen: 'fruit',
  kit: 'inverted',
} as const satisfies Partial<Record<Factor, OutcomeName>>;
export type PlantedFactor = keyof typeof planted;

interface Kitchen {
  readonly request: PlanRequest;
  readonly kit: Kit;
}

export interface PlantedPair {
  readonly first: AsCooked;
  readonly second: AsCooked;
}

/** @param size of what is planted: 1 is what a person would notice having done */
export function plantedPair(factor: PlantedFactor, number: number, size = 1): PlantedPair {
  const draw = uniform(number);
  const request: PlanRequest = {
    ...defaultRequest,
    alkaliGPerKg: 3.5 + 2 * draw(),
    brownC: 138 + 4 * draw(),
    brownMinutes: 20 + 8 * draw(),
    invertMinutes: 25 + 15 * draw(),
    maltExtractGPerKg: 6 + 6 * draw(),
    route: draw() < 0.5 ? 'deep' : 'bright',
  };
  const kit: Kit = { ...defaultKit, water: { alkalinityMgPerL: 60 + 80 * draw() } };
  const plain = { request, kit };
  const changed = changes[factor](plain, size * (0.8 + 0.4 * draw()));
  const pair = draw() < 0.5 ? [plain, changed] : [changed, plain];
  const [first, second] = pair.map((kitchen, i) => cooked(kitchen, number, 2 * number + i));
  return { first, second };
}

const changes: Readonly<Record<PlantedFactor, (kitchen: Kitchen, size: number) => Kitchen>> = {
  alkali: ({ request, kit }, size) => ({
    kit,
    request: { ...request, alkaliGPerKg: request.alkaliGPerKg + 1.5 * size },
  }),
  holdTime: ({ request, kit }, size) => ({
    kit,
    request: { ...request, brownMinutes: request.brownMinutes + 20 * size },
  }),
  temperature: ({ request, kit }, size) => ({ kit, request: { ...request, brownC: request.brownC + 5 * size } }),
  water: ({ request, kit }, size) => ({ request, kit: { ...kit, water: { alkalinityMgPerL: 140 + 260 * size } } }),
  nitrogen: ({ request, kit }, size) => ({
    kit,
    request: { ...request, maltExtractGPerKg: request.maltExtractGPerKg + 8 * size },
  }),
  kit: ({ request, kit }, size) => ({ request, kit: { ...kit, altitudeM: 100 + 2000 * size } }),
};

function cooked({ request, kit }: Kitchen, kitchenSeed: number, noiseSeed: number): AsCooked {
  const { events } = cookedLog(kit, kitchenSeed, 'live', `cook-${noiseSeed}`, {
    request,
    noiseSeed: 500_000 + noiseSeed,
  });
  const told = asCooked(foldCook(events));
  if (!told) throw new Error(`the log of cook ${noiseSeed} tells no recipe`);
  return told;
}

/** Even numbers from 0 to 1, from the normal ones that everything here is drawn from (logistic approximation of the normal's sum). */
function uniform(seed: number): () => number {
  const normal = normalNumbers(900_000 + seed);
  return () => 1 / (1 + Math.exp(-1.702 * normal()));
}
