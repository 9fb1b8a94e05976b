/** The sugar that a beer is in want of, as an aim for planning: how much, and how dark, each with what is not known of it. */

import { expectedHueIndex } from '../colour/hueIndex.ts';
import { ratingA430 } from '../colour/rating.ts';
import { ebcFromA430 } from '../colour/scales.ts';
import type { Range } from '../twin/range.ts';
import { dosedByMiddles, massFor, type Wish, wished } from './dose.ts';
import { fermentabilityByColour } from './fermentability.ts';
import type { Glass } from './glass.ts';
import { mixture } from './mixture.ts';
import { type SettledGlass, settled } from './settled.ts';
import type { Sugar } from './sugar.ts';
import { central, certain, rangesOf, timesRange } from './uncertain.ts';

export interface SugarAim {
  /** Hard sugar. */
  readonly massKg: number;
  /** What it may take, by the water that hard sugar holds. */
  readonly massRangeKg: Range;
  /** A430 per cm and EBC of a 10 % w/w solution of its solids; none when no colour was wished. */
  readonly a430: number | null;
  readonly ebc: number | null;
  /** What the beer may need, as far as is known what becomes of a colour in it: any sugar within serves the wish. */
  readonly a430Range: Range | null;
  readonly ebcRange: Range | null;
  /** Darker than what a kitchen makes: take more sugar, or be content with less colour. */
  readonly darkerThanKitchen: boolean;
}

/** Hard sugar cast at 150 C holds 1 to 4 % of water (from memory). */
const solids: Range = { low: 0.96, mid: 0.98, high: 0.99 };
/** Share of the extract when only a colour was wished: the middle of what dark strong beers take (from memory). */
const usualShare = 0.1;
const darkestSpecific430 = 0.5;

/** @returns why not even a sugar made for it would do */
export function sugarAim(glass: Glass, amount: Wish | undefined, colour: Wish | undefined): SugarAim | string {
  const at = glass.doses.length;
  const share = wished(mixture(settled(glass, central)), 'extractShare');
  const mass = amount ?? { kind: 'extractShare', value: usualShare + share };
  const open = withSugar(glass);
  const found = dosedByMiddles(open, at, mass);
  if (found.kind !== 'dosed')
    return found.kind === 'already' ? 'the beer has as much without it' : 'no beer is that strong';
  if (colour !== undefined) {
    const pale = wished(mixture(settled(found.glass, central)), 'ebc');
    if (colour.value < pale) return `the beer has ${pale.toFixed(1)} EBC without its colour`;
  }
  const { massKg, specific430 } = rangesOf((pick) => needed(settled(open, pick), at, mass, colour));
  const a430Range = colour ? timesRange(specific430, ratingA430(1, 'tenPercentByWeight')) : null;
  const ebcRange = a430Range && timesRange(a430Range, ebcFromA430(1));
  return {
    massKg: massKg.mid,
    massRangeKg: massKg,
    a430: a430Range?.mid ?? null,
    ebc: ebcRange?.mid ?? null,
    a430Range,
    ebcRange,
    darkerThanKitchen: specific430.mid > darkestSpecific430,
  };
}

/** What the sugar in want of is, in a glass that is settled. The beer's colour is linear in the sugar's, so one strength tells the others. */
function needed(glass: SettledGlass, at: number, mass: Wish, colour: Wish | undefined) {
  const massKg = massFor(glass, at, mass);
  if (colour === undefined) return { massKg, specific430: 0 };
  const [pale, unit] = [0, 1].map((specific430) => {
    const doses = glass.doses.map((dose, i) => (i === at ? { ...dose, massKg, specific430 } : dose));
    return wished(mixture({ ...glass, doses }), 'ebc');
  }) as [number, number];
  return { massKg, specific430: Math.max(0, (colour.value - pale) / (unit - pale)) };
}

/** The glass with nothing yet of a sugar without colour. */
function withSugar(glass: Glass): Glass {
  const sugar: Sugar = {
    name: 'sugar to plan',
    solids,
    sucrose: certain(0),
    fermentable: fermentabilityByColour(0),
    specific430: certain(0),
    hueIndex: expectedHueIndex(0, 0.5).mean,
    minerals: null,
    pricePerKg: null,
    stockKg: null,
  };
  return { ...glass, doses: [...glass.doses, { sugar, massKg: 0, added: 'kettle' }] };
}
