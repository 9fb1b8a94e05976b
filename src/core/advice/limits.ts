/** The limits of safety, stated here and nowhere else. Each has an id, its reason and its source. */
import type { PanMaterial } from '../pan/kit.ts';

export interface Limit {
  readonly id: string;
  readonly value: number;
  readonly unit: string;
  readonly reason: string;
  readonly source: string;
}

const practice = 'common practice, no source';

export const limits = {
  alkaliPerSugar: {
    id: 'LIM-ALKALI-DOSE',
    value: 0.2001,
    unit: 'eq/kg',
    reason: 'more alkali (8 g NaOH or 7.4 g Ca(OH)2 for each kg of sugar) may leave free lye in the sugar',
    source: 'assumed; the cook spends about 0.2 eq/kg as acids form',
  },
  alkaliTemperature: {
    id: 'LIM-ALKALI-HEAT',
    value: 135,
    unit: 'Cel',
    reason: 'hotter syrup throws alkali solution out of the pan',
    source: practice,
  },
  hotPortion: {
    id: 'LIM-HOT-PORTION',
    value: 0.005,
    unit: 'kg/kg',
    reason: 'each kg of syrup above 120 C turns 5 g of water into about 8 L of steam',
    source: 'derived from steam tables (IAPWS-IF97)',
  },
  portionHotFrom: {
    id: 'LIM-PORTION-HEAT',
    value: 120,
    unit: 'Cel',
    reason: 'from here on water flashes to steam at once',
    source: practice,
  },
  hotSpoonful: {
    id: 'LIM-SPOONFUL',
    value: 0.0051,
    unit: 'kg',
    reason: 'above 120 C never more than a teaspoon of water at once: it flashes to about 8 L of steam',
    source: `derived from steam tables (IAPWS-IF97); the teaspoon: ${practice}`,
  },
  coolWater: {
    id: 'LIM-COOL-WATER',
    value: 0.03,
    unit: 'kg/kg',
    reason: 'more water at once throws hot syrup about',
    source: practice,
  },
  fillWithDosing: {
    id: 'LIM-FILL',
    value: 1 / 4,
    unit: '1',
    reason: 'foam rises to two to four times the depth when alkali or water goes in hot',
    source: practice,
  },
  solutionStrength: {
    id: 'LIM-STRENGTH',
    value: 0.25,
    unit: '1',
    reason: 'a stronger solution boils while it is mixed and burns deeper',
    source: 'derived: heat of solution 44.5 kJ/mol warms 25 % lye by about 70 K',
  },
  roastTemperature: {
    id: 'LIM-ROAST',
    value: 162,
    unit: 'Cel',
    reason: 'above this sugar smokes and the model has no ground',
    source: practice,
  },
} as const satisfies Record<string, Limit>;

/** Pans that alkali must not touch: aluminium gives hydrogen; a coating of unknown kind may be stripped. */
export const alkaliBlockedBy: readonly PanMaterial[] = ['aluminium', 'unknownCoating'];

/** A plan that breaks a limit is refused with this. */
export interface Refusal {
  readonly limit: string;
  readonly field: string;
  readonly message: string;
}

/** Hazard class of sodium hydroxide solution by strength (EU classification: 1A from 5 %, 1B from 2 %, irritant from 0.5 %). */
export type LyeClass = 'corrosive 1A' | 'corrosive 1B' | 'irritant' | 'below classification';

export function lyeClass(strength: number): LyeClass {
  if (strength >= 0.05) return 'corrosive 1A';
  if (strength >= 0.02) return 'corrosive 1B';
  return strength >= 0.005 ? 'irritant' : 'below classification';
}
