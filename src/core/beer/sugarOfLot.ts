/** A lot off the shelf as a sugar of the glass: what the twin believed at the pour, and what was told of its alkali and its price. */
import { expectedHueIndex } from '../colour/hueIndex.ts';
import { ratingBases } from '../colour/rating.ts';
import type { Lot } from '../lot/lot.ts';
import type { Range } from '../twin/range.ts';
import { fermentabilityByColour } from './fermentability.ts';
import { type AlkaliGiven, mineralsOfAlkali } from './minerals.ts';
import type { Sugar } from './sugar.ts';
import { timesRange } from './uncertain.ts';

/** Melanoidin's share of the pigment where nobody kept it: it moves the hue index by 0.35 either way (assumed). */
const usualMaillardShare = 0.5;

export interface LotFurther {
  readonly alkali?: AlkaliGiven | undefined;
  /** Measured by a forced ferment; by colour without it. */
  readonly fermentable?: Range | undefined;
  readonly pricePerKg?: number | undefined;
}

export function sugarOfLot(lot: Pick<Lot, 'name' | 'expected' | 'weighedKg'>, further: LotFurther = {}): Sugar {
  const { a430, waterShare, inverted, massKg } = lot.expected;
  const solids = oneLess(waterShare);
  const specific430 = timesRange(a430, 1 / ratingBases.tenPercentByWeight.gramsPerLitre);
  const fermentable = further.fermentable ?? fermentabilityOf(specific430);
  return {
    name: lot.name,
    solids,
    sucrose: sucroseOf(inverted, fermentable),
    fermentable,
    specific430,
    hueIndex: expectedHueIndex(specific430.mid, usualMaillardShare).mean,
    minerals: further.alkali ? mineralsOfAlkali(further.alkali, solids, inverted.mid) : null,
    pricePerKg: further.pricePerKg ?? null,
    stockKg: lot.weighedKg ?? massKg.mid,
  };
}

/** The marks of its darkest and its palest. */
function fermentabilityOf({ low, mid, high }: Range): Range {
  return {
    low: fermentabilityByColour(high).low,
    mid: fermentabilityByColour(mid).mid,
    high: fermentabilityByColour(low).high,
  };
}

function oneLess({ low, mid, high }: Range): Range {
  return { low: 1 - high, mid: 1 - mid, high: 1 - low };
}

/** Sucrose that is not inverted, in the solids; not more than yeast takes of them. */
function sucroseOf(inverted: Range, fermentable: Range): Range {
  const { low, mid, high } = oneLess(inverted);
  return {
    low: Math.min(low, fermentable.low),
    mid: Math.min(mid, fermentable.mid),
    high: Math.min(high, fermentable.high),
  };
}
