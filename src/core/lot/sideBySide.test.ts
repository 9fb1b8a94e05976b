import { expect, it } from 'vitest';
import type { Lot } from './lot.ts';
import type { Note } from './note.ts';
import { measuredBeside, tastedBeside } from './sideBySide.ts';
import { descriptors, type Strengths } from './taste.ts';

const at = '2031-05-09T18:30:00.000Z';
const around = (mid: number) => ({ low: 0.9 * mid, mid, high: 1.1 * mid });
const lot = (name: string, weighedKg: number | null): Pick<Lot, 'name' | 'expected' | 'weighedKg'> => ({
  name,
  weighedKg,
  expected: {
    ...{ massKg: around(0.4), waterShare: { low: 0.01, mid: 0.03, high: 0.05 }, inverted: around(0.3) },
    ...{ a430: around(8), ebc: around(200), srm: around(101.6), icumsa: around(9e4) },
  },
});
const ph = (value: number): Note => ({
  kind: 'measured',
  at,
  reading: { method: 'acidity', by: 'meter', ph: value, sugarG: 5, waterG: 45 },
});
const brix: Note = {
  kind: 'measured',
  at,
  reading: { method: 'refractometer', brix: 25.6, temperatureC: 22, compensated: false, sugarG: 10, waterG: 20 },
};
const tasted = (given: Partial<Strengths>, blind: boolean): Note => ({
  kind: 'tasted',
  at,
  strengths: { ...(Object.fromEntries(descriptors.map((name) => [name, null])) as Strengths), ...given },
  texture: blind ? null : 'dry snap',
  note: '',
  blind,
});

const lots = [
  { lot: lot('Shards', 0.391), notes: [ph(5.1), ph(5.15), brix, tasted({ toffee: 2, bitter: 1 }, false)] },
  { lot: lot('Syrup', null), notes: [tasted({ toffee: 4 }, true), tasted({ toffee: 3, cherry: 1 }, false)] },
] as const;

it('says what was measured of each lot, with the unit and how often, and believes the rest', () => {
  const rows = measuredBeside(lots);
  expect(rows.map(({ what, unit }) => `${what} ${unit}`.trim())).toEqual([
    'Yield g',
    'Dry solids %',
    'Colour EBC',
    'pH, diluted',
    'Inverted %',
  ]);
  const cells = (what: string) => rows.find((row) => row.what === what)?.cells ?? [];
  expect(cells('Yield').map((cell) => [Math.round(cell?.range.mid ?? 0), cell?.readings])).toEqual([
    [391, 1],
    [400, 0],
  ]);
  expect(cells('pH, diluted')).toEqual([expect.objectContaining({ readings: 2, contradicts: false }), null]);
  expect(cells('pH, diluted')[0]?.range.mid).toBeCloseTo(5.125, 2);
  // 10 g in 20 g of water that read 25.6 are some 77 % of solids; the other's are what is believed, with its marks in order.
  expect(cells('Dry solids')[0]?.range.mid).toBeGreaterThan(75);
  expect(cells('Dry solids')[1]?.range).toEqual({ low: 95, mid: 97, high: 99 });
  expect(cells('Colour')[0]).toMatchObject({ readings: 0, range: around(200) });
});

it('leaves out what is known of none', () => {
  expect(measuredBeside([lots[1]]).map(({ what }) => what)).not.toContain('pH, diluted');
});

it('sets words beside each other, asked of either; blind tastings alone when so wished', () => {
  const all = tastedBeside(lots, false);
  expect(all.words.map(({ name, cells }) => [name, ...cells.map((cell) => cell?.mean ?? null)])).toEqual([
    ['cherry', null, 1],
    ['toffee', 2, 3.5],
    ['bitter', 1, null],
  ]);
  expect(all.textures).toEqual(['dry snap', 'dry snap']);
  expect(all.tastings).toEqual([1, 2]);
  const blind = tastedBeside(lots, true);
  expect(blind.words.map(({ name, cells }) => [name, ...cells.map((cell) => cell?.mean ?? null)])).toEqual([
    ['toffee', null, 4],
  ]);
  expect(blind.tastings).toEqual([0, 1]);
});
