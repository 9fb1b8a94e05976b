/**
 * The trade's empirical colour of the same beer, to stand beside the computed one: SRM = 1.4922 MCU^0.6859 (Morey, letter to a brewing
 * periodical, mid-1990s), fitted to malt grists. A clear sugar follows Beer-Lambert, so the two part as the dose grows.
 */
import { moreySrm, srmFromA430 } from '../colour/scales.ts';
import type { Range } from '../twin/range.ts';
import { gramsPerLitreOfPoundPerGallon } from './extractYield.ts';
import type { Glass } from './glass.ts';
import { mixture } from './mixture.ts';
import { type SettledGlass, settled } from './settled.ts';
import { central, rangesOf } from './uncertain.ts';

/** Beyond this the equation was not fitted. */
const empiricalSrmLimit = 50;
/** When the two are said to part. */
const partedShare = 0.1;
const scanSteps = 100;

export interface EmpiricalColour {
  readonly srm: Range;
  /** Beyond what it was fitted to. */
  readonly outside: boolean;
  /** Grams of the sugars per litre of beer from which on the two differ by more than a tenth; none up to this dose. */
  readonly partsFromGPerL: number | null;
}

export function empiricalColour(glass: Glass): EmpiricalColour {
  const { srm } = rangesOf((pick) => ({ srm: empiricalSrm(settled(glass, pick)) }));
  return { srm, outside: srm.mid > empiricalSrmLimit, partsFromGPerL: partsFrom(settled(glass, central)) };
}

function empiricalSrm(glass: SettledGlass): number {
  const { rest, doses } = glass;
  const { volumeL } = mixture(glass);
  const restMcu = (srmFromA430(rest.a430PerCm) / moreySrm(1)) ** (1 / 0.6859);
  const sugarsMcu = doses.map(
    ({ massKg, solids, specific430 }) =>
      ((massKg * 1000) / volumeL / gramsPerLitreOfPoundPerGallon) * lovibondOf(solids * specific430),
  );
  return moreySrm((restMcu * rest.volumeL) / volumeL + sugarsMcu.reduce((sum, mcu) => sum + mcu, 0));
}

/** Degrees Lovibond of a sugar, rated as a pound in a gallon; the inverse of `srmFromLovibond`. */
function lovibondOf(specific430AsIs: number): number {
  const srm = srmFromA430(specific430AsIs * gramsPerLitreOfPoundPerGallon);
  return Math.min(srm, (srm + 0.76) / 1.3546);
}

function partsFrom(glass: SettledGlass): number | null {
  for (let step = 1; step <= scanSteps; step++) {
    const part = step / scanSteps;
    const less = { ...glass, doses: glass.doses.map((dose) => ({ ...dose, massKg: dose.massKg * part })) };
    const { a430PerCm, volumeL } = mixture(less);
    const computed = srmFromA430(a430PerCm);
    if (Math.abs(empiricalSrm(less) - computed) > partedShare * computed) {
      return (1000 * less.doses.reduce((sum, { massKg }) => sum + massKg, 0)) / volumeL;
    }
  }
  return null;
}
