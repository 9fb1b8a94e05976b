import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { umberpan } from '../../test/runProgram.ts';

const folder = mkdtempSync(join(tmpdir(), 'umberpan-import-'));
const table = join(folder, 'april.csv');
writeFileSync(table, 'Seconds,Probe,Note\n0,70,heat 4\n60,122,spoonfuls 2\n120,284,poured\n');
const spoiled = join(folder, 'spoiled.csv');
writeFileSync(spoiled, 'Seconds,Probe,Note\n0,70,heat 4\n60,warm,\n');
const columns = '--time Seconds --temperature Probe --deed Note';

test('a table is previewed, then becomes the file of a cook', { timeout: 60_000 }, async () => {
  const [preview, made] = await Promise.all([
    umberpan(`import ${table} ${columns} --unit F --preview --json`),
    umberpan(`import ${table} ${columns} --unit F`),
  ]);
  expect([preview.code, preview.stderr]).toEqual([0, '']);
  expect(JSON.parse(preview.stdout)).toMatchObject({ rows: 3, readings: 3, highestC: 140, lastS: 120, wrong: [] });
  const [about = '', ...events] = made.stdout.trim().split('\n');
  expect(JSON.parse(about)).toMatchObject({ format: 'umberpan-cook', events: events.length });
  expect(events.map((line) => JSON.parse(line).kind)).toEqual([
    ...['begun', 'reading', 'heat', 'reading', 'water', 'reading', 'poured', 'ended'],
  ]);
});

test('a cell that says nothing is named, and nothing is written', { timeout: 30_000 }, async () => {
  const { code, stdout, stderr } = await umberpan(`import ${spoiled} ${columns} --unit F`);
  expect([code, stdout]).toEqual([2, '']);
  expect(stderr).toMatch(/line 3: Probe 'warm' is no temperature/);
});

test('the unit has to be said', { timeout: 30_000 }, async () => {
  const { code, stderr } = await umberpan(`import ${table} ${columns}`);
  expect(code).toBe(2);
  expect(stderr).toMatch(/--unit.*missing/);
});
