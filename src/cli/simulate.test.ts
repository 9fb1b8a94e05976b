import { describe, expect, test } from 'vitest';
import { umberpan, umberpanInto } from '../../test/runProgram.ts';
import { planFromOptions } from './plan/makePlan.ts';
import { simulationDocument } from './simulate/document.ts';
import { rehearse } from './simulate/rehearse.ts';
import { showsColour } from './swatch.ts';

const few = '--draws 8';
const background = '\u001b[48;2;';

interface Range {
  readonly low: number;
  readonly mid: number;
  readonly high: number;
}

async function simulated(line: string, input = '') {
  const { code, stdout, stderr } = await umberpan(`simulate ${line} --json`, { input });
  expect([code, stderr]).toEqual([0, '']);
  return JSON.parse(stdout);
}

describe('umberpan simulate', { timeout: 30_000 }, () => {
  test('gives each step with times, temperatures, spoonfuls, water, pH, inversion and colour in their 10-90 % bands', async () => {
    const { steps, yield_kg } = await simulated(few);
    expect(steps.map(({ kind }: { kind: string }) => kind)).toEqual(['dissolve', 'climb', 'invert', 'brown', 'roast']);
    for (const { kind, drop_srgb, ...ranges } of steps) {
      expect(Object.keys(ranges)).toHaveLength(8);
      for (const { low, mid, high } of Object.values(ranges) as Range[]) {
        expect([kind, low <= mid && mid <= high]).toEqual([kind, true]);
      }
      expect(drop_srgb).toHaveLength(3);
    }
    expect(yield_kg.mid).toBeGreaterThan(0.38);
    expect(yield_kg.mid).toBeLessThan(0.42);
  });

  test('cooks a plan that `plan --json` printed, in the kit that it was made for', async () => {
    const line = '--route bright --mass 300g --stove induction --altitude 500m';
    const { stdout } = await umberpan(`plan ${line} --json`);
    const [fromFile, fromOptions] = await Promise.all([
      simulated(`--plan - ${few}`, stdout),
      simulated(`${line} ${few}`),
    ]);
    expect(fromFile).toEqual(fromOptions);
  });

  test('says so when the steps in the file are not those of its request', async () => {
    const { stdout } = await umberpan('plan --json');
    const document = JSON.parse(stdout);
    document.steps[2].end.heldMinutes = 5;
    const { code, stderr } = await umberpan(`simulate --plan - ${few}`, { input: JSON.stringify(document) });
    expect(code).toBe(0);
    expect(stderr).toContain('steps in the file differ');
  });

  test('prints the course as CSV by RFC 4180: CR LF, one head with units, a row each --every', async () => {
    const { code, stdout, stderr } = await umberpan(`simulate ${few} --csv --every 1min`);
    expect([code, stderr]).toEqual([0, '']);
    const lines = stdout.split('\r\n');
    expect(lines.pop()).toBe('');
    expect(stdout.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
    const [head = [], ...rows] = lines.map((line) => line.split(','));
    expect(head.slice(0, 3)).toEqual(['time_s', 'step', 'syrup_Cel']);
    expect(head).toContain('reading_Cel');
    expect(head).toContain('water_low_%');
    expect(rows.every((row) => row.length === head.length)).toBe(true);
    expect(rows.map(([time]) => Number(time))).toEqual(rows.map((_, at) => 60 * at));
    const water = rows.map((row) => Number(row[head.indexOf('water_%')]));
    // All the water and all the sugar are in the pan from the start, whatever is dissolved.
    expect(water[0]).toBeGreaterThan(23);
    expect(water[0]).toBeLessThan(26);
    expect(water.at(-1)).toBeLessThan(5);
  });

  test('paints swatches where colour is asked for, and none into a pipe unasked', async () => {
    const shows = async (env: Record<string, string>) =>
      (await umberpan(`simulate ${few}`, { env })).stdout.includes(background);
    expect(await Promise.all([shows({}), shows({ FORCE_COLOR: '1' })])).toEqual([false, true]);
  });

  test('is quiet when the reader has had enough', async () => {
    const { code, stderr } = await umberpanInto(`simulate ${few} --csv --every 1s`, 'head -1');
    expect([code, stderr]).toEqual([0, '']);
  });

  test.each([
    ['--draws 0', '--draws'],
    ['--seed -1', "--seed: '-1' is outside the range; allowed: whole numbers, 0 to 2147483647"],
    ['--seed 2147483648', '0 to 2147483647'],
    ['--csv --json', 'cannot be used'],
    ['--plan - --mass 300g', '--mass'],
  ])('%s is misuse, and the message helps', async (line, words) => {
    const { code, stdout, stderr } = await umberpan(`simulate ${line}`);
    expect([code, stdout]).toEqual([2, '']);
    expect(stderr).toContain(words);
  });

  test('--help has examples and exit codes', async () => {
    const { code, stdout } = await umberpan('simulate --help');
    expect(code).toBe(0);
    expect(stdout).toContain('umberpan plan --json | umberpan simulate --plan -');
    expect(stdout).toContain('7 refused');
  });
});

test('the same seed gives the same cooks, another seed others', async () => {
  const planning = await planFromOptions({});
  const run = { draws: 4, seed: 5, everyS: 60 };
  const one = simulationDocument(rehearse(planning, run));
  expect(simulationDocument(rehearse(planning, run))).toEqual(one);
  expect(simulationDocument(rehearse(planning, { ...run, seed: 6 })).steps).not.toEqual(one.steps);
});

test.each([
  [true, { TERM: 'xterm-256color' }, true],
  [true, { TERM: 'dumb' }, false],
  [true, { TERM: 'xterm-256color', NO_COLOR: '1' }, false],
  [false, { TERM: 'xterm-256color' }, false],
  [false, { FORCE_COLOR: '1' }, true],
])('swatches: terminal %s with %o: %s', (isTTY, environment, shown) => {
  const depth = 'TERM' in environment && environment.TERM === 'dumb' ? 1 : 8;
  const stream = { isTTY, getColorDepth: () => depth } as unknown as NodeJS.WriteStream;
  expect(showsColour(stream, environment as NodeJS.ProcessEnv)).toBe(shown);
});
