import { describe, expect, test } from 'vitest';
import { umberpan } from '../../test/runProgram.ts';
import { carbonation } from './prime/carbonation.ts';

async function document(line: string) {
  const { code, stdout, stderr } = await umberpan(`prime ${line} --json`);
  expect([code, stderr]).toEqual([0, '']);
  return JSON.parse(stdout);
}

describe('umberpan prime', { timeout: 60_000 }, () => {
  test('says what to weigh, the pressure that it makes, and what to mind', async () => {
    const { code, stdout, stderr } = await umberpan('prime --volume 20L --temperature 18C --wish 2.4vol');
    expect([code, stderr]).toEqual([0, '']);
    for (const words of [
      'weigh of table sugar',
      '122 g',
      'pressure at 30 °C',
      'stood still for three days',
      'unscratched',
    ]) {
      expect(stdout).toContain(words);
    }
    expect(stdout.split('\n').filter((line) => line.length > 90)).toEqual([]);
  });

  test('is the same in every unit', async () => {
    const all = await Promise.all([
      document('--volume 20L --temperature 18C --wish 2.4vol'),
      document('--volume 5.28344105gal --temperature 64.4F --wish 4.7448g/L --units us'),
      document('--volume 4.39938497imp\u00a0gal --temperature 291.15K --wish 2.4 --air 14.6959488psi'),
    ]);
    for (const { massKg } of all) expect(massKg.mid).toBeCloseTo(all[0].massKg.mid, 6);
  });

  test('a dark sugar takes more than table sugar', async () => {
    const line = '--volume 20L --temperature 18C --wish 2.4vol';
    const [white, dark] = await Promise.all([document(line), document(`${line} --sugar ebc=200,solids=80`)]);
    expect(dark.massKg.mid).toBeGreaterThan(1.3 * white.massKg.mid);
    expect(dark.ebcAdded.mid).toBeGreaterThan(1);
  });

  test.each([
    ['--volume 20L --temperature 18C --wish 4.2vol', '--wish', 7],
    ['--volume 20L --temperature 18C --wish 9vol', '--wish', 2],
    ['--volume 20L --temperature 2C --wish 1.2vol', '--wish', 1],
    ['--volume 20L --temperature 45C --wish 2.4vol', '--temperature', 2],
    ['--volume 20L --temperature 18C --wish 2.4vol --sugar mass=1kg,ebc=1,solids=99', '--sugar mass', 2],
  ])('%s is refused over %s with exit code %d', async (line, field, exit) => {
    const { code, stderr } = await umberpan(`prime ${line} --json`);
    expect(code).toBe(exit);
    const { error } = JSON.parse(stderr);
    expect(error.field ?? error.refusals[0].field).toBe(field);
  });
});

test('a bottle asked to hold too much is refused by the limit that the reference of safety names', async () => {
  const { stderr } = await umberpan('prime --volume 20L --temperature 18C --wish 4.2vol');
  expect(stderr).toContain('Refused (LIM-BOTTLE, --wish)');
});

describe('a carbonation', () => {
  const { read } = carbonation('wished');

  test('is read in volumes and in g/L', () => {
    expect(read('2.5', '--wish')).toBeCloseTo(4.9425, 9);
    expect(read('2,5 vol', '--wish')).toBeCloseTo(4.9425, 9);
    expect(read('5 g/L', '--wish')).toBe(5);
  });

  test.each(['5 bar', 'much', '', '0.1vol', '12 g/L'])("'%s' is refused, saying what is allowed", (text) => {
    expect(() => read(text, '--wish')).toThrow('allowed: 0.5 to 5 vol (0.99 to 9.88 g/L)');
  });
});
