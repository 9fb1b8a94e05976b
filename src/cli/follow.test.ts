import { spawn } from 'node:child_process';
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { describe, expect, test } from 'vitest';
import { main, umberpan, umberpanInto } from '../../test/runProgram.ts';
import { createFollower } from './follow/follower.ts';
import { readLine } from './follow/line.ts';
import { planFromOptions } from './plan/makePlan.ts';
import { Stop } from './stop.ts';

const few = '--members 16';
const planning = await planFromOptions({});
const cooked = { kit: planning.kit, steps: planning.plan.steps };

const lines = (...objects: object[]) => objects.map((object) => `${JSON.stringify(object)}\n`).join('');

function problemOf(run: () => unknown) {
  try {
    run();
  } catch (error) {
    if (error instanceof Stop) return error.problem;
    throw error;
  }
  throw new Error('was taken');
}

/** A follower of the default plan that takes lines written as objects. */
function following() {
  const follower = createFollower(planning, { members: 16, seed: 1 });
  return { follower, take: (object: object) => follower.take(readLine(JSON.stringify(object), cooked)) };
}

describe('umberpan follow', { timeout: 30_000 }, () => {
  test('gives one estimate for each line, with ranges, step and advice, and surprise for what was observed', async () => {
    const input = lines({ t: 0, heat: 4 }, { t: 60, reading: 75.2, unit: '[degF]' }, { t: 70, solids: 0.65 });
    const { code, stdout, stderr } = await umberpan(`follow ${few}`, { input });
    expect([code, stderr]).toEqual([0, '']);
    const estimates = stdout
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line));
    expect(estimates.map(({ line, t, used, step }) => [line, t, used, step])).toEqual([
      [1, 0, null, 'dissolve'],
      [2, 60, true, 'dissolve'],
      [3, 70, true, 'dissolve'],
    ]);
    for (const estimate of estimates) {
      for (const name of ['temperature_Cel', 'water_%', 'inverted_%', 'pH', 'a430', 'ebc']) {
        const { low, mid, high } = estimate[name];
        expect([name, low <= mid && mid <= high]).toEqual([name, true]);
      }
      expect(Object.keys(estimate.advice)).toEqual([
        'kind',
        'deeds',
        'urgency',
        'expected_Cel',
        'leavesBand',
        'minutesLeft',
      ]);
    }
    // 75.2 F is 24 C.
    expect(Math.abs(estimates[1].temperature_Cel.mid - 24)).toBeLessThan(2);
  });

  test('a bad line is told on standard error with its number; the others go on, and the exit code is 2', async () => {
    const input = `${lines({ t: 0, heat: 4 })}\n{"t": 1, "heat"\n${lines({ t: 5, heat: 99 }, { t: 9, heat: 3 })}`;
    const { code, stdout, stderr } = await umberpan(`follow ${few}`, { input });
    expect(code).toBe(2);
    const answered = stdout.trim().split('\n');
    expect(answered.map((line) => JSON.parse(line).line)).toEqual([1, 5]);
    const told = stderr.trim().split('\n');
    expect(told.map((line) => JSON.parse(line).error)).toEqual([
      expect.objectContaining({ line: 3, field: 'line' }),
      expect.objectContaining({ line: 4, field: 'heat', value: '99', allowed: 'a number, 0 to 9' }),
    ]);
  });

  test('answers a line before the next one comes', async () => {
    const child = spawn(process.execPath, [main, 'follow', '--members', '16']);
    const answers = createInterface({ input: child.stdout })[Symbol.asyncIterator]();
    for (const t of [0, 10]) {
      child.stdin.write(lines({ t, heat: 4 }));
      expect(JSON.parse((await answers.next()).value).t).toBe(t);
    }
    child.stdin.end();
    expect(await new Promise((resolve) => child.on('close', resolve))).toBe(0);
  });

  test('is quiet when the reader has had enough', async () => {
    const file = join(mkdtempSync(join(tmpdir(), 'umberpan-')), 'lines.ndjson');
    // To go through all of them would take much longer than a test may.
    writeFileSync(file, lines(...Array.from({ length: 20_000 }, (_, at) => ({ t: at, heat: 4 }))));
    const { code, stderr } = await umberpanInto(`follow ${few} < ${file}`, 'head -1');
    expect([code, stderr]).toEqual([0, '']);
  });

  test.each([
    ['--plan -', '--plan'],
    ['--kit -', '--kit'],
    ['--members 3', '--members'],
    ['--seed 1.5', '--seed'],
  ])('%s is misuse, and the message helps', async (line, words) => {
    const { code, stdout, stderr } = await umberpan(`follow ${line}`);
    expect([code, stdout]).toEqual([2, '']);
    expect(stderr).toContain(words);
  });

  test('--help shows every line that is understood, and its example runs', async () => {
    const { code, stdout } = await umberpan('follow --help');
    expect(code).toBe(0);
    const input = [...stdout.matchAll(/'(\{"t".*?\})'/g)].map(([, line]) => `${line}\n`).join('');
    const example = await umberpan(`follow ${few}`, { input });
    expect([example.code, example.stdout.trim().split('\n').length]).toEqual([0, 2]);
    const shown = [...stdout.matchAll(/^ {2}("\w+": .*?) {2,}/gm)].map(([, fields]) => `{"t": 0, ${fields}}`);
    expect(shown).toHaveLength(11);
    for (const line of shown) expect(readLine(line, cooked).timeS).toBe(0);
  });
});

