/** How to thin a sugar so that its colour can be measured: weighed into a volume, and thinned once more where the weight would be a pinch. */
import { requireRange } from '../../matter/range.ts';
import type { Range } from '../../twin/range.ts';
import type { MadeUp } from '../note.ts';
import { dryGPerL } from './colour.ts';

/** Absorbance to aim at, and what is still good: there the error of reading is least (ASBC Beer-10A asks for less than 0.8 to 1.0, seen quoted). */
const aimedAbsorbance = 0.5;
export const goodAbsorbance = [0.2, 0.9] as const;
/** A weight is worth this many divisions of the scale: 1 % each way (judgement). */
const divisions = 100;
/** Thinning by more than this in one step is done with a drop, and badly (judgement). */
const mostFold = 20;

export interface DilutionWish {
  /** Of the dry sugar, L/(g cm), with its range. */
  readonly specific430: Range;
  readonly solids: number;
  readonly pathCm: number;
  /** What is made up at a time, mL. */
  readonly totalMl: number;
  /** Division of the scale, g. */
  readonly divisionG: number;
}

export interface DilutionPlan extends MadeUp {
  /** What a photometer should show of it. */
  readonly absorbance: Range;
  /** The sugar is so pale, or the scale so coarse, that no dilution does it: what then. */
  readonly trouble: string | undefined;
}

/** @throws RangeError naming a number outside its range */
export function dilutionFor(wish: DilutionWish): DilutionPlan {
  const { specific430, solids, pathCm, totalMl, divisionG } = wish;
  requireRange('path (cm)', pathCm, 0.1, 10);
  requireRange('volume (mL)', totalMl, 10, 5000);
  requireRange('division of the scale (g)', divisionG, 0.001, 10);
  const wantedG = (aimedAbsorbance * totalMl) / (1000 * specific430.mid * pathCm * solids);
  // Never thicker than 400 g/L: thick syrup is too stiff to mix and bends light.
  const thickestG = 0.4 * totalMl;
  const leastG = divisions * divisionG;
  const fold = wantedG >= leastG ? 1 : Math.min(mostFold ** 2, wholeFold(leastG / wantedG));
  const sugarG = rounded(Math.min(thickestG, wantedG * fold), divisionG);
  const made = { sugarG, totalMl, fold };
  const perSpecific = dryGPerL(made, solids) * pathCm;
  const { low, mid, high } = specific430;
  const absorbance = { low: low * perSpecific, mid: mid * perSpecific, high: high * perSpecific };
  return { ...made, absorbance, trouble: troubleOf(wantedG, thickestG, absorbance) };
}

function troubleOf(wantedG: number, thickestG: number, { mid }: Range): string | undefined {
  if (wantedG > thickestG)
    return `too pale for this cell: take a longer path than this, or be content with an absorbance of ${mid.toFixed(2)}`;
  if (mid > goodAbsorbance[1] || mid < goodAbsorbance[0])
    return 'the scale is too coarse for this volume: make up more';
  return undefined;
}

/** To folds that a measuring glass gives: 2, 5, 10, 20, 50 and so on. */
function wholeFold(least: number): number {
  const decade = 10 ** Math.floor(Math.log10(least));
  return [1, 2, 5, 10].map((step) => step * decade).find((fold) => fold >= least - 1e-9) ?? 10 * decade;
}

/** To a division that can be read, and to figures that can be remembered. */
function rounded(grams: number, divisionG: number): number {
  const decade = 10 ** Math.floor(Math.log10(grams));
  const step = Math.max(divisionG, decade / 10);
  return Math.max(divisionG, Math.round(grams / step) * step);
}
