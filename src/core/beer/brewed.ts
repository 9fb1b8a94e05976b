/** What becomes of a wort with its sugars, for settled numbers: fermented parts add by mass; alcohol and extracts by Balling (`balling.ts`). */
import {
  alcoholByRegression,
  alcoholByVolume,
  apparentAttenuation,
  apparentExtract,
  fermentedShare,
  kcalPer100g,
  realAttenuation,
  realExtract,
} from './balling.ts';
import { type Mixture, mixed, mixture, type Part, partsOf, total } from './mixture.ts';
import { gravityFromPlato, platoFromGravity } from './plato.ts';
import type { SettledGlass } from './settled.ts';
import { type Wort, wortKgPerL, wortOf } from './wort.ts';

export interface Brewed extends Mixture {
  /** What a hydrometer shows at pitching: without what is added in the fermenter. */
  readonly pitchingGravity: number;
  /** By how much the extract grows as the sucrose of the sugars is inverted, P. */
  readonly inversionGainPlato: number;
  /** Share of the sugars' solids that yeast takes. */
  readonly fermentability: number;
  readonly realPlato: number;
  readonly apparentPlato: number;
  readonly finalGravity: number;
  readonly realAttenuation: number;
  readonly apparentAttenuation: number;
  /** Per cent by volume, by Balling. */
  readonly abv: number;
  /** The same by the regression of Cutaia, Reid & Speers 2009. */
  readonly abvByRegression: number;
  readonly sodiumMgPerL: number;
  readonly calciumMgPerL: number;
  readonly kcalPer100mL: number;
}

export function brewed(glass: SettledGlass): Brewed {
  const { rest, extractPerAlcohol } = glass;
  const parts = partsOf(glass);
  const malt = wortOf(rest.volumeL, rest.gravity);
  const original = mixed(malt, parts);
  const wort = mixture(glass);
  const [solidsKg, gainKg, fermentableKg] = [
    total(parts, 'extractKg'),
    total(parts, 'gainKg'),
    total(parts, 'fermentableKg'),
  ];
  // Drawn 400 times for each glass: spreads in the midst of an object cost a hundred times as much as this.
  return Object.assign(
    fermentedOut(original, gainKg, fermentedKg(glass, malt) + fermentableKg, extractPerAlcohol),
    wort,
    {
      pitchingGravity: pitchingGravity(malt, parts),
      inversionGainPlato: (100 * gainKg) / original.massKg,
      fermentability: solidsKg > 0 ? (fermentableKg - gainKg) / solidsKg : 0,
      sodiumMgPerL: (1000 * total(parts, 'sodiumG')) / wort.volumeL,
      calciumMgPerL: (1000 * total(parts, 'calciumG')) / wort.volumeL,
    },
  );
}

function pitchingGravity(malt: Wort, parts: readonly Part[]): number {
  const inKettle = parts.filter(({ added }) => added !== 'fermenter');
  const { massKg, extractKg } = mixed(malt, inKettle);
  return gravityFromPlato((100 * extractKg) / massKg);
}

/** What the yeast takes of the rest's extract, kg. */
function fermentedKg({ rest }: SettledGlass, malt: Wort): number {
  const plato = Math.max(0, platoFromGravity(rest.gravity));
  return malt.extractKg * fermentedShare(plato, realExtract(plato, plato * (1 - rest.attenuation)));
}

/** @param gainKg water that inversion turns into extract, before or while the yeast is at it */
function fermentedOut(original: Wort, gainKg: number, fermented: number, extractPerAlcohol: number) {
  const extractKg = original.extractKg + gainKg;
  const alcoholKg = fermented / extractPerAlcohol;
  const beerKg = original.massKg - alcoholKg * (extractPerAlcohol - 1);
  const originalPlato = (100 * extractKg) / original.massKg;
  const realPlato = (100 * Math.max(0, extractKg - fermented)) / beerKg;
  const apparentPlato = apparentExtract(originalPlato, realPlato);
  const finalGravity = gravityFromPlato(apparentPlato);
  const byWeight = (100 * alcoholKg) / beerKg;
  return {
    realPlato,
    apparentPlato,
    finalGravity,
    realAttenuation: realAttenuation(originalPlato, realPlato),
    apparentAttenuation: apparentAttenuation(originalPlato, apparentPlato),
    abv: alcoholByVolume(byWeight, finalGravity),
    abvByRegression: alcoholByVolume(alcoholByRegression(originalPlato, apparentPlato), finalGravity),
    kcalPer100mL: kcalPer100g(byWeight, realPlato) * wortKgPerL(finalGravity),
  };
}
