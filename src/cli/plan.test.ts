import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { umberpan } from '../../test/runProgram.ts';
import { defaultKit } from '../core/pan/kit.ts';
import { defaultRequest, optionalRanges } from '../core/planning/request.ts';
import { planFromOptions } from './plan/makePlan.ts';
import { requestFields, requestInputs } from './plan/requestOptions.ts';
import { type Problem, Stop } from './stop.ts';

async function planned(line: string, input = '') {
  const { code, stdout, stderr } = await umberpan(`plan ${line} --json`, { input });
  expect([code, stderr]).toEqual([0, '']);
  return JSON.parse(stdout);
}

describe('umberpan plan', { timeout: 30_000 }, () => {
  test('prints what to weigh, the solution with its hazard class, the fit, the steps and the cautions', async () => {
    const { code, stdout, stderr } = await umberpan('plan --mass 400g --dose 5');
    expect([code, stderr]).toEqual([0, '']);
    for (const words of [
      'sodium hydroxide',
      'corrosive 1A',
      'deep',
      'invert',
      'roast',
      'Goggles',
      '1 tsp, 4.9 mL of cold water',
      'never water onto lye',
    ]) {
      expect(stdout).toContain(words);
    }
    expect(stdout.split('\n').every((line) => line.length <= 90)).toBe(true);
  });

  test('says how much is inverted at the end, as `--json` does, and where its band is told', async () => {
    const { stdout } = await umberpan('plan --mass 400g');
    const { expected } = await planned('--mass 400g');
    const share = (100 * expected.at(-1).inverted).toFixed(0);
    expect(stdout).toContain(
      `Inverted at the end: ${share} % of the sugar; where 8 in 10 cooks end: umberpan simulate.`,
    );
  });

  test('writes a sheet for the kitchen wall over what was there, and leaves that alone when it refuses or can’t', async () => {
    const file = join(mkdtempSync(join(tmpdir(), 'umberpan-')), 'sheet.html');
    writeFileSync(file, 'before');
    const refused = await umberpan(`plan --dose 9 --sheet ${file}`);
    expect([refused.code, readFileSync(file, 'utf8')]).toEqual([7, 'before']);
    const { code, stdout, stderr } = await umberpan(`plan --mass 400g --sheet ${file}`);
    expect([code, stdout, stderr]).toEqual([0, '', '']);
    expect(readFileSync(file, 'utf8')).toMatch(/^<!doctype html>[\s\S]*First batch[\s\S]*<\/html>\n$/);
    expect((await umberpan(`plan --mass 400g --sheet ${file}/x`)).code).toBe(1);
    expect((await umberpan(`plan --mass 400g --json --sheet ${file}`)).code).toBe(2);
  });

  test('takes further holds, an option each, in their order', async () => {
    const line = '--mass 200g --route bright --invert-time 5min --brown-time 5min';
    const { request, steps } = await planned(`${line} --step 293F,4min --step 155C,120s`);
    expect(request.moreHolds).toEqual([
      { celsius: expect.closeTo(145, 9), minutes: 4 },
      { celsius: 155, minutes: 2 },
    ]);
    expect(steps.map(({ kind }: { kind: string }) => kind).slice(-3)).toEqual(['brown', 'roast', 'roast']);
  });

  test('takes every field in kitchen units', async () => {
    const { request, kit } = await planned(
      '--mass 1.1lb --form syrup --brix 78 --route deep --alkali lime --dose 4 --strength 10% --malt 10 --invert 266F ' +
        '--invert-time 1h --brown 140C --brown-time 20min --roast 150C --roast-time 300s --stove gas --power 2.5kW --pan 24cm ' +
        '--pan-height 12cm --pan-mass 2lb --material enamel --thermometer dial --spoon 5mL --alkalinity 0 --hardness 10dH --altitude 800m --room 68F --notches 6',
    );
    expect(request).toMatchObject({
      form: 'syrup',
      alkali: 'calciumHydroxide',
      alkaliGPerKg: 4,
      maltExtractGPerKg: 10,
      invertMinutes: 60,
      roastMinutes: 5,
    });
    expect(request.massKg).toBeCloseTo(0.49895, 5);
    expect(request.syrupSolids).toBeCloseTo(0.78, 12);
    expect(request.solutionStrength).toBeCloseTo(0.1, 12);
    expect(request.invertC).toBeCloseTo(130, 9);
    expect(kit).toMatchObject({
      stove: { kind: 'gas', ratedPowerW: 2500, notches: 6 },
      altitudeM: 800,
      spoonM3: expect.closeTo(5e-6, 12),
      water: { alkalinityMgPerL: 0, hardnessMgPerL: expect.closeTo(178.5, 1) },
    });
    expect(kit.pan).toMatchObject({ material: 'enamel', diameterM: 0.24, heightM: 0.12 });
    expect(kit.roomC).toBeCloseTo(20, 9);
  });

  test('reads a kit from a file or standard input, and options change parts of it', async () => {
    const file = join(mkdtempSync(join(tmpdir(), 'umberpan-')), 'kit.json');
    const kit = { ...defaultKit, name: 'Attic', altitudeM: 1200 };
    writeFileSync(file, JSON.stringify(kit));
    expect((await planned(`--kit ${file} --pan 20cm`)).kit).toEqual({ ...kit, pan: { ...kit.pan, diameterM: 0.2 } });
    expect((await planned('--kit -', JSON.stringify(kit))).kit).toEqual(kit);
  });

  test('for a colour, chooses route, dose and holds, and states the odds', async () => {
    const { code, stdout } = await umberpan('plan --colour 45EBC --within 10EBC --route deep');
    expect(code).toBe(0);
    for (const words of [
      '45 EBC, 23 SRM',
      'by the deep route',
      '200 drawn kits',
      'just visible',
      'within 35-55 EBC',
      'taste',
    ]) {
      expect(stdout).toContain(words);
    }
    expect(stdout.split('\n').every((line) => line.length <= 90)).toBe(true);
    const { aim, made, request, account } = await planned('--colour 20SRM --route bright --sugar-price 1.2');
    expect(request.route).toBe('bright');
    expect(aim.ebc).toBeCloseTo((20 * 25) / 12.7, 9);
    expect(Math.abs(made.a430 / aim.a430 - 1)).toBeLessThan(0.03);
    expect(aim.odds.a430.low).toBeLessThan(aim.a430);
    expect(aim.odds.band).toBeGreaterThan(0);
    expect(account.cost.unpriced).toContain('energy');
  });

  test('a pale syrup is neutralised, and its lye has the cautions of any lye', async () => {
    const { code, stdout } = await umberpan('plan --route pale --form syrup');
    expect(code).toBe(0);
    for (const words of ['neutralise', 'never water onto lye', 'In the eye', 'Never aluminium'])
      expect(stdout).toContain(words);
  });

  test('a colour out of reach is answered with the nearest, and why', async () => {
    const { aim } = await planned('--colour 900EBC');
    expect(aim.short).toContain('LIM-ALKALI-DOSE');
    expect(aim.offBy).toBeLessThan(0.6);
  });

  test('what is poured is what was asked for, within 1 %', async () => {
    const { yieldKg } = await planned('--mass 300g --route bright');
    expect(Math.abs(yieldKg / 0.3 - 1)).toBeLessThan(0.01);
  });

  test('what breaks a limit of safety is refused with exit code 7, the limit and what is allowed', async () => {
    const { code, stdout, stderr } = await umberpan('plan --dose 9');
    expect([code, stdout]).toEqual([7, '']);
    for (const words of ['LIM-ALKALI-DOSE', '--dose', '8.0 g']) expect(stderr).toContain(words);
  });

  test('a refusal asked for as JSON lists every limit', async () => {
    const { code, stderr } = await umberpan('plan --dose 9 --roast 161C --json');
    expect(code).toBe(7);
    const { refusals } = JSON.parse(stderr).error;
    expect(refusals.map(({ limit }: { limit: string }) => limit).toSorted()).toEqual(['LIM-ALKALI-DOSE', 'LIM-ROAST']);
  });

  test.each([
    ['--mass 10g', ['--mass', '10g', '100 g to 5000 g']],
    ['--mass=-5g', ['--mass', '-5g', '100 g to 5000 g']],
    ['--mass -5g', ['--mass', '-5g', '100 g to 5000 g']],
    ['--kit /does/not/exist', ['--kit', 'ENOENT']],
    ['--mas 400g', ['--mass']],
    ['--colour 45', ['--colour', '45EBC, 20SRM']],
    ['--colour 5000EBC', ['--colour', '0.25 to 1300 EBC']],
    ['--colour 45EBC --dose 4', ['--dose', 'follows from --colour']],
    ['--within 5EBC', ['--within', '--colour']],
    ['--colour 45EBC --within 5', ['--within', '10EBC']],
    ['--active 90 --carbonate 20', ['--carbonate', '100 %']],
  ])('%s is misuse, and the message helps', async (line, words) => {
    const { code, stdout, stderr } = await umberpan(`plan ${line}`);
    expect([code, stdout]).toEqual([2, '']);
    for (const word of words) expect(stderr).toContain(word);
  });

  test('a kit with wrong fields is misuse, and each field is named', async () => {
    const { code, stderr } = await umberpan('plan --kit -', {
      input: JSON.stringify({ ...defaultKit, altitudeM: 'high', roomC: 99 }),
    });
    expect(code).toBe(2);
    expect(stderr).toContain('altitudeM is "high"');
    expect(stderr).toContain('roomC is 99');
  });

  test('a ring too weak to get there fails with exit code 1', async () => {
    const { code, stdout, stderr } = await umberpan('plan --mass 1kg --stove gas --power 400W --pan 30cm --room 5C');
    expect([code, stdout]).toEqual([1, '']);
    expect(stderr).toContain('more power');
  });
});

