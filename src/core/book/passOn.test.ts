import { parse } from 'csv-parse/sync';
import { expect, it, vi } from 'vitest';
import { cookedLog } from '../../../test/cookedLog.ts';
import { begunBody, sampleCook, sampleDevice } from '../../../test/sampleCook.ts';
import { previewTable } from '../learn/imported/preview.ts';
import type { KnownEvent } from '../log/event.ts';
import { foldCook } from '../log/fold.ts';
import { expectedOfTold, knownOf } from '../lot/known.ts';
import type { Note, Reading } from '../lot/note.ts';
import { descriptors, type Strengths } from '../lot/taste.ts';
import { defaultKit } from '../pan/kit.ts';
import { defaultRequest } from '../planning/request.ts';
import { followedBy } from './following.ts';
import { asKept } from './keptRehearsal.ts';
import { landedOf } from './landed.ts';
import { lotsPart } from './report/lotsPart.ts';
import { planOfReport } from './report/planOf.ts';
import { reportHtml } from './report/reportHtml.ts';
import { tableColumns, tableText } from './tableRows.ts';

// A cook is simulated whole, and followed by a twin.
vi.setConfig({ testTimeout: 30_000 });

const nasty = ['=1+1', '+1', '-1', '@SUM(A1)', '\tx', '\rx', 'plain, with "marks"\r\nand a line'];

function noted(texts: readonly string[]) {
  const device = sampleDevice('a');
  return foldCook([
    device.make('begun', begunBody, 0),
    ...texts.map((text, i) => device.make('note', { text }, i + 1)),
  ]);
}

it('a table is read back by another reader of RFC 4180 as it was written; no text in it begins a formula', () => {
  const rows = parse(tableText(noted(nasty)), { columns: true, record_delimiter: '\r\n' }) as Record<string, string>[];
  expect(rows.map(({ text }) => text)).toEqual(nasty.map((text) => (/^[=+\-@\t\r]/.test(text) ? `'${text}` : text)));
  for (const { text } of rows) expect(text).not.toMatch(/^[=+\-@\t\r\0]/);
});

it('a number stays a number, also one below zero', () => {
  const device = sampleDevice('a');
  const begun = device.make('begun', begunBody, 0);
  const reading = device.make('reading', { probe: 'pan', valueC: -2.5, quality: 'fresh', unit: 'Cel', raw: -2.5 }, 5);
  const text = tableText(foldCook([begun, reading]));
  expect(text.split('\r\n')).toEqual([tableColumns.join(','), '5,2031-05-09T18:30:05.000Z,reading,-2.5,fresh,,', '']);
});

it('a table of a cook goes back in by the import of tables, deeds and readings alike', () => {
  const { events, begun } = cookedLog(defaultKit, 3);
  const state = foldCook(events);
  const mapping = { time: 'time_s', timeForm: 's', temperature: 'temperature_Cel', unit: 'Cel', deed: 'deed' } as const;
  const preview = previewTable(tableText(state), mapping, begun);
  expect(preview.wrong).toEqual([]);
  expect(preview.readings).toBe(state.readings.length);
  expect(preview.happenings.filter(({ deed }) => deed)).toHaveLength(state.deeds.length);
});

it('a report of a rehearsal says whether it had surprises', () => {
  const told = (surprises: boolean) => {
    const begun = { ...begunBody, mode: 'rehearsal', rehearsal: { seed: 1, speed: 1, surprises } } as const;
    const state = foldCook([sampleDevice('a').make('begun', begun, 0)]);
    return reportHtml({ state, beliefs: [], landed: undefined, lots: [] });
  };
  expect(told(true)).toContain('Rehearsal on a simulated pan, with surprises<');
  expect(told(false)).toContain('Rehearsal on a simulated pan<');
});

function report(name: string) {
  const { events } = cookedLog(defaultKit, 4, 'rehearsal', 'a', { request: { ...defaultRequest, name } });
  const few = events.filter(({ kind }, i) => kind !== 'reading' || i % 12 === 0);
  const state = foldCook(few);
  const followed = followedBy(state, 16);
  if (!followed) throw new Error('no beginning');
  const landed = landedOf(followed);
  return { html: reportHtml({ state, beliefs: followed.beliefs, landed, lots: [] }) ?? '', state };
}

