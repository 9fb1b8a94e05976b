/** Handbook: colour scales, and how a liquid of a given A430 looks. */
import { expectedHueIndex } from '../../core/colour/hueIndex.ts';
import { type RatingBasis, ratingBases } from '../../core/colour/rating.ts';
import {
  a430FromEbc,
  a430FromSrm,
  ebcFromA430,
  icumsaFromSpecific,
  specificFromIcumsa,
  srmFromA430,
} from '../../core/colour/scales.ts';
import { type Given, number, optional, percent, quantity, usually } from '../input.ts';
import { Stop } from '../stop.ts';
import { entry } from './entry.ts';
import { exact, giveShare } from './range.ts';

const gramsPerLitre = ratingBases['tenPercentByWeight' satisfies RatingBasis].gramsPerLitre;
const definitions = 'EBC = 25 A430 (Analytica-EBC 9.6), SRM = 12.7 A430 (ASBC Beer-10A)';

const scales = {
  a430: optional(number('absorbance at 430 nm per cm', [0, 100])),
  ebc: optional(number('EBC', [0, 2500])),
  srm: optional(number('SRM', [0, 1270])),
};

/** A430 per cm from the one scale that was given. */
function a430Of({ a430, ebc, srm }: Given<typeof scales>): number {
  const given = [a430, ebc && a430FromEbc(ebc), srm && a430FromSrm(srm)].filter((value) => value !== undefined);
  const [value] = given;
  if (given.length !== 1 || value === undefined) throw oneScale('--a430, --ebc and --srm');
  return value;
}

function oneScale(names: string): Stop {
  return new Stop({ kind: 'misused', field: '--a430', message: `give one of ${names}` });
}

const hue = optional(
  number("the pigment's hue index; as expected of a cooked sugar of that strength if not given", [1, 12]),
);

function hueOf(given: number | undefined, specific430: number): number {
  return given ?? expectedHueIndex(specific430, 0).mean;
}

function hueText(given: number | undefined, hueIndex: number): string {
  return given === undefined ? `${hueIndex.toFixed(1)}, as expected of a cooked sugar (assumed)` : String(hueIndex);
}

export const colourEntries = [
  entry({
    name: 'colour',
    meaning: 'EBC of a clear brown liquid, its colour on the other scales, and how it looks through a depth of it',
    unit: '{EBC}',
    valid: 'A430 0 to 100 per cm, path to 1 m',
    source: `${definitions}; spectrum by Linner 1970; CIE 015:2018, IEC 61966-2-1`,
    mark: 'seen',
    example: '--a430 2.5 --path 5cm',
    inputs: {
      ...scales,
      path: usually(quantity('length', 'way of the light, such as 5cm', 'cm', [0, 1]), '5cm'),
      hue,
    },
    compute: async (given) => {
      const a430 = a430Of(given);
      const specific = a430 / gramsPerLitre;
      const hueIndex = hueOf(given.hue, specific);
      // Loaded here, because a colour-science library of many files comes with it.
      const { syrupColour, syrupLab } = await import('../../core/colour/syrup.ts');
      const { r, g, b, clipped } = syrupColour(a430, 100 * given.path, hueIndex);
      const { l, a, b: yellow } = syrupLab(a430, 100 * given.path, hueIndex);
      const lab = [l, a, yellow];
      return {
        ...exact(ebcFromA430(a430)),
        note: 'EBC and SRM are definitions; ICUMSA takes the liquid for a 10 % w/w solution; the look rests on the hue index',
        further: {
          srm: srmFromA430(a430),
          icumsa_IU: icumsaFromSpecific(specific, hueIndex),
          hueIndex,
          srgb: [r, g, b],
          srgbClipped: clipped,
          lab,
        },
        inWords: {
          hueIndex: hueText(given.hue, hueIndex),
          srgb: `${r}, ${g}, ${b}${clipped ? ', as near as a screen comes to it' : ''}`,
          srgbClipped: undefined,
          lab: lab.map((each) => each.toFixed(1).replace(/^-(0\.0)$/, '$1')).join(', '),
        },
      };
    },
  }),
  entry({
    name: 'ebc',
    meaning: 'EBC from A430 or SRM',
    unit: '{EBC}',
    valid: 'A430 0 to 100 per cm',
    source: definitions,
    mark: 'seen',
    example: '--srm 30',
    inputs: scales,
    compute: (given) => exact(ebcFromA430(a430Of(given))),
  }),
  entry({
    name: 'srm',
    meaning: 'SRM from A430 or EBC',
    unit: '{SRM}',
    valid: 'A430 0 to 100 per cm',
    source: definitions,
    mark: 'seen',
    example: '--ebc 60',
    inputs: scales,
    compute: (given) => exact(srmFromA430(a430Of(given))),
  }),
  entry({
    name: 'a430',
    meaning: 'absorbance at 430 nm, of 1 cm, from EBC or SRM, or of a 10 % w/w solution from ICUMSA colour',
    unit: '/cm',
    valid: 'A430 0 to 100 per cm, ICUMSA 0 to 1,000,000 IU',
    source: `${definitions}; ICUMSA GS1/3-7, GS2/3-10`,
    mark: 'seen',
    example: '--ebc 60',
    inputs: { ...scales, icumsa: optional(number('ICUMSA colour of the dry sugar', [0, 1e6], 'IU')), hue },
    compute: (given) => {
      const { icumsa } = given;
      const others = [given.a430, given.ebc, given.srm].filter((each) => each !== undefined).length;
      if (others + (icumsa === undefined ? 0 : 1) !== 1) throw oneScale('--a430, --ebc, --srm and --icumsa');
      if (icumsa === undefined) return exact(a430Of(given));
      const hueIndex = hueOf(given.hue, icumsa / 1e6);
      return {
        ...giveShare(gramsPerLitre * specificFromIcumsa(icumsa, hueIndex), 0.1, 'error assumed'),
        mark: 'derived',
        further: { hueIndex },
        inWords: { hueIndex: hueText(given.hue, hueIndex) },
      };
    },
  }),
  entry({
    name: 'icumsa',
    meaning: 'ICUMSA colour (420 nm) of a sugar from the colour of its 10 % w/w solution',
    unit: '{IU}',
    valid: 'A430 0 to 100 per cm',
    source: 'ICUMSA GS1/3-7, GS2/3-10; step from 430 to 420 nm by the hue index',
    mark: 'derived',
    example: '--ebc 60',
    inputs: { ...scales, hue, solids: usually(percent('dry solids of the sugar, per cent', [0.01, 1]), '100') },
    compute: (given) => {
      const specific = a430Of(given) / gramsPerLitre / given.solids;
      const hueIndex = hueOf(given.hue, specific);
      return {
        ...giveShare(icumsaFromSpecific(specific, hueIndex), 0.1, 'error assumed'),
        note: 'measured at pH 7 by the method; the acid of beer pales some of it',
        further: { hueIndex },
        inWords: { hueIndex: hueText(given.hue, hueIndex) },
      };
    },
  }),
];
