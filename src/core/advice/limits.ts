/** The limits of safety, stated here and nowhere else. Each has an id, its reason, its source and its date. */
import type { PanMaterial } from '../pan/kit.ts';
import { anywhere, practice, type Sourced } from './safety.ts';

export interface Rule extends Sourced {
  readonly reason: string;
}

export interface Limit extends Rule {
  readonly value: number;
  readonly unit: string;
}

export const limits = {
  alkaliPerSugar: {
    id: 'LIM-ALKALI-DOSE',
    value: 0.2001,
    unit: 'eq/kg',
    reason: 'more alkali (8 g NaOH or 7.4 g Ca(OH)2 for each kg of sugar) may leave free lye in the sugar',
    source: 'assumed; the cook spends about 0.2 eq/kg as acids form',
    ...anywhere,
  },
  alkaliTemperature: {
    id: 'LIM-ALKALI-HEAT',
    value: 135,
    unit: 'Cel',
    reason: 'hotter syrup throws alkali solution out of the pan',
    source: practice,
    ...anywhere,
  },
  hotPortion: {
    id: 'LIM-HOT-PORTION',
    value: 0.005,
    unit: 'kg/kg',
    reason: 'each kg of syrup above 120 C turns 5 g of water into about 8 L of steam',
    source: 'derived from steam tables (IAPWS-IF97)',
    ...anywhere,
  },
  portionHotFrom: {
    id: 'LIM-PORTION-HEAT',
    value: 120,
    unit: 'Cel',
    reason: 'from here on water flashes to steam at once',
    source: practice,
    ...anywhere,
  },
  hotSpoonful: {
    id: 'LIM-SPOONFUL',
    value: 0.0051,
    unit: 'kg',
    reason: 'above 120 C never more than a teaspoon of water at once: it flashes to about 8 L of steam',
    source: `derived from steam tables (IAPWS-IF97); the teaspoon: ${practice}`,
    ...anywhere,
  },
  coolWater: {
    id: 'LIM-COOL-WATER',
    value: 0.03,
    unit: 'kg/kg',
    reason: 'more water at once throws hot syrup about',
    source: practice,
    ...anywhere,
  },
  fillWithDosing: {
    id: 'LIM-FILL',
    value: 1 / 4,
    unit: '1',
    reason: 'foam rises to two to four times the depth when alkali or water goes in hot',
    source: practice,
    ...anywhere,
  },
  solutionStrength: {
    id: 'LIM-STRENGTH',
    value: 0.25,
    unit: '1',
    reason: 'a stronger solution boils while it is mixed and burns deeper',
    source: 'derived: heat of solution 44.5 kJ/mol warms 25 % lye by about 70 K',
    ...anywhere,
  },
  roastTemperature: {
    id: 'LIM-ROAST',
    value: 162,
    unit: 'Cel',
    reason: 'above this sugar smokes and the model has no ground',
    source: practice,
    ...anywhere,
  },
} as const satisfies Record<string, Limit>;

/** What may not be, without a number to it. */
export const rules = {
  panMaterial: {
    id: 'LIM-PAN',
    reason: 'alkali dissolves aluminium and gives off hydrogen, and may strip a coating of unknown kind',
    source: 'safety data sheets of sodium hydroxide; the coating: assumed',
    ...anywhere,
  },
  order: {
    id: 'LIM-ORDER',
    reason: 'a syrup of over 120 C can only be cooled with water, which must not be thrown into it',
    source: 'derived from the limits of water; that no hold is left by cooling: common practice, no source',
    ...anywhere,
  },
} as const satisfies Record<string, Rule>;

/** Pans that alkali must not touch. */
export const alkaliBlockedBy: readonly PanMaterial[] = ['aluminium', 'unknownCoating'];

/** A plan that breaks a limit is refused with this. */
export interface Refusal {
  readonly limit: string;
  readonly field: string;
  readonly message: string;
}
