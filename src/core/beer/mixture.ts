/**
 * Wort with its sugars before it ferments, for settled numbers: extracts and water add by mass, absorbances by volume (Beer-Lambert).
 * What the kettle keeps takes its share of what went in before.
 */
import { a430FromSpecific } from '../colour/scales.ts';
import { gravityFromPlato } from './plato.ts';
import type { SettledDose, SettledGlass } from './settled.ts';
import { inversionGain } from './sugar.ts';
import { type Wort, wortKgPerL, wortOf } from './wort.ts';

export interface Mixture {
  readonly volumeL: number;
  /** All sugars in it, as they went in, before the sucrose is inverted. P and 20/20 C. */
  readonly originalPlato: number;
  readonly originalGravity: number;
  /** Share of the original extract that the sugars bring. */
  readonly extractShare: number;
  /** Of the beer that comes of it. */
  readonly a430PerCm: number;
  readonly sugarsA430PerCm: number;
}

/** What of a dose reaches the beer. */
export interface Part extends Wort {
  readonly added: SettledDose['added'];
  /** Water that inversion turns into extract. */
  readonly gainKg: number;
  /** Once inverted. */
  readonly fermentableKg: number;
  /** A430 per cm times litres. */
  readonly colour: number;
  readonly sodiumG: number;
  readonly calciumG: number;
}

export function mixture(glass: SettledGlass): Mixture {
  const { rest, colourKept } = glass;
  const parts = partsOf(glass);
  const { massKg, extractKg } = mixed(wortOf(rest.volumeL, rest.gravity), parts);
  const originalPlato = (100 * extractKg) / massKg;
  const originalGravity = gravityFromPlato(originalPlato);
  const volumeL = massKg / wortKgPerL(originalGravity);
  const sugarsA430PerCm = (total(parts, 'colour') / volumeL) * colourKept;
  return {
    volumeL,
    originalPlato,
    originalGravity,
    extractShare: extractKg > 0 ? total(parts, 'extractKg') / extractKg : 0,
    a430PerCm: (rest.a430PerCm * rest.volumeL) / volumeL + sugarsA430PerCm,
    sugarsA430PerCm,
  };
}

export function partsOf(glass: SettledGlass): readonly Part[] {
  return glass.doses.map((dose) => partOf(dose, glass));
}

export function total(parts: readonly Part[], of: Exclude<keyof Part, 'added'>): number {
  return parts.reduce((sum, part) => sum + part[of], 0);
}

export function mixed(malt: Wort, parts: readonly Wort[]): Wort {
  return parts.reduce(
    (sum, { massKg, extractKg }) => ({ massKg: sum.massKg + massKg, extractKg: sum.extractKg + extractKg }),
    malt,
  );
}

function partOf(dose: SettledDose, { rest, kettleLossL }: SettledGlass): Part {
  const arrives = dose.added === 'fermenter' ? 1 : rest.volumeL / (rest.volumeL + kettleLossL);
  const massKg = dose.massKg * arrives;
  const extractKg = massKg * dose.solids;
  const gainKg = extractKg * dose.sucrose * inversionGain;
  return {
    added: dose.added,
    massKg,
    extractKg,
    gainKg,
    fermentableKg: extractKg * dose.fermentable + gainKg,
    colour: a430FromSpecific(dose.specific430, extractKg * 1000),
    sodiumG: massKg * dose.sodiumGPerKg,
    calciumG: massKg * dose.calciumGPerKg,
  };
}
