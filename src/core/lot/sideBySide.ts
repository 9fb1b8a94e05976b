/** Several lots beside each other: what was measured of each, or is believed where nothing was, and how each tasted. */
import type { Range } from '../twin/range.ts';
import { type Finding, type Known, knownOf } from './known.ts';
import type { Lot } from './lot.ts';
import type { Note, Tasted } from './note.ts';
import { type Descriptor, descriptors, type Profiled, profileOf, type Texture } from './taste.ts';

export interface NotedLot {
  readonly lot: Pick<Lot, 'name' | 'expected' | 'weighedKg'>;
  /** The earliest first. */
  readonly notes: readonly Note[];
}

export interface Cell {
  /** 10, 50 and 90 % marks, in the row's unit. */
  readonly range: Range;
  /** Readings that it rests on; 0 for what is only believed. */
  readonly readings: number;
  readonly contradicts: boolean;
}

export interface SideBySideRow {
  readonly what: string;
  readonly unit: string;
  /** Decimals that are shown. */
  readonly digits: number;
  /** One for each lot; null where nothing is known. */
  readonly cells: readonly (Cell | null)[];
}

/** Yield, dry solids, colour, pH and inverted share. A row that no lot has a figure for is left out. */
export function measuredBeside(lots: readonly NotedLot[]): readonly SideBySideRow[] {
  const all = lots.map(({ lot, notes }) => ({ expected: lot.expected, known: knownOf(lot, notes) }));
  const row = (
    what: string,
    [unit, digits, scale]: readonly [unit: string, digits: number, scale: number],
    of: (one: { readonly expected: Lot['expected']; readonly known: Known }) => Cell | null,
  ): SideBySideRow => ({
    ...{ what, unit, digits },
    cells: all.map((one) => {
      const cell = of(one);
      return cell && { ...cell, range: scaled(cell.range, scale) };
    }),
  });
  const rows = [
    row('Yield', ['g', 0, 1000], ({ expected, known: { madeKg } }) => ({
      ...believed(madeKg),
      readings: madeKg === expected.massKg ? 0 : 1,
    })),
    row('Dry solids', ['%', 1, 100], ({ known: { figures, solids } }) =>
      found(solids, solids?.range ?? solidsOf(figures.waterShare)),
    ),
    row('Colour', ['EBC', 0, 1], ({ known: { figures, colour } }) => found(colour, figures.ebc)),
    row('pH, diluted', ['', 1, 1], ({ known: { ph } }) => (ph ? found(ph, ph.range) : null)),
    row('Inverted', ['%', 0, 100], ({ known: { figures } }) => believed(figures.inverted)),
  ];
  return rows.filter(({ cells }) => cells.some((cell) => cell !== null));
}

const believed = (range: Range): Cell => ({ range, readings: 0, contradicts: false });

function found(finding: Finding | undefined, range: Range): Cell {
  if (!finding) return believed(range);
  return { range, readings: finding.count, contradicts: finding.apart > 2 };
}

function solidsOf({ low, mid, high }: Range): Range {
  return { low: 1 - high, mid: 1 - mid, high: 1 - low };
}

function scaled({ low, mid, high }: Range, by: number): Range {
  return { low: by * low, mid: by * mid, high: by * high };
}

export interface TastedBeside {
  /** A word that some lot was given a strength of; null for lots of which it was not asked. */
  readonly words: readonly { readonly name: Descriptor; readonly cells: readonly (Profiled | null)[] }[];
  /** Of each lot, what was felt last; null where nobody said. */
  readonly textures: readonly (Texture | null)[];
  /** Of each lot. */
  readonly tastings: readonly number[];
}

/** @param blindOnly leaves out tastings by those who knew which lot they had */
export function tastedBeside(lots: readonly NotedLot[], blindOnly: boolean): TastedBeside {
  const tasted = lots.map(({ notes }) =>
    notes.filter((note): note is Tasted => note.kind === 'tasted' && (note.blind || !blindOnly)),
  );
  const profiles = tasted.map((tastings) => profileOf(tastings));
  const words = descriptors.map((name) => ({
    name,
    cells: profiles.map((profile) => profile.find((word) => word.name === name) ?? null),
  }));
  return {
    words: words.filter(({ cells }) => cells.some((cell) => cell !== null)),
    textures: tasted.map((tastings) => tastings.findLast(({ texture }) => texture !== null)?.texture ?? null),
    tastings: tasted.map(({ length }) => length),
  };
}
