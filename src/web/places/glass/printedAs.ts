/** What packets and sheets print of a sugar's extract and colour, and what that is per gram of it. */
import {
  gramsPerLitreOfPoundPerGallon,
  solidsFromLitreDegrees,
  solidsFromPoints,
} from '../../../core/beer/extractYield.ts';
import { gravityOfSucrose } from '../../../core/beer/wort.ts';
import { expectedHueIndex } from '../../../core/colour/hueIndex.ts';
import { type RatingBasis, ratingEbc, specificFromRating } from '../../../core/colour/rating.ts';
import { ebcFromSrm, icumsaFromSpecific, specificFromIcumsa, srmFromEbc } from '../../../core/colour/scales.ts';

interface Print {
  readonly name: string;
  readonly unit: string;
}

interface ExtractPrint extends Print {
  readonly range: readonly [number, number];
  fromSolids(solids: number): number;
  toSolids(printed: number): number;
}

export const extractPrints = {
  solids: { name: 'Solids, %', unit: '%', range: [50, 100], fromSolids: (s) => 100 * s, toSolids: (p) => p / 100 },
  points: {
    name: 'Points × gal/lb',
    unit: '',
    range: [23.5, 46.1],
    fromSolids: (solids) => 1000 * (gravityOfSucrose(solids * gramsPerLitreOfPoundPerGallon) - 1),
    toSolids: solidsFromPoints,
  },
  degrees: {
    name: 'Litre degrees/kg',
    unit: '',
    range: [196, 385],
    fromSolids: (solids) => 1e4 * (gravityOfSucrose(100 * solids) - 1),
    toSolids: solidsFromLitreDegrees,
  },
} as const satisfies Record<string, ExtractPrint>;

export type ExtractAs = keyof typeof extractPrints;

interface ColourPrint extends Print {
  /** Of the sugar as it is, L/(g cm). */
  fromSpecific(specific430AsIs: number, solids: number): number;
  toSpecific(printed: number, solids: number): number;
}

const ebc = (basis: RatingBasis, name: string): ColourPrint => ({
  name,
  unit: 'EBC',
  fromSpecific: (specific) => ratingEbc(specific, basis),
  toSpecific: (printed) => specificFromRating(printed, basis),
});
/** To turn ICUMSA units by when nothing else is known: at 420 nm it moves the colour by 2 % (see the core's `scales.ts`). */
const usualHueIndex = expectedHueIndex(0.03, 0.5).mean;

export const colourPrints: Readonly<Record<ColourAs, ColourPrint>> = {
  ebc10ww: ebc('tenPercentByWeight', 'EBC of 10 % w/w'),
  ebc10wv: ebc('tenPercentByVolume', 'EBC of 10 % w/v'),
  ebcAsIs: ebc('asIs', 'EBC, undiluted'),
  srm10ww: {
    name: 'SRM of 10 % w/w',
    unit: 'SRM',
    fromSpecific: (specific) => srmFromEbc(ratingEbc(specific, 'tenPercentByWeight')),
    toSpecific: (printed) => specificFromRating(ebcFromSrm(printed), 'tenPercentByWeight'),
  },
  icumsa: {
    name: 'ICUMSA units',
    unit: 'IU',
    fromSpecific: (specific, solids) => icumsaFromSpecific(specific / solids, usualHueIndex),
    toSpecific: (printed, solids) => solids * specificFromIcumsa(printed, usualHueIndex),
  },
};

export type ColourAs = 'ebc10ww' | 'ebc10wv' | 'ebcAsIs' | 'srm10ww' | 'icumsa';
