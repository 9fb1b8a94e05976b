import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { umberpan } from '../../test/runProgram.ts';
import { boilingPointOfWaterC } from '../core/matter/water.ts';
import { defaultKit } from '../core/pan/kit.ts';

const folder = mkdtempSync(join(tmpdir(), 'umberpan-check-'));
const kit = join(folder, 'kit.json');
writeFileSync(kit, JSON.stringify(defaultKit));

test('boiling water at a barometer tells the offset, as text, as JSON and in the kit written', {
  timeout: 30_000,
}, async () => {
  // 98 kPa: water boils at 99.07 C (IAPWS-IF97, by `boilingPointOfWaterC`, which is tested against it).
  const shown = [0.6, 0.8, 0.7].map((more) => (boilingPointOfWaterC(98_000) + more).toFixed(2)).join(',');
  const line = `check boiling-water --kit ${kit} --readings ${shown} --pressure 980hPa`;
  const written = join(folder, 'checked.json');
  const [json, text] = await Promise.all([umberpan(`${line} --json --write ${written}`), umberpan(line)]);
  expect([json.code, json.stderr]).toEqual([0, '']);
  const { found, numbers, kit: checked } = JSON.parse(json.stdout);
  expect(found.offsetC.value).toBeCloseTo(0.7, 1);
  const { before, after } = numbers.thermometer_offset_K;
  expect(after.high - after.low).toBeLessThan(0.6 * (before.high - before.low));
  expect(JSON.parse(readFileSync(written, 'utf8'))).toEqual(checked);
  expect(checked.learned.lessons).toMatchObject([{ kind: 'check', name: 'boilingWater', observations: 3 }]);
  expect(text.stdout).toMatch(/The thermometer shows more by +0\.\d\d K {2}\(8 in 10: /);
});

test('spoonfuls and a plunge are told by their lists', { timeout: 30_000 }, async () => {
  const [spoons, lag] = await Promise.all([
    umberpan(`check spoons --kit ${kit} --weights 4.6g,5.1,4.4,4.9,4.2,5.0 --json`),
    umberpan(
      `check lag --kit ${kit} --from 21C --readings 1s:33.1,2s:43.4,4:59.5,6:71.0,10:85.1,15:93.5,60:100 --json`,
    ),
  ]);
  expect(JSON.parse(spoons.stdout).found.meanKg.value).toBeCloseTo(0.0047, 5);
  // The readings are those of a lag of 6 s from 21 to 100 C.
  expect(JSON.parse(lag.stdout).found.lagS.value).toBeCloseTo(6, 0);
});

test.each([
  ['boiling-water', '--readings 100,101', /number of readings is 2; allowed is 3/],
  ['spoons', '--weights 4.6g,heavy', /--weights: 'heavy'/],
  ['lag', '--from 21C --readings 5s:40,2s:50', /--readings: '2s:50' is earlier.*allowed: times in their order/],
  [
    'heating',
    '--water 1kg --start 15C --settings 0s:12 --readings 30s:16',
    /--settings: '12' is beyond the dial.*0 to 9/,
  ],
])('check %s %s is refused with what is allowed', { timeout: 30_000 }, async (name, options, message) => {
  const { code, stderr, stdout } = await umberpan(`check ${name} --kit ${kit} ${options}`);
  expect([code, stdout]).toEqual([2, '']);
  expect(stderr).toMatch(message);
});
