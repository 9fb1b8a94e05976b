/** What the sugars cost, against a bought sugar in the same amounts. In the user's own currency. */
import type { Range } from '../twin/range.ts';
import type { Glass } from './glass.ts';
import { timesRange } from './uncertain.ts';

export interface Cost {
  readonly sugars: Range;
  readonly perLitre: Range;
  /** The same solids of the bought sugar; none without its price. */
  readonly bought: Range | null;
}

/** @returns nothing when the price of a sugar is not known */
export function costOf({ doses }: Glass, volumeL: Range, boughtPricePerKg?: number): Cost | null {
  let sum = 0;
  for (const { sugar, massKg } of doses) {
    if (sugar.pricePerKg === null) return null;
    sum += massKg * sugar.pricePerKg;
  }
  const solids = (mark: keyof Range) => doses.reduce((kg, { sugar, massKg }) => kg + massKg * sugar.solids[mark], 0);
  return {
    sugars: { low: sum, mid: sum, high: sum },
    perLitre: { low: sum / volumeL.high, mid: sum / volumeL.mid, high: sum / volumeL.low },
    bought:
      boughtPricePerKg === undefined
        ? null
        : timesRange({ low: solids('low'), mid: solids('mid'), high: solids('high') }, boughtPricePerKg),
  };
}
