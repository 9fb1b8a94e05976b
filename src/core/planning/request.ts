/** What a person asks for at the Desk: the aim, the route, and the levers of the cook. Numbers are SI-based; the Desk speaks kitchen units. */
import { requireRange } from '../matter/range.ts';

export type Form = 'hard' | 'syrup';
export type Route = 'pale' | 'bright' | 'deep';
export type Alkali = 'sodiumHydroxide' | 'calciumHydroxide';

/** A hold after those of the route: as hot as they were, or hotter. */
export interface FurtherHold {
  readonly celsius: number;
  readonly minutes: number;
}

export interface PlanRequest {
  readonly name: string;
  /** Finished sugar wanted, kg, as cast or as syrup. */
  readonly massKg: number;
  readonly form: Form;
  /** Solids of a syrup, mass fraction (Brix/100); not used for hard sugar. */
  readonly syrupSolids: number;
  readonly route: Route;
  readonly alkali: Alkali;
  /** Alkali as pure substance for each kg of sucrose, g/kg; not used on the pale route. */
  readonly alkaliGPerKg: number;
  /** Strength of the alkali solution to prepare, mass fraction. */
  readonly solutionStrength: number;
  /** What is hydroxide, and what has turned to carbonate, in the alkali as it is weighed, mass fractions; 0.97 and 0 when left out. */
  readonly alkaliActive?: number | undefined;
  readonly alkaliCarbonate?: number | undefined;
  /** Citric acid for each kg of sucrose, g/kg; used on the pale route alone. */
  readonly acidGPerKg: number;
  /** Dry malt extract for each kg of sucrose, g/kg. */
  readonly maltExtractGPerKg: number;
  /** By when all sugar is dissolved, C: the water follows from it; 80 when left out. */
  readonly dissolveC?: number | undefined;
  readonly invertC: number;
  readonly invertMinutes: number;
  readonly brownC: number;
  readonly brownMinutes: number;
  readonly roastC: number;
  readonly roastMinutes: number;
  /** In their order, before the cast or the letting down; none when left out. */
  readonly moreHolds?: readonly FurtherHold[] | undefined;
}

/** Inclusive limits of each number, for forms, command line and API alike. Limits of safety are apart, in `advice/limits.ts`. */
export const requestRanges = {
  massKg: [0.1, 5],
  syrupSolids: [0.6, 0.85],
  alkaliGPerKg: [0.2, 12],
  solutionStrength: [0.01, 0.4],
  acidGPerKg: [0.2, 6],
  maltExtractGPerKg: [0, 100],
  invertC: [110, 140],
  invertMinutes: [0, 180],
  brownC: [120, 150],
  brownMinutes: [0, 90],
  roastC: [145, 165],
  roastMinutes: [0, 30],
} as const satisfies Record<string, readonly [number, number]>;

/** The same of numbers that may be left out. */
export const optionalRanges = {
  alkaliActive: [0.5, 1],
  alkaliCarbonate: [0, 0.3],
  // With the water of hotter syrup, crystals are left in the model when the inverting begins, and may seed others.
  dissolveC: [20, 90],
} as const satisfies Partial<Record<keyof PlanRequest, readonly [number, number]>>;

/** Well below the boil, where stirring dissolves sugar within minutes (common practice, no source). */
export const usualDissolveC = 80;

/** Purity of food-grade alkali: total alkali in solids 95-98 % and some water taken up from the air (assumed). */
export const usualActive = 0.97;

/** What is hydroxide, and what carbonate, of the alkali as it is weighed, mass fractions: what is left out is as usual. */
export function alkaliShares({
  alkaliActive = usualActive,
  alkaliCarbonate = 0,
}: Pick<PlanRequest, 'alkaliActive' | 'alkaliCarbonate'>): { readonly active: number; readonly carbonate: number } {
  return { active: alkaliActive, carbonate: alkaliCarbonate };
}

/** The same of each further hold, and how many there may be. */
export const furtherHoldRanges = { celsius: [110, 165], minutes: [1, 90] } as const satisfies Record<
  keyof FurtherHold,
  readonly [number, number]
>;
export const mostFurtherHolds = 4;

/** Throws a RangeError that names the first number outside its limits. */
export function requireRequest(request: PlanRequest): void {
  for (const [field, [low, high]] of Object.entries(requestRanges)) {
    requireRange(field, request[field as keyof typeof requestRanges], low, high);
  }
  for (const [field, [low, high]] of Object.entries(optionalRanges)) {
    const value = request[field as keyof typeof optionalRanges];
    if (value !== undefined) requireRange(field, value, low, high);
  }
  const { moreHolds = [] } = request;
  requireRange('further holds', moreHolds.length, 0, mostFurtherHolds);
  for (const [at, hold] of moreHolds.entries()) {
    for (const [name, [low, high]] of Object.entries(furtherHoldRanges)) {
      requireRange(`moreHolds.${at}.${name}`, hold[name as keyof FurtherHold], low, high);
    }
  }
  const { active, carbonate } = alkaliShares(request);
  requireRange('alkaliActive and alkaliCarbonate together', active + carbonate, 0, 1 + 1e-9);
}

/** The request that the Desk opens with. Times and temperatures are common practice, no source. */
export const defaultRequest: PlanRequest = {
  name: 'First batch',
  massKg: 0.4,
  form: 'hard',
  syrupSolids: 0.8,
  route: 'deep',
  alkali: 'sodiumHydroxide',
  alkaliGPerKg: 5,
  solutionStrength: 0.2,
  acidGPerKg: 1.5,
  maltExtractGPerKg: 8,
  invertC: 130,
  invertMinutes: 30,
  brownC: 140,
  brownMinutes: 25,
  roastC: 155,
  roastMinutes: 7,
};
