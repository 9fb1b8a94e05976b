import { expect, test } from 'vitest';
import { begunBody } from '../../../../test/sampleCook.ts';
import { foldCook } from '../../log/fold.ts';
import { eventsOf } from './events.ts';
import { type Mapping, previewTable } from './preview.ts';

const mapping: Mapping = { time: 'Time', timeForm: 's', temperature: 'Probe', unit: 'Cel', deed: 'Note' };
const preview = (text: string, changes: Partial<Mapping> = {}) =>
  previewTable(text, { ...mapping, ...changes }, begunBody);
let made = 0;
const importing = {
  ...{ cook: 'imported', device: '00000000-0000-7000-8000-000000000002', tz: 'UTC', startMs: 1e12 },
  random: () => new Uint8Array(10).fill(made++),
};

test('a table of times, temperatures and deeds becomes a cook with all of them', () => {
  const found = preview(
    'Time,Probe,Note\n0,21.5,heat 4\n60,48,"spoonfuls 2; step brown"\n120,,alkali\n180,80.25,poured\n',
  );
  expect([found.rows, found.readings, found.lowestC, found.highestC, found.lastS, found.wrong]).toEqual([
    4,
    3,
    21.5,
    80.25,
    180,
    [],
  ]);
  const state = foldCook(eventsOf(found, begunBody, importing));
  expect(state.readings.map(({ timeS, body }) => [timeS, body.valueC])).toEqual([
    [0, 21.5],
    [60, 48],
    [180, 80.25],
  ]);
  expect(state.deeds.map(({ kind }) => kind)).toEqual(['heat', 'water', 'step', 'alkali', 'poured']);
});

test('Fahrenheit, decimal commas, clocks past midnight and JSON lines say the same', () => {
  const rows = (found: ReturnType<typeof preview>) =>
    found.happenings.map(({ timeS, reading }) => [timeS, reading?.valueC?.toFixed(2)]);
  const same = [
    [0, '100.00'],
    [600, '120.50'],
  ];
  expect(rows(preview('Time;Probe;Note\n0;212;\n600;248,9;', { unit: '[degF]' }))).toEqual(same);
  expect(rows(preview('Time\tProbe\tNote\n23:55\t100\t\n0:05\t120.5\t', { timeForm: 'clock' }))).toEqual(same);
  expect(rows(preview('{"Time":1,"Probe":100,"Note":null}\n{"Time":11,"Probe":120.5}', { timeForm: 'min' }))).toEqual(
    same,
  );
});

test('every cell that says nothing is named by its line, and nothing is imported', () => {
  const found = preview('Time,Probe,Note\n0,21,heat 44\n60,warm,\n30,40,\nnoon,41,\n90,50\n');
  expect(found.wrong.map(({ line, column }) => [line, column]).toSorted()).toEqual([
    [2, 'Note'],
    [3, 'Probe'],
    [4, 'Time'],
    [5, 'Time'],
    [6, null],
  ]);
  expect(() => eventsOf(found, begunBody, importing)).toThrow(RangeError);
});

test('a missing column is named with those that there are, and a quotation mark that never closes is found', () => {
  expect(preview('t,Probe,Note\n0,1,\n').wrong[0]).toMatchObject({
    column: 'Time',
    reason: 'is no column; there are t, Probe, Note',
  });
  expect(preview('Time,Probe,Note\n0,20,"heat 3\n').wrong[0]).toMatchObject({ line: 2 });
});

test('a time that no cook takes is named, and so is a cell of JSON that is no text', () => {
  expect(preview(`Time,Probe,Note\n0,20,\n90000,21,\n${'9'.repeat(400)},22,\n`).wrong.map(({ line }) => line)).toEqual([
    3, 4,
  ]);
  expect(preview(`Time,Probe,Note\n${'9'.repeat(400)},22,\n`).wrong.map(({ line }) => line)).toEqual([2]);
  const odd = preview('{"Time":0,"Probe":{"toString":null},"Note":""}\n{"Time":[[1]],"Probe":20}');
  expect(odd.wrong.map(({ line, column, value }) => [line, column, value])).toEqual([
    [1, 'Probe', '{…}'],
    [2, 'Time', '[…]'],
  ]);
});
