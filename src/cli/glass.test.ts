import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { umberpan } from '../../test/runProgram.ts';
import { sugarFrom } from './glass/sugarFrom.ts';
import { type Problem, Stop } from './stop.ts';

const rest = 'glass --volume 20L --gravity 1.060 --ebc 12';
const folder = mkdtempSync(join(tmpdir(), 'umberpan-glass-'));
const sure = (mid: number) => ({ low: mid * 0.9, mid, high: mid * 1.1 });
const lot = {
  name: 'Plum shards, March',
  weighedKg: 0.371,
  cookId: null,
  planId: null,
  madeAt: '2026-03-14T16:20:00.000Z',
  form: 'hard',
  expected: {
    massKg: sure(0.39),
    waterShare: sure(0.02),
    inverted: { low: 0.8, mid: 0.9, high: 0.95 },
    a430: sure(2.5),
    ebc: sure(62.5),
    srm: sure(31.75),
    icumsa: sure(27_000),
  },
};
const plum = join(folder, 'plum.json');
writeFileSync(plum, JSON.stringify(lot));

async function document(line: string) {
  const { code, stdout, stderr } = await umberpan(`${line} --json`);
  expect([code, stderr]).toEqual([0, '']);
  return JSON.parse(stdout);
}

async function problemOf(run: Promise<unknown>): Promise<Problem> {
  const error = await run.then(
    () => undefined,
    (thrown) => thrown,
  );
  if (!(error instanceof Stop)) throw error ?? new Error('nothing was refused');
  return error.problem;
}

describe('umberpan glass', { timeout: 60_000 }, () => {
  test('says what a sugar gives, without and with it, with ranges, formulas and cautions', async () => {
    const { code, stdout, stderr } = await umberpan(
      `${rest} --bought-price 5 --sugar mass=800g,ebc=75,solids=98,inverted=90,price=3,alkali=naoh,dose=5`,
    );
    expect([code, stderr]).toEqual([0, '']);
    for (const words of [
      '1.0731',
      '10-90 %',
      'Balling',
      'Morey',
      'empirical SRM',
      'Sodium +105 mg/L',
      'WARNING',
      'through 7 cm',
      'the same solids bought 3.92',
    ]) {
      expect(stdout).toContain(words);
    }
    expect(stdout.split('\n').filter((line) => line.length > 100)).toEqual([]);
  });

  test('takes a lot by its record, told in any unit, and is the same beer in each', async () => {
    const [litres, gallons, imperial] = await Promise.all([
      document(`${rest} --sugar lot=${plum},mass=0.3kg`),
      document(`glass --volume 5.28344105gal --plato 14.7414 --srm 6.096 --sugar lot=${plum},mass=10.58219oz`),
      document(
        `glass --volume 4.39938497imp\u00a0gal --gravity 1.060 --a430 0.48 --sugar lot=${plum},mass=0.661386787lb`,
      ),
    ]);
    expect(litres.glass.doses[0].sugar.name).toBe('Plum shards, March');
    for (const other of [gallons, imperial]) {
      expect(other.beer.originalGravity.mid).toBeCloseTo(litres.beer.originalGravity.mid, 6);
      expect(other.ebc.mid).toBeCloseTo(litres.ebc.mid, 3);
      expect(other.beer.volumeL.mid).toBeCloseTo(litres.beer.volumeL.mid, 5);
    }
    expect(litres.cautions.map(({ id }: { id: string }) => id)).toContain('GLA-UNTOLD');
  });

  test('finds the mass for a colour, and gives an aim when no sugar does it', async () => {
    const ways = await document(`${rest} --to-ebc 30 --sugar ebc=150,solids=98`);
    expect(ways).toMatchObject({ kind: 'ways', ways: [{ ebc: { mid: expect.closeTo(30, 6) } }] });
    const aim = await document(`${rest} --to-ebc 30 --to-share 5 --sugar ebc=5,solids=98`);
    expect(aim).toMatchObject({
      kind: 'aim',
      aim: { massKg: expect.any(Number), darkerThanKitchen: false },
      unfit: [{ name: 'bought sugar' }],
    });
    expect(aim.aim.ebc).toBeGreaterThan(75);
  });

  test('swaps a sugar, and scales the beer', async () => {
    const sugar = '--sugar mass=500g,ebc=90,solids=80';
    const [one, other, large] = await Promise.all([
      document(`${rest} ${sugar}`),
      document(`${rest} ${sugar} --swap lot=${plum} --equal extract`),
      document(`${rest} ${sugar} --to-volume 40L`),
    ]);
    expect(other.kind).toBe('swap');
    expect(other.beer.originalGravity.mid).toBeCloseTo(one.beer.originalGravity.mid, 9);
    expect(large.beer.volumeL.mid).toBeCloseTo(40, 6);
    expect(large.ebc.mid).toBeCloseTo(one.ebc.mid, 6);
  });

  test.each([
    ['--volume 20L --ebc 12', '--gravity', 2],
    ['--volume 20L --gravity 1.05 --plato 12 --ebc 12', '--plato', 2],
    ['--volume 20L --gravity 1.05 --ebc 12 --equal colour', '--equal', 2],
    ['--volume 20L --gravity 1.05 --ebc 12 --sugar ebc=20,solids=98', '--sugar mass', 2],
    ['--volume 20L --gravity 1.05 --ebc 40 --to-ebc 20 --to-share 5', 'wish', 1],
    ['--volume 20 --gravity 1.05 --ebc 40', '--volume', 2],
  ])('%s is refused over %s', async (line, field, exit) => {
    const { code, stderr } = await umberpan(`glass ${line} --json`);
    expect(code).toBe(exit);
    expect(JSON.parse(stderr).error).toMatchObject({ field, message: expect.any(String) });
  });
});

