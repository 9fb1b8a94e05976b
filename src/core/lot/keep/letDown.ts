/** Letting a sugar down to syrup: how much water, in which order, and whether the syrup stays clear and sound. */
import { limits } from '../../advice/limits.ts';
import { waterActivity } from '../../matter/activity.ts';
import { requireRange } from '../../matter/range.ts';
import { partlyInverted } from '../../matter/sugars.ts';
import { letDownWaterKg } from '../../planning/account/casting.ts';
import { invertShare } from '../known.ts';
import type { Expected } from '../yield.ts';
import { type Crystals, crystalsIn } from './crystals.ts';
import { type Growth, growthAt } from './spoilage.ts';

export const letDownRanges = { massKg: [0.01, 20], brix: [50, 85], sugarC: [0, 200], keptC: [0, 38] } as const;

export interface LetDownWish {
  readonly massKg: number;
  /** Solids wanted, % by weight. */
  readonly brix: number;
  /** How hot the sugar is when the water goes in. */
  readonly sugarC: number;
  /** How warm the syrup is kept. */
  readonly keptC: number;
}

/** How water and sugar come together; only below the boil may water be poured. */
export type Order = 'sugar into water' | 'pour' | 'by small parts' | 'by teaspoons';

export interface LetDown {
  readonly waterKg: number;
  readonly syrupKg: number;
  readonly order: Order;
  /** The most water at once, kg; none where it is the sugar that goes into the water. */
  readonly portionKg: number | undefined;
  readonly crystals: Crystals;
  readonly activity: number;
  readonly growth: Growth;
}

/** Below this nothing boils up, C (altitudes that people live at, and a margin; judgement). */
const poursBelowC = 80;
/** Cold enough to break and to handle, C. */
const coldBelowC = 40;

/**
 * @throws RangeError naming a number outside its range, and for a sugar that has more water than is wanted already
 * Order and portions: the limits of safety (`core/advice/limits.ts`).
 */
export function letDown(
  { waterShare, inverted }: Pick<Expected, 'waterShare' | 'inverted'>,
  wish: LetDownWish,
): LetDown {
  const { massKg, brix, sugarC, keptC } = wish;
  requireRange('sugar (kg)', massKg, ...letDownRanges.massKg);
  requireRange('solids wanted (Brix)', brix, ...letDownRanges.brix);
  requireRange('temperature of the sugar (C)', sugarC, ...letDownRanges.sugarC);
  requireRange('temperature that it is kept at (C)', keptC, ...letDownRanges.keptC);
  const solids = 1 - waterShare.mid;
  requireRange('solids wanted (Brix)', brix, letDownRanges.brix[0], 100 * solids);
  const dryKg = massKg * solids;
  const waterKg = letDownWaterKg(dryKg, massKg - dryKg, brix / 100);
  const activity = waterActivity(brix / 100, keptC, partlyInverted(invertShare(inverted.mid)));
  return {
    waterKg,
    syrupKg: massKg + waterKg,
    ...orderAt(sugarC, massKg),
    crystals: crystalsIn(brix / 100, inverted.mid, keptC),
    activity,
    growth: growthAt(activity),
  };
}

function orderAt(sugarC: number, massKg: number): Pick<LetDown, 'order' | 'portionKg'> {
  if (sugarC < coldBelowC) return { order: 'sugar into water', portionKg: undefined };
  if (sugarC < poursBelowC) return { order: 'pour', portionKg: undefined };
  if (sugarC <= limits.portionHotFrom.value)
    return { order: 'by small parts', portionKg: limits.coolWater.value * massKg };
  return { order: 'by teaspoons', portionKg: Math.min(limits.hotSpoonful.value, limits.hotPortion.value * massKg) };
}