test.each([
  ['{"t": -1, "heat": 3}', 't', '0 to 43200 s'],
  ['{"heat": 3}', 't', '0 to 43200 s'],
  ['{"t": 1, "reading": 131}', 'unit', '[degF]'],
  ['{"t": 1, "reading": 131, "unit": "C"}', 'unit', 'Cel'],
  ['{"t": 1, "reading": 1000, "unit": "Cel"}', 'reading', '-40 to 400 Cel'],
  ['{"t": 1, "reading": -1, "unit": "K"}', 'reading', '-40 to 400 Cel'],
  ['{"t": 1, "reading": null, "unit": "Cel"}', 'reading', 'a number'],
  ['{"t": 1, "water": "5g"}', 'water', '5mL'],
  ['{"t": 1, "water": 5}', 'water', '5mL'],
  ['{"t": 1, "alkali": 1.5}', 'alkali', 'whole'],
  ['{"t": 1, "step": "browm"}', 'step', 'brown'],
  ['{"t": 1, "poured": false}', 'poured', 'true'],
  ['{"t": 1, "heat": 3, "spoonfuls": 1}', 'spoonfuls', 'one of them'],
  ['{"t": 1, "readin": 131}', 'readin', 'reading'],
  ['{"t": 1}', 'line', 'reading'],
  ['[1, 2]', 'line', 'object'],
  ['null', 'line', 'object'],
  ['{"__proto__": {"heat": 3}, "t": 1}', '__proto__', 'heat'],
])('%s is refused over %s', (line, field, allowed) => {
  const problem = problemOf(() => readLine(line, cooked));
  expect(problem).toMatchObject({ kind: 'misused', field });
  expect(problem.allowed).toContain(allowed);
});

test('a late line goes to its place: the estimate is that of the lines in order', () => {
  const [first, second, third] = [
    { t: 0, heat: 6 },
    { t: 120, heat: 0 },
    { t: 300, reading: 45, unit: 'Cel' },
  ];
  const ends = [
    [first, second, third],
    [first, third, second],
  ].map((order) => {
    const { follower, take } = following();
    for (const line of order) take(line);
    expect(follower.timeS).toBe(300);
    return follower.twin.members.map(({ temperatureC }) => temperatureC);
  });
  const [inOrder = [], late = []] = ends;
  // The integrator's steps fall on other times: a few times its tolerance of 3e-4.
  const apart = Math.max(...inOrder.map((value, at) => Math.abs(value - (late[at] ?? Number.NaN))));
  console.log(`late against in order: ${apart.toExponential(1)} K apart at most`);
  expect(apart).toBeLessThan(0.1);
});

test('parts of alkali are counted over the whole cook, so that a step begun again never asks for them again', () => {
  const { follower, take } = following();
  const parts = planning.plan.amounts.alkali?.parts.length ?? 0;
  expect(problemOf(() => take({ t: 0, alkali: 1 }))).toMatchObject({
    field: 'alkali',
    allowed: 'after {"step": "brown"}',
  });
  take({ t: 10, step: 'brown' });
  take({ t: 20, alkali: 1 });
  expect(problemOf(() => take({ t: 25, step: 'brown' }))).toMatchObject({ field: 'step' });
  expect(problemOf(() => take({ t: 30, alkali: parts }))).toMatchObject({
    field: 'alkali',
    allowed: `up to ${parts - 1}`,
  });
  take({ t: 40, step: 'invert' });
  take({ t: 50, step: 'brown' });
  expect(follower.progress.partsGiven).toBe(1);
  take({ t: 60, alkali: parts - 1 });
  expect(problemOf(() => take({ t: 70, alkali: 1 }))).toMatchObject({ field: 'alkali' });
});

test('after the pour there is no advice, and later lines are refused while late ones are taken', () => {
  const { follower, take } = following();
  take({ t: 0, heat: 4 });
  take({ t: 60, poured: true });
  expect(follower.advice()).toBeUndefined();
  expect(problemOf(() => take({ t: 61, heat: 0 }))).toMatchObject({ field: 't', allowed: 'up to 60 s' });
  expect(take({ t: 30, reading: 22, unit: 'Cel' })?.used).toBe(true);
});