it('a report needs nothing from elsewhere, says that it is of a rehearsal, and shows amounts, steps, result and cautions', () => {
  const { html } = report('Plum shards');
  expect(html).not.toMatch(/(?:src|href)\s*=|url\(|@import|https?:\/\//);
  for (const part of [/Rehearsal on a simulated pan/, /Sodium hydroxide/, /<svg/, /Brown/, /EBC/, /Goggles/, /@page/]) {
    expect(html).toMatch(part);
  }
});

it('gives its plan back, whatever the cook was called', () => {
  const name = '</script><img src=x onerror=alert(1)> & "Hall" \u2028';
  const { html, state } = report(name);
  const plan = JSON.parse(planOfReport(html) ?? '');
  expect(plan).toMatchObject({ format: 'umberpan-plan-1', kit: { name: defaultKit.name }, request: { name } });
  expect(plan.steps).toEqual(state.begun?.body.steps);
  expect(html.replace(/<script type="application\/json".*?<\/script>/s, '')).not.toMatch(/<script|<img/);
  expect(planOfReport('{"format":"umberpan-plan-1"}')).toBeUndefined();
});

const waterShare = { low: 0.2, mid: 0.24, high: 0.28 };
const expected = expectedOfTold({ massKg: 0.5, waterShare, inverted: { low: 0.5, mid: 0.6, high: 0.7 }, ebc: 100 });
const shards = { name: 'Hall <b>', form: 'syrup', expected, weighedKg: null } as const;
const at = '2031-05-10T10:00:00.000Z';
const measured = (reading: Reading): Note => ({ kind: 'measured', at, reading });
const mixed = { sugarG: 10, waterG: 20 };
const brix = (value: number): Reading => ({
  method: 'refractometer',
  ...mixed,
  brix: value,
  temperatureC: 20,
  compensated: false,
});
const absorbance: Reading = {
  method: 'absorbance',
  sugarG: 1,
  totalMl: 100,
  fold: 1,
  wavelengthNm: 430,
  absorbance: 0.4,
  pathCm: 1,
};

function tasted(day: string, given: Partial<Strengths>, blind = false): Note {
  const strengths = { ...Object.fromEntries(descriptors.map((name) => [name, null])), ...given } as Strengths;
  return { kind: 'tasted', at: `${day}T10:00:00.000Z`, strengths, texture: 'thick syrup', note: '', blind };
}

/** Rows of a report's tables as plain text, cells parted by a bar. */
function rowsOf(html: string): string[] {
  return [...html.matchAll(/<tr>(.*?)<\/tr>|<caption>(.*?)<\/caption>/g)].map(([, row, caption]) =>
    (caption ?? row.replaceAll(/<\/t[hd]>(?=<)/g, '|')).replaceAll(/<[^>]+>/g, ''),
  );
}

it('a lot is reported with what was measured of it, each value with its range, and by how many readings', () => {
  const notes = [measured(brix(25.6)), measured(brix(25.8)), measured(absorbance)];
  const acid = measured({ method: 'acidity', ...mixed, by: 'meter', ph: 4.9 });
  const html = lotsPart([{ lot: shards, notes: [...notes, acid] }]);
  const { solids, ph, figures } = knownOf(shards, [...notes, acid]);
  const tenths = (value: number) => value.toFixed(1);
  const { low, mid, high } = solids?.range ?? waterShare;
  expect(mid).toBeGreaterThan(0.7);
  const rows = rowsOf(html);
  expect(rows).toContain('Lot: Hall &lt;b&gt;');
  expect(rows).toContain('Weight|not weighed||');
  expect(rows).toContain(`Dry solids|${tenths(100 * mid)} %|${tenths(100 * low)} to ${tenths(100 * high)} %|2 times`);
  const acidity = ph?.range ?? waterShare;
  expect(acidity.mid).toBeCloseTo(4.9, 9);
  expect(rows).toContain(`pH, diluted|4.9|${tenths(acidity.low)} to ${tenths(acidity.high)}|once`);
  const { ebc } = figures;
  expect(ebc.mid).toBeGreaterThan(100);
  expect(rows).toContain(
    `Colour of a 10 % solution|${ebc.mid.toFixed(0)} EBC|${ebc.low.toFixed(0)} to ${ebc.high.toFixed(0)} EBC|once`,
  );
});

it('of what nobody measured or tasted a report claims nothing; what was weighed later is its weight', () => {
  const counted: Note = { kind: 'stocked', at, how: 'counted', kg: 0.432, why: '' };
  const rows = rowsOf(lotsPart([{ lot: shards, notes: [counted] }]));
  expect(rows).toEqual(['Lot: Hall &lt;b&gt;', 'What|Value|8 in 10|Measured', 'Form|syrup||', 'Weight|432 g||']);
  expect(lotsPart([])).toBe('');
});

it('the latest taste is reported in words and numbers, also when a later note gave no word a strength', () => {
  const notes = [tasted('2031-05-11', { burnt: 5 }), tasted('2031-06-01', { toffee: 3, bitter: 0 }, true)];
  const rows = rowsOf(lotsPart([{ lot: shards, notes: [...notes, tasted('2031-07-01', {})] }]));
  expect(rows.slice(rows.findIndex((row) => row.startsWith('Taste')))).toEqual([
    'Taste of Hall &lt;b&gt;, 2031-06-01, not knowing which lot it was; 0 none, 5 very strong',
    'Word|Strength',
    'toffee|3 of 5',
    'bitter|0 of 5',
    'Texture|thick syrup',
  ]);
});

it('readings of a lot that contradict each other are reported as such', () => {
  const html = lotsPart([{ lot: shards, notes: [measured(brix(20)), measured(brix(26))] }]);
  expect(html).toContain('2 times; the readings contradict each other');
});

it('a rehearsal that is kept has its events under names of their own, in the same order and at the same distances', () => {
  const { events } = sampleCook(5);
  let n = 0;
  const random = () => Uint8Array.from({ length: 10 }, () => n++ % 256);
  const keeping = { cook: 'kept', bootId: 'boot', tz: 'UTC', endMs: Date.UTC(2031, 0, 1), random };
  const first = asKept(events as KnownEvent[], keeping);
  const second = asKept(events as KnownEvent[], keeping);
  const ids = [...first, ...second].map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
  expect(first.map(({ kind }) => kind)).toEqual(events.map(({ kind }) => kind));
  expect(first.map(({ tMono }) => tMono)).toEqual(events.map(({ tMono }) => tMono));
});
