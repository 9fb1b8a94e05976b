/** The options of `glass`: the rest of the beer, what is wished, and how it is shown. */

import { wishRanges } from '../../core/beer/dose.ts';
import { type Rest, glassRanges as ranges, usualPathCm, usualRest } from '../../core/beer/glass.ts';
import { gravityFromPlato } from '../../core/beer/plato.ts';
import type { BeerWish } from '../../core/beer/reach.ts';
import { a430FromEbc, a430FromSrm, ebcFromSrm } from '../../core/colour/scales.ts';
import {
  flagOf,
  type Given,
  type Input,
  mapped,
  number,
  optional,
  percent,
  quantity,
  usually,
  word,
} from '../input.ts';
import { Stop } from '../stop.ts';

/** Litres; limits are told in L. */
export function litres(meaning: string, [low, high]: readonly [number, number]): Input<number> {
  return mapped(quantity('volume', meaning, 'L', [low / 1000, high / 1000]), (m3) => m3 * 1000);
}

export const restInputs = {
  volume: litres('wort without the sugars that reaches the fermenter', ranges.volumeL),
  gravity: optional(number('its specific gravity before fermentation', ranges.gravity)),
  plato: optional(number('instead: degrees Plato', [0, 31])),
  ebc: optional(number('colour of the beer without the sugars, EBC', [0, 250])),
  srm: optional(number('instead: SRM', [0, 127])),
  a430: optional(number('instead: absorbance at 430 nm per cm', ranges.a430PerCm)),
  attenuation: usually(percent('apparent, by this yeast without the sugars, per cent', ranges.attenuation), '75'),
  sodium: usually(number('in it from water and malt', ranges.sodiumMgPerL, 'mg/L'), `${usualRest.sodiumMgPerL}`),
  calcium: usually(number('in it from water and malt', ranges.calciumMgPerL, 'mg/L'), `${usualRest.calciumMgPerL}`),
  kettleLoss: usually(litres('wort left behind in the kettle', ranges.kettleLossL), '0L'),
} as const;

export const wishInputs = {
  toEbc: optional(number('colour of the beer, EBC', wishRanges.ebc)),
  toSrm: optional(number('instead: SRM', [0, 127])),
  toShare: optional(percent('share of the extract from sugar, per cent', wishRanges.extractShare)),
  toGravity: optional(number('instead: original gravity', wishRanges.gravity)),
  mostShare: usually(percent('most of the extract that may be sugar, per cent', [0.01, 0.6]), '20'),
} as const;

export const swapInputs = {
  equal: optional(word('what stays as it is with --swap', ['colour', 'extract']), 'colour'),
} as const;

export const shownInputs = {
  toVolume: optional(litres('the same beer in another size, sugars in it', ranges.volumeL)),
  path: usually(
    mapped(quantity('length', 'width of the drawn glass', 'cm', [0.005, 0.2]), (m) => 100 * m),
    `${usualPathCm}cm`,
  ),
  boughtPrice: optional(number('of a kg of solids of a bought sugar, to compare', [0, 10_000])),
  units: usually(word('of masses and volumes shown', ['metric', 'us', 'imperial']), 'metric'),
} as const;

export function restFrom(given: Given<typeof restInputs>): Rest {
  const { volume, attenuation, sodium, calcium } = given;
  oneOf(given, ['gravity', 'plato']);
  oneOf(given, ['ebc', 'srm', 'a430']);
  return {
    volumeL: volume,
    gravity: given.gravity ?? gravityFromPlato(given.plato ?? Number.NaN),
    a430PerCm: given.a430 ?? (given.srm === undefined ? a430FromEbc(given.ebc ?? Number.NaN) : a430FromSrm(given.srm)),
    attenuation,
    sodiumMgPerL: sodium,
    calciumMgPerL: calcium,
  };
}

/** None when nothing is wished. */
export function wishFrom(given: Given<typeof wishInputs>): BeerWish | undefined {
  const { toEbc, toSrm, toShare, toGravity } = given;
  atMostOneOf(given, ['toEbc', 'toSrm']);
  atMostOneOf(given, ['toShare', 'toGravity']);
  if ([toEbc, toSrm, toShare, toGravity].every((each) => each === undefined)) return undefined;
  return { ebc: toSrm === undefined ? toEbc : ebcFromSrm(toSrm), extractShare: toShare, gravity: toGravity };
}

function oneOf<Name extends string>(given: Readonly<Record<Name, unknown>>, names: readonly Name[]): void {
  if (atMostOneOf(given, names) === 1) return;
  const [first = ''] = names;
  throw new Stop({ kind: 'misused', field: flagOf(first), message: `${flagOf(first)} is missing; ${choice(names)}` });
}

function atMostOneOf<Name extends string>(given: Readonly<Record<Name, unknown>>, names: readonly Name[]): number {
  const said = names.filter((name) => given[name] !== undefined);
  const [, second] = said;
  if (second !== undefined) {
    const message = `${said.map(flagOf).join(' and ')} say the same thing; ${choice(names)}`;
    throw new Stop({ kind: 'misused', field: flagOf(second), message });
  }
  return said.length;
}

function choice(names: readonly string[]): string {
  return `allowed: one of ${names.map(flagOf).join(', ')}`;
}
