/** The uncertain numbers of a glass of beer. */
import type { Parameters } from '../reactions/parameter.ts';

export const beerParameters = {
  colourKept: {
    meaning: "share of a sugar's colour that is still there after fermentation and filtration",
    centre: 0.95,
    sd: 0.04,
    spread: 'normal',
    within: [0.5, 1],
    unit: '1',
    source: 'trade texts: colour drops by 5 to 20 %, mostly with the yeast',
    mark: 'from memory',
    sdReason: 'to be replaced by what your own beers say',
  },
  attenuationError: {
    meaning: 'by how much a yeast attenuates more or less than expected, apparent',
    centre: 0,
    sd: 0.02,
    spread: 'normal',
    unit: '1',
    source: 'mash, pitching and temperature differ from brew to brew',
    mark: 'assumed',
    sdReason: 'yeast suppliers print bands of 4 to 8 points',
  },
  extractPerAlcohol: {
    meaning: 'extract that is fermented for each gram of alcohol',
    centre: 2.0665,
    sd: 0.02,
    spread: 'normal',
    within: [1.96, 2.2],
    unit: 'g/g',
    source: 'Balling 1843-65, as in Speers, Brewing Calculations (MBAA); Kvasny Prumysl 61 (2015) 120',
    mark: 'seen in a transcription',
    sdReason: 'more or less yeast grows; Cutaia, Reid & Speers 2009 find 1 % between brews',
  },
} as const satisfies Parameters<string>;
