import { describe, expect, test } from 'vitest';
import { umberpan, umberpanInto } from '../../test/runProgram.ts';

async function json(line: string) {
  const { code, stdout, stderr } = await umberpan(`${line} --json`);
  expect([code, stderr]).toEqual([0, '']);
  return JSON.parse(stdout);
}

describe('umberpan handbook', { timeout: 30_000 }, () => {
  test.each([
    ['boiling-point --sucrose 85', 'Cel'],
    ['colour --a430 2.5 --path 5cm', '{EBC}'],
  ])('%s gives value, unit, range and source', async (line, unit) => {
    const document = await json(`handbook ${line}`);
    expect(Object.keys(document).slice(0, 4)).toEqual(['value', 'unit', 'range', 'source']);
    expect(document.unit).toBe(unit);
    expect(document.range[0]).toBeLessThanOrEqual(document.value);
    expect(document.range[1]).toBeGreaterThanOrEqual(document.value);
  });

  test('tells a person the value with its unit, its range and its source', async () => {
    const { stdout } = await umberpan('handbook boiling-point --sucrose 85');
    expect(stdout).toMatch(/^boiling-point +114\.\d °C\nrange .* to .* °C \(10-90 %\)\n/);
    expect(stdout).toContain('Starzak & Peacock 1997');
  });

  test('without a property it lists them, as `list` does', async () => {
    const [bare, list, listed] = await Promise.all([
      umberpan('handbook'),
      umberpan('handbook list'),
      json('handbook list'),
    ]);
    expect(bare).toEqual(list);
    for (const { name, meaning } of listed) expect(bare.stdout).toContain(`  ${name}\n      ${meaning}`);
  });

  test('gives every parameter with mean, sd, unit, source and mark', async () => {
    const parameters = await json('handbook parameters --stove gas');
    expect(parameters.length).toBeGreaterThan(40);
    for (const { name, mean, sd, unit, source, mark } of parameters) {
      expect([name, Number.isFinite(mean), sd > 0, unit.includes(' '), source !== '', mark !== '']).toEqual([
        name,
        true,
        true,
        false,
        true,
        true,
      ]);
    }
    const efficiency = parameters.find(({ name }: { name: string }) => name === 'stoveEfficiency');
    expect(efficiency.mean).toBe(0.35);
  });

  test('outside the known range it exits 2 and says the range, as JSON when asked', async () => {
    const [plain, asked] = await Promise.all([
      umberpan('handbook boiling-point --sucrose 99.8'),
      umberpan('handbook boiling-point --sucrose 99.8 --json'),
    ]);
    expect(plain).toMatchObject({ code: 2, stdout: '' });
    expect(plain.stderr).toContain('--sucrose is 99.8 %; allowed: 0 to 99.5 %');
    expect(asked).toMatchObject({ code: 2, stdout: '' });
    expect(JSON.parse(asked.stderr).error).toMatchObject({ kind: 'outsideRange', field: '--sucrose' });
  });

  test('a mistyped property is misuse, and the one that was meant is named', async () => {
    const { code, stdout, stderr } = await umberpan('handbook boilingpoint --sucrose 85');
    expect([code, stdout]).toEqual([2, '']);
    expect(stderr).toContain('did you mean boiling-point?');
  });

  test.each([
    ['solids --temperature 130', ['--temperature', "'130'", '135C']],
    ['boiling-point --sucros 85', ['--sucrose']],
    ['--jsno', ['--jsno']],
  ])('%s is misuse, and the message helps', async (line, words) => {
    const { code, stdout, stderr } = await umberpan(`handbook ${line}`);
    expect([code, stdout]).toEqual([2, '']);
    for (const word of words) expect(stderr).toContain(word);
  });

  test('is quiet when the reader has had enough', async () => {
    expect(await umberpanInto('handbook parameters --json', 'head -1')).toEqual({ code: 0, stdout: '[\n', stderr: '' });
  });

  test('--help has the example', async () => {
    const { code, stdout } = await umberpan('handbook spoonful --help');
    expect(code).toBe(0);
    expect(stdout).toContain('umberpan handbook spoonful --batch 450g');
  });
});