describe('a sugar on the command line', () => {
  test.each([
    ['mas=1kg', '--sugar', 'did you mean mass?'],
    ['mass=800 ebc=75 solids=98', '--sugar mass', 'has no unit'],
    ['mass=1kg ebc=75', '--sugar solids', 'is missing'],
    ['mass=1kg solids=98', '--sugar ebc', 'is missing'],
    ['solids=98 points=45 ebc=3', '--sugar points', 'give one of'],
    ['solids=98 ebc=3 ebc=4', '--sugar', 'said twice'],
    ['solids=98 ebc=3 dose=5', '--sugar dose', 'alkali=naoh'],
    ['solids=98 ebc=3 forced=1.04', '--sugar forced', 'two gravities'],
    ['solids=98 ebc=3 forced=1.004/1.040', '--sugar', 'original extract'],
    [`lot=${plum} ebc=40`, '--sugar ebc', 'known of a lot'],
    ['lot=/nowhere.json', '--sugar lot', "can't be read"],
  ])('%s is refused over %s', async (text, field, words) => {
    const problem = await problemOf(sugarFrom(text, '--sugar'));
    expect(problem.field).toBe(field);
    expect(problem.message).toContain(words);
  });

  test('is the same sugar by its solids, its points and its litre degrees, by EBC on each basis, SRM and ICUMSA', async () => {
    const all = await Promise.all(
      [
        'solids=100 ebc=75',
        'points=46.18 ebc=75',
        'degrees=385.7 ebc=75',
        'solids=100 ebc=72.247 basis=10wv',
        'solids=100 ebc=722.47 basis=undiluted',
        'solids=100 srm=38.1',
      ].map((text) => sugarFrom(text, '--sugar')),
    );
    for (const { sugar } of all) {
      expect(sugar.solids.mid).toBeCloseTo(1, 3);
      expect(sugar.specific430.mid).toBeCloseTo(0.028899, 5);
    }
    // 0.0022 EBC at 10 % w/v for each ICUMSA unit, within 3 % (derived from both definitions).
    const { sugar } = await sugarFrom('solids=100 icumsa=1000', '--sugar');
    expect(Math.abs((2500 * sugar.specific430.mid) / 2.2 - 1)).toBeLessThan(0.03);
  });

  test('a decimal comma and blanks in a mass are no end of the field', async () => {
    expect((await sugarFrom('mass=1,5 lb, solids=98, ebc=3', '--sugar')).massKg).toBeCloseTo(0.68039, 5);
    expect((await sugarFrom('solids=98 mass=2 lb 3 oz ebc=3 added=late', '--sugar')).massKg).toBeCloseTo(0.99223, 5);
  });
});
