/** A sugar as the glass knows it, wherever it comes from: how wet, how dark, how much of it the yeast takes, what the alkali left in it. */
import { requireRange } from '../matter/range.ts';
import type { Range } from '../twin/range.ts';

export interface Minerals {
  /** Grams in each kg of sugar as it is. */
  readonly sodiumGPerKg: Range;
  readonly calciumGPerKg: Range;
}

export interface Sugar {
  readonly name: string;
  /** Dry solids, mass fraction of the sugar as it is. */
  readonly solids: Range;
  /** Share of the solids that is sucrose still to be inverted; each kg takes up 0.0526 kg of water. */
  readonly sucrose: Range;
  /** Share of the solids that yeast ferments. */
  readonly fermentable: Range;
  /** Absorbance at 430 nm of the dry solids, L/(g cm). */
  readonly specific430: Range;
  /** Linner's hue index of its pigment. */
  readonly hueIndex: number;
  /** None when nobody said what is in it. */
  readonly minerals: Minerals | null;
  /** In the user's own currency for each kg as it is. */
  readonly pricePerKg: number | null;
  /** What there is of it, kg; none for as much as is wanted. */
  readonly stockKg: number | null;
}

/** Water that a gram of sucrose takes up when it is inverted: 18.0153/342.2965. */
export const inversionGain = 18.0153 / 342.2965;

const limits = { solids: [0.5, 1], sucrose: [0, 1], fermentable: [0, 1], specific430: [0, 2] } as const;

/** @throws RangeError that names the first number outside its limits, with the sugar's name */
export function requireSugar(sugar: Sugar): void {
  for (const [field, [least, most]] of Object.entries(limits)) {
    const { low, mid, high } = sugar[field as keyof typeof limits];
    for (const mark of [low, mid, high]) requireRange(`${field} of ${sugar.name}`, mark, least, most);
  }
  requireRange(`hue index of ${sugar.name}`, sugar.hueIndex, 1, 12);
}
