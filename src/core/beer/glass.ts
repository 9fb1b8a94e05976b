/** A glass of beer to be: the rest of the beer, and the sugars that go into it, with when. All at 20 C. */
import { requireRange } from '../matter/range.ts';
import { requireSugar, type Sugar } from './sugar.ts';

/** Wort without the sugars, as it reaches the fermenter, and what its yeast makes of it. */
export interface Rest {
  readonly volumeL: number;
  /** Specific gravity 20/20 C before fermentation. */
  readonly gravity: number;
  /** Of the finished beer, were it brewed without the sugars; per cm. */
  readonly a430PerCm: number;
  /** Apparent attenuation that the yeast reaches without the sugars, share of one. */
  readonly attenuation: number;
  /** In the beer already, from water and malt, mg/L. */
  readonly sodiumMgPerL: number;
  readonly calciumMgPerL: number;
}

export type WhenAdded = 'kettle' | 'late' | 'fermenter';

export interface Dose {
  readonly sugar: Sugar;
  /** As it is, kg. */
  readonly massKg: number;
  readonly added: WhenAdded;
}

export interface Glass {
  readonly rest: Rest;
  readonly doses: readonly Dose[];
  /** Wort that is left behind in the kettle, with its share of what went into it, L. */
  readonly kettleLossL: number;
  /** Way of the light through the drawn glass, cm. */
  readonly pathCm: number;
}

/** Inclusive limits, for forms, command line and API alike. */
export const glassRanges = {
  volumeL: [0.5, 5000],
  gravity: [1, 1.14],
  a430PerCm: [0, 10],
  attenuation: [0.3, 1.05],
  sodiumMgPerL: [0, 1000],
  calciumMgPerL: [0, 1000],
  massKg: [0, 2000],
  kettleLossL: [0, 1000],
  pathCm: [0.5, 20],
} as const satisfies Record<string, readonly [number, number]>;

/** From malt and water in an all-malt beer: sodium 25 to 30 mg/L in wort, calcium 50 (from memory). */
export const usualRest = { attenuation: 0.75, sodiumMgPerL: 28, calciumMgPerL: 50 } as const;
/** A pint glass is about 8 cm across, a tulip 7 (assumed). */
export const usualPathCm = 7;

/** @throws RangeError that names the first number outside its limits */
export function requireGlass({ rest, doses, kettleLossL, pathCm }: Glass): void {
  const numbers = { ...rest, kettleLossL, pathCm };
  for (const [field, value] of Object.entries(numbers)) {
    const [low, high] = glassRanges[field as keyof typeof numbers];
    requireRange(field, value, low, high);
  }
  for (const { sugar, massKg } of doses) {
    requireSugar(sugar);
    requireRange(`mass of ${sugar.name} (kg)`, massKg, ...glassRanges.massKg);
  }
}
