import { describe, expect, test } from 'vitest';
import { umberpan } from '../../test/runProgram.ts';

async function document(line: string) {
  const { code, stdout, stderr } = await umberpan(`colour ${line} --json`);
  expect([code, stderr]).toEqual([0, '']);
  return JSON.parse(stdout);
}

describe('umberpan colour', { timeout: 60_000 }, () => {
  test('1 g in 100 mL of 0.420 is 0.0420 L/(g cm): EBC 109 at 10 % w/w (definition: 25 x 0.042 x 103.8)', async () => {
    const { specific430, ebc, srm, icumsa } = await document('--a430 0.42 --sugar 1g --made-up-to 100mL');
    expect(specific430.mid).toBeCloseTo(0.042, 9);
    expect(ebc.mid).toBeCloseTo(109.0, 1);
    expect(ebc.low).toBeLessThan(107);
    expect(ebc.high).toBeGreaterThan(111);
    expect(ebc.mid / srm.mid).toBeCloseTo(25 / 12.7, 9);
    // EBC is 0.0022 of the ICUMSA colour at 10 % w/v, within 3 % (ratio of 420 to 430 nm).
    expect((0.963 * ebc.mid) / icumsa.mid / 0.0022).toBeGreaterThan(0.97);
    expect((0.963 * ebc.mid) / icumsa.mid / 0.0022).toBeLessThan(1.03);
  });

  test('water in the sugar, a longer path and another thinning are reckoned away', async () => {
    const [plain, other] = await Promise.all([
      document('--a430 0.42 --sugar 1g --made-up-to 100mL'),
      document('--a430 0.42 --sugar 5g --made-up-to 250mL --path 2cm --fold 3 --solids 75'),
    ]);
    expect(other.specific430.mid).toBeCloseTo(plain.specific430.mid, 9);
  });

  test('scales lead back to each other', async () => {
    const { srm, icumsa } = await document('--ebc 210');
    expect((await document(`--srm ${srm.mid}`)).ebc.mid).toBeCloseTo(210, 6);
    expect((await document(`--icumsa ${icumsa.mid}`)).ebc.mid / 210).toBeCloseTo(1, 2);
  });

  test('says it in words', async () => {
    const { code, stdout } = await umberpan('colour --a420 0.61 --sugar 2g --made-up-to 100mL --fold 10');
    expect(code).toBe(0);
    expect(stdout).toMatch(/EBC +\d+ \(\d+ to \d+\)/);
    expect(stdout.split('\n').filter((line) => line.length > 90)).toEqual([]);
  });

  test.each([
    ['', '--a430'],
    ['--a430 1 --ebc 3', '--a430'],
    ['--a430 0.4 --sugar 1g', '--made-up-to'],
    ['--ebc 4 --sugar 1g --made-up-to 100mL', '--sugar'],
    ['--a430 3.5 --sugar 1g --made-up-to 100mL', '--a430'],
    ['--a430 dark', '--a430'],
  ])('colour %s is refused over %s', async (line, field) => {
    const { code, stderr } = await umberpan(`colour ${line} --json`);
    expect(code).toBe(2);
    expect(JSON.parse(stderr).error.field).toBe(field);
  });
});
