/** What a lesson changed: each number of the kitchen with its range before and after, and what would tell the ones that stayed open. */
import type { Kit } from '../pan/kit.ts';
import type { Learned } from '../pan/learned.ts';
import type { ModelParameter } from '../pan/physics.ts';
import { type Parameter, valueAt } from '../reactions/parameter.ts';
import type { Range } from '../twin/range.ts';
import { type Knowledge, knownOf, widening } from './knowledge.ts';

/** Checks that tell a number which a cook's thermometer can't. */
export type Telling = 'boilingWater' | 'lag' | 'heating' | 'spoons' | 'spoonTests' | 'weighing';

/** What is shown, with what tells it best. The others are estimated along with them. */
export const kitchenNumbers = {
  stoveEfficiency: 'heating',
  stoveLagS: 'heating',
  lossFactor: 'heating',
  evaporationFactor: 'heating',
  thermometerOffsetC: 'boilingWater',
  thermometerLagS: 'lag',
  spoonFactor: 'spoons',
  surfaceRenewalS: 'weighing',
  thickFilm: 'weighing',
  boilingTheta: 'weighing',
  inversionRate130: 'weighing',
  pigmentFirst: 'spoonTests',
  pigmentSecond: 'spoonTests',
  absorptivity420: 'spoonTests',
} as const satisfies Partial<Record<ModelParameter, Telling>>;
export type KitchenNumber = keyof typeof kitchenNumbers;

export interface Change {
  readonly name: KitchenNumber;
  readonly unit: string;
  readonly before: Range;
  readonly after: Range;
  /** Spread after over spread before. */
  readonly narrowing: number;
  /** What would tell it, when this lesson did not and it is still open. */
  readonly toldBy?: Telling;
}

/** 10 % and 90 % marks of a normal distribution, in standard deviations. */
const score80 = 1.2816;
/** Spread left, over that before the lesson, from which on it taught nothing of a number; and over that of any kit, below which all is well. */
const untaught = 0.9;
const wellKnown = 0.5;

export function changesBy(kit: Kit, learned: Learned): readonly Change[] {
  const before = knownOf(kit);
  const after = knownOf({ ...kit, learned });
  return (Object.keys(kitchenNumbers) as KitchenNumber[]).map((name) => {
    const i = before.names.indexOf(name);
    const narrowing = spreadOf(after, i) / spreadOf(before, i);
    const open = narrowing > untaught && spreadOf(after, i) > wellKnown;
    const parameter = before.stated[name];
    return {
      name,
      unit: parameter.unit,
      before: rangeAt(parameter, before, i),
      after: rangeAt(parameter, after, i),
      narrowing,
      ...(open && { toldBy: kitchenNumbers[name] }),
    };
  });
}

/** The 10-90 % range of each number that is shown, and the spread of its score. */
export function rangesOf(
  kit: Kit,
): Readonly<Record<KitchenNumber, { readonly range: Range; readonly spread: number }>> {
  const known = knownOf(kit);
  const entries = (Object.keys(kitchenNumbers) as KitchenNumber[]).map((name) => {
    const i = known.names.indexOf(name);
    return [name, { range: rangeAt(known.stated[name], known, i), spread: spreadOf(known, i) }] as const;
  });
  return Object.fromEntries(entries) as Record<KitchenNumber, { range: Range; spread: number }>;
}

/** Standard deviation of the score in place i. */
function spreadOf({ root, names }: Knowledge, i: number): number {
  return Math.hypot(...root.subarray(i * names.length, i * names.length + i + 1));
}

function rangeAt(parameter: Parameter, known: Knowledge, i: number): Range {
  const at = (score: number) => valueAt(parameter, known.centre[i] + score * widening * spreadOf(known, i));
  return { low: at(-score80), mid: at(0), high: at(score80) };
}
