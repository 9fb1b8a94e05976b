import { createHash } from 'node:crypto';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { cookedLog } from '../../test/cookedLog.ts';
import { umberpan } from '../../test/runProgram.ts';
import { writeCookFile } from '../core/log/cookFile.ts';
import { defaultKit } from '../core/pan/kit.ts';

const folder = mkdtempSync(join(tmpdir(), 'umberpan-learn-'));
const file = (name: string, text: string): string => {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
};
const sha256 = (text: string) => createHash('sha256').update(text).digest('hex');
const kit = file('kit.json', JSON.stringify(defaultKit));
const cook = cookedLog(defaultKit, 3, 'live', '6f1c1c9e-8a4e-4b55-9a51-0d7f8c2b1a01');
const log = file('cook.ndjson', writeCookFile(cook.events[0]?.cook ?? '', cook.events, sha256));

test('a log teaches the kit, which is written with where that came from; once', { timeout: 120_000 }, async () => {
  const written = join(folder, 'learned.json');
  const first = await umberpan(`learn ${log} --kit ${kit} --write ${written} --json`);
  expect([first.code, first.stderr]).toEqual([0, '']);
  const { logs, numbers, kit: taught } = JSON.parse(first.stdout);
  expect(logs).toMatchObject([{ outcome: 'learned', accepted: true }]);
  expect(numbers['stove_efficiency_%'].narrowing).toBeLessThan(0.3);
  expect(numbers['pigment_second'].toldBy).toBe('spoonTests');
  expect(JSON.parse(readFileSync(written, 'utf8'))).toEqual(taught);
  const again = await umberpan(`learn ${log} --kit ${written}`);
  expect(again.code).toBe(1);
  expect(again.stdout).toContain('this kit has learned from it already');
});

test('a log that was cut, or one with an hour missing, teaches nothing', { timeout: 60_000 }, async () => {
  const lines = readFileSync(log, 'utf8').split('\n');
  const cut = file('cut.ndjson', lines.slice(0, 50).join('\n'));
  const half = cook.lastS / 2;
  const startMs = cook.events[0]?.tMono ?? 0;
  const gappy = cook.events.filter(
    ({ kind, tMono }) => kind !== 'reading' || Math.abs((tMono - startMs) / 1000 - half) > 1800,
  );
  const gap = file('gap.ndjson', writeCookFile(cook.events[0]?.cook ?? '', gappy, sha256));
  const [broken, missing] = await Promise.all([
    umberpan(`learn ${cut} --kit ${kit}`),
    umberpan(`learn ${gap} --kit ${kit} --json`),
  ]);
  expect([broken.code, broken.stdout]).toEqual([2, '']);
  expect(broken.stderr).toMatch(/cut off or added to/);
  expect(missing.code).toBe(1);
  expect(JSON.parse(missing.stdout).logs[0].faults.map(({ kind }: { kind: string }) => kind)).toContain('gap');
});
