/** What a plan can do, but would better do otherwise: each caution names what was asked, what comes of it, and what would help. */
import { limits } from '../advice/limits.ts';
import { anywhere, practice, type Sourced } from '../advice/safety.ts';
import { amountsFor } from './amounts.ts';
import type { PlanRequest } from './request.ts';
import { alkaliWaitS } from './steps.ts';

export interface PlanCaution extends Sourced {
  /** The field of the request that it is about. */
  readonly field: keyof PlanRequest;
  readonly message: string;
}

/** More parts than this keep the heat off for over six minutes, and every one is a splash to stand by (assumed). */
const mostParts = 12;

/** Food-grade alkali holds no more carbonate than this when it is fresh (from memory, E 524). */
const freshCarbonate = 0.03;

export function planCautions(request: PlanRequest): readonly PlanCaution[] {
  return [...weakAlkali(request), ...staleAlkali(request)];
}

/** Carbonate gives off its gas in the acid syrup: 1 mol from 106 g of soda, 34 L at 140 C (ideal gas, derived). */
function staleAlkali({ route, alkali, alkaliCarbonate = 0 }: PlanRequest): readonly PlanCaution[] {
  if (route === 'pale' || alkaliCarbonate <= freshCarbonate) return [];
  const percent = Number((100 * alkaliCarbonate).toPrecision(3));
  const gas =
    alkali === 'sodiumHydroxide'
      ? 'each gram of soda gives a third of a litre of gas in the hot syrup, which foams'
      : 'its chalk stays behind as grit';
  const message = `alkali with ${percent} % of carbonate has stood open: ${gas}. Take it from a fresh, tightly closed pack`;
  return [
    {
      id: 'CAU-STALE-ALKALI',
      field: 'alkaliCarbonate',
      message,
      source: 'derived: ideal gas; carbonate of fresh alkali: E 524 (from memory)',
      ...anywhere,
    },
  ];
}

function weakAlkali(request: PlanRequest): readonly PlanCaution[] {
  const count = partsAt(request, request.solutionStrength);
  if (count <= mostParts) return [];
  const strongest = Math.round(limits.solutionStrength.value * 100);
  const percents = Array.from({ length: strongest }, (_, i) => i + 1);
  const enough = percents.find((percent) => partsAt(request, percent / 100) <= mostParts) ?? strongest;
  const asked = Number((request.solutionStrength * 100).toPrecision(3));
  const message = `at ${asked} % the alkali goes in by ${count} parts, ${alkaliWaitS} s apart: ${Math.round((count * alkaliWaitS) / 60)} minutes and more with the heat off, and all that water to boil away. At ${enough} % it takes ${partsAt(request, enough / 100)} parts`;
  return [{ id: 'CAU-WEAK-ALKALI', field: 'solutionStrength', message, source: practice, ...anywhere }];
}

/** Parts that the alkali takes at a strength; none on the pale route. The batch doesn't matter: parts grow with it. */
function partsAt(request: PlanRequest, solutionStrength: number): number {
  return amountsFor({ ...request, solutionStrength }, 1).alkali?.parts.length ?? 0;
}
