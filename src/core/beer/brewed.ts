/**
 * Mass balance of a beer with sugars in it, for settled numbers: extracts and water add by mass, fermented parts add by mass, absorbances
 * add by volume (Beer-Lambert); alcohol and extracts by Balling (`balling.ts`).
 */
import { a430FromSpecific } from '../colour/scales.ts';
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
import { gravityFromPlato, platoFromGravity } from './plato.ts';
import type { SettledDose, SettledGlass } from './settled.ts';
import { inversionGain } from './sugar.ts';
import { type Wort, wortKgPerL, wortOf } from './wort.ts';

export interface Brewed {
  readonly volumeL: number;
  /** Before fermentation, all sugars in it; as they went in, before the sucrose is inverted. P and 20/20 C. */
  readonly originalPlato: number;
  readonly originalGravity: number;
  /** What a hydrometer shows at pitching: without what is added in the fermenter. */
  readonly pitchingGravity: number;
  /** By how much the extract grows as the sucrose of the sugars is inverted, P. */
  readonly inversionGainPlato: number;
  /** Share of the original extract that the sugars bring. */
  readonly extractShare: number;
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
  readonly a430PerCm: number;
  readonly sugarsA430PerCm: number;
  readonly sodiumMgPerL: number;
  readonly calciumMgPerL: number;
  readonly kcalPer100mL: number;
}

export function brewed(glass: SettledGlass): Brewed {
  const { rest, doses } = glass;
  const parts = doses.map((dose) => partOf(dose, glass));
  const malt = wortOf(rest.volumeL, rest.gravity);
  const original = mixed(malt, parts);
  const originalPlato = (100 * original.extractKg) / original.massKg;
  const originalGravity = gravityFromPlato(originalPlato);
  const volumeL = original.massKg / wortKgPerL(originalGravity);
  const sum = (of: (part: Part) => number) => parts.reduce((total, part) => total + of(part), 0);
  const solidsKg = sum((part) => part.extractKg);
  const gainKg = sum((part) => part.gainKg);
  const fermented = fermentedKg(glass, malt) + sum((part) => part.fermentableKg);
  const beer = fermentedOut(original, gainKg, fermented, glass.extractPerAlcohol);
  const sugarsA430PerCm = (sum((part) => part.colour) / volumeL) * glass.colourKept;
  return {
    volumeL,
    originalPlato,
    originalGravity,
    pitchingGravity: pitchingGravity(malt, parts, doses),
    inversionGainPlato: (100 * gainKg) / original.massKg,
    extractShare: original.extractKg > 0 ? solidsKg / original.extractKg : 0,
    fermentability: solidsKg > 0 ? sum((part) => part.fermentableKg - part.gainKg) / solidsKg : 0,
    ...beer,
    a430PerCm: (rest.a430PerCm * rest.volumeL) / volumeL + sugarsA430PerCm,
    sugarsA430PerCm,
    sodiumMgPerL: (1000 * sum((part) => part.sodiumG)) / volumeL,
    calciumMgPerL: (1000 * sum((part) => part.calciumG)) / volumeL,
  };
}

/** What of a dose reaches the beer. */
interface Part extends Wort {
  readonly gainKg: number;
  /** Once inverted. */
  readonly fermentableKg: number;
  /** A430 per cm times litres. */
  readonly colour: number;
  readonly sodiumG: number;
  readonly calciumG: number;
}

function partOf(dose: SettledDose, { rest, kettleLossL }: SettledGlass): Part {
  const arrives = dose.added === 'fermenter' ? 1 : rest.volumeL / (rest.volumeL + kettleLossL);
  const massKg = dose.massKg * arrives;
  const extractKg = massKg * dose.solids;
  const gainKg = extractKg * dose.sucrose * inversionGain;
  return {
    massKg,
    extractKg,
    gainKg,
    fermentableKg: extractKg * dose.fermentable + gainKg,
    colour: a430FromSpecific(dose.specific430, extractKg * 1000),
    sodiumG: massKg * dose.sodiumGPerKg,
    calciumG: massKg * dose.calciumGPerKg,
  };
}

function mixed(malt: Wort, parts: readonly Wort[]): Wort {
  return parts.reduce(
    (sum, { massKg, extractKg }) => ({ massKg: sum.massKg + massKg, extractKg: sum.extractKg + extractKg }),
    malt,
  );
}

function pitchingGravity(malt: Wort, parts: readonly Part[], doses: readonly SettledDose[]): number {
  const { massKg, extractKg } = mixed(
    malt,
    parts.filter((_, at) => doses[at]?.added !== 'fermenter'),
  );
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