/** What planning ends with when it doesn't make a plan. */
async function refusal(texts: Record<string, string>): Promise<Problem> {
  const ending = await planFromOptions(texts).catch((error: unknown) => error);
  expect(ending).toBeInstanceOf(Stop);
  return (ending as Stop).problem;
}

test.each([
  [{ roast: '161C' }, 'LIM-ROAST', '--roast', '159 C'],
  [{ strength: '30%' }, 'LIM-STRENGTH', '--strength', '25 %'],
  [{ material: 'aluminium' }, 'LIM-PAN', '--material', 'stainless'],
  [{ mass: '2kg' }, 'LIM-FILL', '--mass', 'takes up to'],
  [{ invert: '140C' }, 'LIM-ALKALI-HEAT', '--invert', '132 C'],
  [{ step: '150C,5min' }, 'LIM-ORDER', '--step', '155 C and more'],
  [{ step: '156C,5min;160C,5min' }, 'LIM-ROAST', '--step', '159 C'],
])('%o breaks %s', async (texts, limit, field, allowed) => {
  const { kind, refusals } = await refusal(texts);
  expect(kind).toBe('refused');
  expect(refusals).toEqual([expect.objectContaining({ limit, field, message: expect.stringContaining(allowed) })]);
});

test.each([
  [{ mass: '400' }, '--mass', '500g'],
  [{ route: 'dep' }, '--route', 'did you mean deep?'],
  [{ brix: '80' }, '--brix', '--form syrup'],
  [{ route: 'pale', dose: '5' }, '--dose', '--route bright or deep'],
  [{ route: 'bright', roastTime: '5min' }, '--roast-time', '--route deep'],
  [{ acid: '2' }, '--acid', '--route pale'],
  [{ spoon: '5g' }, '--spoon', 'is a mass'],
  [{ step: '150C' }, '--step', 'a temperature and a time, such as 150C,10min'],
  [{ step: '150C,10C' }, '--step', 'is a temperature'],
  [{ step: Array(5).fill('156C,1min').join(';') }, '--step', 'up to 4'],
])('%o is misuse of %s', async (texts, field, words) => {
  const problem = await refusal(texts);
  expect(problem).toMatchObject({ kind: 'misused', field });
  expect(problem.message).toContain(words);
});

test('further holds may stand in one option, parted by semicolons, with a blank where it reads better', async () => {
  const { plan } = await planFromOptions({ mass: '200g', brownTime: '5min', step: '155C, 4min; 157.5C,90s' });
  expect(plan.request.moreHolds).toEqual([
    { celsius: 155, minutes: 4 },
    { celsius: 157.5, minutes: 1.5 },
  ]);
});

test('every field of a request has an option', () => {
  const fields = [...Object.keys(defaultRequest), ...Object.keys(optionalRanges), 'moreHolds'];
  expect(Object.keys(requestFields).toSorted()).toEqual(fields.toSorted());
  expect(Object.values(requestFields).toSorted()).toEqual(Object.keys(requestInputs).toSorted());
});
