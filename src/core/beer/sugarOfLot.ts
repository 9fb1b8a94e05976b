/** A lot off the shelf as a sugar of the glass: what was measured of it, otherwise what the twin believed, and what was told of its price. */
import { expectedHueIndex } from '../colour/hueIndex.ts';
import { ratingBases } from '../colour/rating.ts';
import { knownOf } from '../lot/known.ts';
import type { AlkaliGiven, Lot } from '../lot/lot.ts';
import type { Note } from '../lot/note.ts';
import type { Range } from '../twin/range.ts';
import { fermentabilityByColour } from './fermentability.ts';
import { mineralsOfAlkali, noMinerals } from './minerals.ts';
import type { Minerals, Sugar } from './sugar.ts';
import { timesRange } from './uncertain.ts';

/** Melanoidin's share of the pigment where nobody kept it: it moves the hue index by 0.35 either way (assumed). */
const usualMaillardShare = 0.5;

/** What the glass has to know of a lot. */
export interface GlassLot extends Pick<Lot, 'name' | 'expected' | 'weighedKg'> {
  readonly alkali?: AlkaliGiven | null | undefined;
  /** What was measured of it, and what was taken out. */
  readonly notes?: readonly Note[] | undefined;
}

export interface LotFurther {
  /** In place of what the lot itself says. */
  readonly alkali?: AlkaliGiven | undefined;
  /** Measured by a forced ferment; by colour without it. */
  readonly fermentable?: Range | undefined;
  readonly pricePerKg?: number | undefined;
}

export function sugarOfLot(lot: GlassLot, further: LotFurther = {}): Sugar {
  const { figures, stock } = knownOf(lot, lot.notes ?? []);
  const { a430, waterShare, inverted } = figures;
  const solids = oneLess(waterShare);
  const specific430 = timesRange(a430, 1 / ratingBases.tenPercentByWeight.gramsPerLitre);
  const fermentable = further.fermentable ?? fermentabilityOf(specific430);
  const alkali = further.alkali ?? lot.alkali;
  return {
    name: lot.name,
    solids,
    sucrose: sucroseOf(inverted, fermentable),
    fermentable,
    specific430,
    hueIndex: expectedHueIndex(specific430.mid, usualMaillardShare).mean,
    minerals: alkali ? mineralsOf(alkali, solids, inverted.mid) : null,
    pricePerKg: further.pricePerKg ?? null,
    stockKg: stock.kg,
  };
}

function mineralsOf(alkali: AlkaliGiven, solids: Range, inverted: number): Minerals {
  return alkali.gramsPerKgSucrose > 0 ? mineralsOfAlkali(alkali, solids, inverted) : noMinerals;
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
