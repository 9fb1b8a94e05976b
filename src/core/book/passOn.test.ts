import { parse } from 'csv-parse/sync';
import { expect, it, vi } from 'vitest';
import { cookedLog } from '../../../test/cookedLog.ts';
import { begunBody, sampleCook, sampleDevice } from '../../../test/sampleCook.ts';
import { previewTable } from '../learn/imported/preview.ts';
import type { KnownEvent } from '../log/event.ts';
import { foldCook } from '../log/fold.ts';
import { defaultKit } from '../pan/kit.ts';
import { defaultRequest } from '../planning/request.ts';
import { followedBy } from './following.ts';
import { asKept } from './keptRehearsal.ts';
import { landedOf } from './landed.ts';
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
  for (const part of [/Rehearsal on a simulated pan/, /Sodium hydroxide/, /<svg/, /Brown/, /EBC/, /goggles/, /@page/]) {
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
