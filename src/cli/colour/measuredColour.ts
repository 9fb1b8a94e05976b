/** The colour of a sugar on every scale, with its range, from what was given on the command line. */

import { dropColour } from '../../core/colour/drop.ts';
import { expectedHueIndex } from '../../core/colour/hueIndex.ts';
import { ratingA430, ratingBases, specificFromRating } from '../../core/colour/rating.ts';
import {
  ebcFromA430,
  ebcFromSrm,
  icumsaFromSpecific,
  specificFromIcumsa,
  srmFromA430,
} from '../../core/colour/scales.ts';
import { pigmentShape } from '../../core/colour/spectrum.ts';
import type { Srgb } from '../../core/colour/srgb.ts';
import { factorAround } from '../../core/lot/known.ts';
import { colourByAbsorbance } from '../../core/lot/measure/colour.ts';
import type { Range } from '../../core/twin/range.ts';
import type { ColourGiven } from '../colour.ts';

export interface MeasuredColour {
  /** Of the dry sugar at 430 nm, L/(g cm). */
  readonly specific430: Range;
  /** Per cm of a 10 % w/w solution. */
  readonly a430: Range;
  readonly ebc: Range;
  readonly srm: Range;
  readonly icumsa: Range;
  readonly hueIndex: number;
  /** A drop of 3 mm of it on white, with the water that it has. */
  readonly drop: Srgb;
  readonly source: string;
}

const usualMaillardShare = 0.5;
const usualPathCm = 1;

/** @throws RangeError for an absorbance that no kitchen instrument tells apart */
export function measuredColour(given: ColourGiven): MeasuredColour {
  return onEveryScale(specificOf(given), given.solids);
}

export function onEveryScale(specific430: Range, solids: number): MeasuredColour {
  const hueIndex = expectedHueIndex(specific430.mid, usualMaillardShare).mean;
  const each = (change: (specific: number) => number): Range => ({
    low: change(specific430.low),
    mid: change(specific430.mid),
    high: change(specific430.high),
  });
  const a430 = each((specific) => ratingA430(specific, 'tenPercentByWeight'));
  return {
    specific430,
    a430,
    ebc: each((specific) => ebcFromA430(ratingA430(specific, 'tenPercentByWeight'))),
    srm: each((specific) => srmFromA430(ratingA430(specific, 'tenPercentByWeight'))),
    icumsa: each((specific) => icumsaFromSpecific(specific, hueIndex)),
    hueIndex,
    drop: dropColour(specific430.mid, hueIndex, 1 - solids),
    source:
      'EBC = 25 A430 (Analytica-EBC 9.6), SRM = 12.7 A430 (ASBC Beer-10A), ICUMSA GS1/3-7; errors of kitchen instruments assumed',
  };
}

function specificOf(given: ColourGiven): Range {
  const { a430, a420, ebc, srm, icumsa, sugar, madeUpTo, fold, path = usualPathCm, solids } = given;
  if (sugar !== undefined && madeUpTo !== undefined) {
    const wavelengthNm = a420 === undefined ? 430 : 420;
    const absorbance = a430 ?? a420 ?? Number.NaN;
    const told = {
      method: 'absorbance',
      sugarG: sugar,
      totalMl: madeUpTo,
      fold,
      wavelengthNm,
      absorbance,
      pathCm: path,
    } as const;
    const { value, readingSd, methodSd } = colourByAbsorbance(told, { solids: { value: solids, sd: 0 } });
    return factorAround(value, Math.hypot(readingSd, methodSd));
  }
  if (icumsa !== undefined)
    return certain(specificFromIcumsa(icumsa, expectedHueIndex(icumsa / 1e6, usualMaillardShare).mean));
  if (ebc !== undefined) return certain(specificFromRating(ebc, 'tenPercentByWeight'));
  if (srm !== undefined) return certain(specificFromRating(ebcFromSrm(srm), 'tenPercentByWeight'));
  const perGram = (a430 ?? a420 ?? Number.NaN) / (path * ratingBases.tenPercentByWeight.gramsPerLitre);
  const step = a420 === undefined ? 1 : pigmentShape(420, expectedHueIndex(perGram, usualMaillardShare).mean);
  return certain(perGram / step);
}

function certain(value: number): Range {
  return { low: value, mid: value, high: value };
}
