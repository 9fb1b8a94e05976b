/** What the sugars give a beer: every number with its 10, 50 and 90 % marks, and the same beer without them. */
import { ebcFromA430, srmFromA430 } from '../colour/scales.ts';
import type { Range } from '../twin/range.ts';
import { type Brewed, brewed } from './brewed.ts';
import { type Cost, costOf } from './cost.ts';
import { type DrawnGlass, drawnGlass } from './drawnGlass.ts';
import { type EmpiricalColour, empiricalColour } from './empiricalColour.ts';
import { type Glass, requireGlass } from './glass.ts';
import { settled } from './settled.ts';
import { rangesOf, timesRange } from './uncertain.ts';

export type BeerNumbers = Readonly<Record<keyof Brewed, Range>>;

export interface Given {
  readonly beer: BeerNumbers;
  readonly without: BeerNumbers;
  readonly ebc: Range;
  readonly srm: Range;
  /** Of the sugars alone; EBC of the beer. */
  readonly sugarsEbc: Range;
  readonly empirical: EmpiricalColour;
  readonly drawn: DrawnGlass;
  readonly cost: Cost | null;
}

export interface GivenOptions {
  /** Of the sugar that would be bought instead. */
  readonly boughtPricePerKg?: number | undefined;
}

/** @throws RangeError that names what is outside its limits */
export function givenBy(glass: Glass, { boughtPricePerKg }: GivenOptions = {}): Given {
  requireGlass(glass);
  const beer = numbersOf(glass);
  return {
    beer,
    without: numbersOf({ ...glass, doses: [] }),
    ebc: timesRange(beer.a430PerCm, ebcFromA430(1)),
    srm: timesRange(beer.a430PerCm, srmFromA430(1)),
    sugarsEbc: timesRange(beer.sugarsA430PerCm, ebcFromA430(1)),
    empirical: empiricalColour(glass),
    drawn: drawnGlass(glass, beer.a430PerCm),
    cost: glass.doses.length > 0 ? costOf(glass, beer.volumeL, boughtPricePerKg) : null,
  };
}

/** The numbers alone, without what is seen and paid. */
export function numbersOf(glass: Glass): BeerNumbers {
  return rangesOf((pick): Readonly<Record<keyof Brewed, number>> => brewed(settled(glass, pick)));
}
