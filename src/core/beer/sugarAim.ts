/** The sugar that a beer is in want of, as an aim for planning: how much, and how dark. */

import { expectedHueIndex } from '../colour/hueIndex.ts';
import { ratingA430 } from '../colour/rating.ts';
import { ebcFromA430 } from '../colour/scales.ts';
import { dosedByMiddles, type Wish, type WishKind, wished } from './dose.ts';
import { fermentabilityByColour } from './fermentability.ts';
import type { Glass } from './glass.ts';
import { mixture } from './mixture.ts';
import { settled } from './settled.ts';
import type { Sugar } from './sugar.ts';
import { central, certain } from './uncertain.ts';

export interface SugarAim {
  /** Hard sugar with 2 % of water. */
  readonly massKg: number;
  /** A430 per cm and EBC of a 10 % w/w solution of its solids; none when no colour was wished. */
  readonly a430: number | null;
  readonly ebc: number | null;
  /** Darker than what a kitchen makes: take more sugar, or be content with less colour. */
  readonly darkerThanKitchen: boolean;
}

/** Hard sugar cast at 150 C holds 1 to 4 % (from memory). */
const solids = 0.98;
/** Share of the extract when only a colour was wished: the middle of what dark strong beers take (from memory). */
const usualShare = 0.1;
const darkestSpecific430 = 0.5;

/** @returns why not even a sugar made for it would do */
export function sugarAim(glass: Glass, amount: Wish | undefined, colour: Wish | undefined): SugarAim | string {
  const at = glass.doses.length;
  const wish = amount ?? { kind: 'extractShare', value: usualShare + measured(glass, 'extractShare') };
  const found = dosedByMiddles(withSugar(glass, 0, 0), at, wish);
  if (found.kind !== 'dosed')
    return found.kind === 'already' ? 'the beer has as much without it' : 'no beer is that strong';
  const { massKg } = found;
  if (colour === undefined) return { massKg, a430: null, ebc: null, darkerThanKitchen: false };
  const [pale, unit] = [0, 1].map((specific430) => measured(withSugar(glass, massKg, specific430), 'ebc')) as [
    number,
    number,
  ];
  if (colour.value < pale) return `the beer has ${pale.toFixed(1)} EBC without its colour`;
  const specific430 = (colour.value - pale) / (unit - pale);
  const a430 = ratingA430(specific430, 'tenPercentByWeight');
  return { massKg, a430, ebc: ebcFromA430(a430), darkerThanKitchen: specific430 > darkestSpecific430 };
}

/** Colour is linear in it, so one strength tells the others. */
function withSugar(glass: Glass, massKg: number, specific430: number): Glass {
  const sugar: Sugar = {
    name: 'sugar to plan',
    solids: certain(solids),
    sucrose: certain(0),
    fermentable: fermentabilityByColour(specific430),
    specific430: certain(specific430),
    hueIndex: expectedHueIndex(specific430, 0.5).mean,
    minerals: null,
    pricePerKg: null,
    stockKg: null,
  };
  return { ...glass, doses: [...glass.doses, { sugar, massKg, added: 'kettle' }] };
}

function measured(glass: Glass, kind: WishKind): number {
  return wished(mixture(settled(glass, central)), kind);
}
