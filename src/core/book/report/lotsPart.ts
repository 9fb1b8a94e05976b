/** What became of a cook's lots: weighed, measured and tasted. What was only believed of them stands with the cook's result. */
import { type Finding, type Known, knownOf } from '../../lot/known.ts';
import type { Lot } from '../../lot/lot.ts';
import type { Note, Tasted } from '../../lot/note.ts';
import { profileOf, strengthRange } from '../../lot/taste.ts';
import type { Range } from '../../twin/range.ts';
import { tableOf } from './markup.ts';
import { grams, span } from './numbers.ts';

export interface ReportedLot {
  readonly lot: Pick<Lot, 'name' | 'form' | 'expected' | 'weighedKg'>;
  /** The earliest first. */
  readonly notes: readonly Note[];
}

export function lotsPart(lots: readonly ReportedLot[]): string {
  return lots
    .flatMap(({ lot, notes }) => [measuredTable(lot, knownOf(lot, notes)), tastedTable(lot, notes)])
    .join('\n');
}

type Row = readonly [what: string, value: string, range: string, measured: string];

function measuredTable({ name, form, expected }: ReportedLot['lot'], known: Known): string {
  const { solids, ph, colour, figures, madeKg } = known;
  const rows: Row[] = [
    ['Form', form, '', ''],
    ['Weight', madeKg === expected.massKg ? 'not weighed' : grams(madeKg.mid), '', ''],
  ];
  if (solids) rows.push(foundRow('Dry solids', ' %', solids.range, 100, solids));
  if (ph) rows.push(foundRow('pH, diluted', '', ph.range, 1, ph));
  if (colour) rows.push(foundRow('Colour of a 10 % solution', ' EBC', figures.ebc, 1, colour));
  return tableOf(`Lot: ${name}`, ['What', 'Value', '8 in 10', 'Measured'], rows);
}

function foundRow(what: string, unit: string, range: Range, scale: number, found: Finding): Row {
  const mid = range.mid * scale;
  const digits = mid < 100 ? 1 : 0;
  return [what, `${mid.toFixed(digits)}${unit}`, `${span(range, scale, digits)}${unit}`, timesOf(found)];
}

function timesOf({ count, apart }: Finding): string {
  const times = count === 1 ? 'once' : `${count} times`;
  return apart > 2 ? `${times}; the readings contradict each other` : times;
}

/** The latest tasting in which any word was given a strength. */
function tastedTable({ name }: ReportedLot['lot'], notes: readonly Note[]): string {
  const tasted = notes.findLast((note): note is Tasted => note.kind === 'tasted' && profileOf([note]).length > 0);
  if (!tasted) return '';
  const { at, blind, texture } = tasted;
  const rows = profileOf([tasted]).map(({ name: word, mean }): [string, string] => [
    word,
    `${mean} of ${strengthRange[1]}`,
  ]);
  if (texture) rows.push(['Texture', texture]);
  const when = `${at.slice(0, 10)}${blind ? ', not knowing which lot it was' : ''}`;
  return tableOf(`Taste of ${name}, ${when}; 0 none, 5 very strong`, ['Word', 'Strength'], rows);
}
