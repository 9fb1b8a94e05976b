/** A sugar that was bought, from what its packet or sheet prints: extract and colour. */
import { expectedHueIndex } from '../colour/hueIndex.ts';
import type { Range } from '../twin/range.ts';
import { fermentabilityByColour } from './fermentability.ts';
import { noMinerals } from './minerals.ts';
import type { Minerals, Sugar } from './sugar.ts';
import { certain } from './uncertain.ts';

/** Printed colours of sugars are good to about this share (assumed). */
const printedColourShare = 0.1;
const usualMaillardShare = 0.5;

export interface Printed {
  readonly name: string;
  /** Dry solids, mass fraction; see `extractYield.ts` for what sheets print instead. */
  readonly solids: number;
  /** At 430 nm, of the sugar **as it is**, L/(g cm); see `colour/rating.ts` and `colour/scales.ts`. */
  readonly specific430AsIs: number;
  /** Share of its sucrose that is inverted; table sugar 0, invert syrup 1. Any, when nobody says. */
  readonly inverted?: number | undefined;
  readonly fermentable?: Range | undefined;
  readonly minerals?: Minerals | undefined;
  readonly pricePerKg?: number | undefined;
}

export function boughtSugar(printed: Printed): Sugar {
  const { name, solids, specific430AsIs, inverted, minerals, pricePerKg } = printed;
  const mid = specific430AsIs / solids;
  const fermentable = printed.fermentable ?? fermentabilityByColour(mid);
  return {
    name,
    solids: certain(solids),
    sucrose: sucroseOf(inverted, fermentable.low),
    fermentable,
    specific430: { low: mid * (1 - printedColourShare), mid, high: mid * (1 + printedColourShare) },
    hueIndex: expectedHueIndex(mid, usualMaillardShare).mean,
    minerals: minerals ?? null,
    pricePerKg: pricePerKg ?? null,
    stockKg: null,
  };
}

function sucroseOf(inverted: number | undefined, most: number): Range {
  return inverted === undefined ? { low: 0, mid: most / 2, high: most } : certain(Math.min(1 - inverted, most));
}

/** White table sugar: sucrose, no colour that a beer would show. */
export const tableSugar: Sugar = {
  ...boughtSugar({ name: 'table sugar', solids: 0.9995, specific430AsIs: 0, inverted: 0, fermentable: certain(1) }),
  minerals: noMinerals,
};
