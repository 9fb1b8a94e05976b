import { beforeAll, describe, expect, test } from 'vitest';
import { bareCook } from '../../test/bareCook.ts';
import { type Said, umberpan } from '../../test/runProgram.ts';
import { alarmCatalogue } from '../core/advice/alarms/catalogue.ts';
import { createRehearsal } from '../core/advice/rehearsal.ts';
import { surpriseKinds, surpriseNames } from '../core/advice/surpriseKinds.ts';
import type { Range } from '../core/twin/range.ts';
import { planFromOptions } from './plan/makePlan.ts';
import { cookByHand } from './rehearse/cookByHand.ts';
import { actOf } from './rehearse/hand.ts';
import { screenOn } from './rehearse/screen.ts';

const short = { mass: '300g', route: 'bright', form: 'syrup', invertTime: '1min', brownTime: '1min' };
const shortLine = '--mass 300g --route bright --form syrup --invert-time 1min --brown-time 1min --members 16';
interface Told {
  readonly hidden: number;
  readonly believed: Range;
  readonly inside: boolean;
  readonly before?: Range;
}

const silent = { note() {}, status() {}, end() {} };

describe('umberpan rehearse --follow-advice --speed max', () => {
  let text: Said;
  let json: Said;
  beforeAll(async () => {
    const line = `rehearse ${shortLine} --follow-advice --speed max --seed 3`;
    [text, json] = await Promise.all([umberpan(line), umberpan(`${line} --json`)]);
  }, 60_000);

  test('cooks to the pour, and reveals pan and kitchen as ranges and hidden values', () => {
    expect([json.code, json.stderr]).toEqual([0, '']);
    const document = JSON.parse(json.stdout);
    expect(document).toMatchObject({ mode: 'rehearsal', ending: 'poured', seed: 3, members: 16 });
    expect(document.deeds.at(-1).kind).toBe('pour');
    expect(document.surprises).toBeNull();
    expect(Object.keys(document.pan)).toEqual(['temperature_Cel', 'water_%', 'inverted_%', 'ph_[pH]', 'colour_{EBC}']);
    for (const { hidden, believed, inside, before } of [
      ...Object.values<Told>(document.pan),
      ...Object.values<Told>(document.kitchen),
    ]) {
      expect(believed.low <= believed.mid && believed.mid <= believed.high).toBe(true);
      expect(inside).toBe(hidden >= believed.low && hidden <= believed.high);
      if (before) expect(before.low).toBeLessThan(before.high);
    }
  });

  test('says in every block of its text that it is a rehearsal, without an escape sequence', () => {
    expect([text.code, text.stderr]).toEqual([0, '']);
    expect(text.stdout).not.toContain('\u001b');
    expect(text.stdout).not.toContain('\r');
    const [log = '', ...blocks] = text.stdout.trim().split('\n\n');
    for (const line of log.split('\n')) expect(line).toMatch(/^Rehearsal /);
    expect(log).toContain('done: poured');
    expect(blocks).toHaveLength(4);
    for (const block of blocks) expect(block).toMatch(/^Rehearsal/);
  });
});

test('umberpan rehearse --surprises names each fault, and the alarm that said so', { timeout: 120_000 }, async () => {
  const line = 'rehearse --mass 300g --route bright --form syrup --invert-time 8min --brown-time 1min --members 16';
  const { code, stdout } = await umberpan(`${line} --follow-advice --speed max --surprises`);
  const [log = '', ...blocks] = stdout.trim().split('\n\n');
  expect(code).toBe(0);
  expect(log).toContain('done: poured');
  const told = blocks.find((block) => block.startsWith('Rehearsal: surprises\n'));
  const surprise = surpriseNames.map((name) => surpriseKinds[name]).find(({ words }) => told?.includes(words));
  const { title } = alarmCatalogue[surprise?.alarm ?? 'foam'];
  expect(told).toMatch(
    new RegExp(`\\d:\\d\\d, ${surprise?.words}: “${title}” said so after \\d+ s, right again at \\d+:\\d\\d.$`),
  );
  expect(log).toContain(`ALARM: ${title}.`);
});

test.each([
  ['', '--follow-advice'],
  ['--speed max', '--speed'],
  ['--speed 601 --follow-advice', '1 to 600'],
  ['--plan - --follow-advice', '--plan'],
])('rehearse %s without a terminal is misuse, and the message helps', { timeout: 30_000 }, async (line, words) => {
  const { code, stdout, stderr } = await umberpan(`rehearse ${line}`);
  expect([code, stdout]).toEqual([2, '']);
  expect(stderr).toContain(words);
});

test('--help names the keys, the exit codes and an example', { timeout: 30_000 }, async () => {
  const { code, stdout } = await umberpan('rehearse --help');
  expect(code).toBe(0);
  for (const words of ['Enter do what is advised', '2 misused', 'umberpan rehearse --mass']) {
    expect(stdout).toContain(words);
  }
});

describe('keys', async () => {
  const { plan, prepared, kit } = await planFromOptions(short);
  const stageOf = () => {
    const { steps } = plan;
    const rehearsal = createRehearsal({ prepared, begun: bareCook(plan.amounts.charge, steps, 3), members: 16 });
    return { rehearsal, kit, steps };
  };

  test('do what is open now, and say why the rest is not', () => {
    const stage = stageOf();
    const advice = stage.rehearsal.advice();
    expect(actOf('+', stage, advice)).toMatchObject({ kind: 'deeds', deeds: [{ kind: 'heat', notch: 1 }] });
    expect(actOf('n', stage, advice)).toMatchObject({ kind: 'deeds', deeds: [{ kind: 'step', index: 1 }] });
    for (const key of ['-', 'a', 'p']) expect([key, actOf(key, stage, advice).kind]).toEqual([key, 'closed']);
    expect(actOf('q', stage, advice).kind).toBe('quit');
    expect(actOf('z', stage, advice).kind).toBe('none');
  });

  test('Enter alone, pressed at each reading, turns the heat on and leads on to the climb', async () => {
    const stage = stageOf();
    let pressedAtS = -1;
    const next = () => {
      const { timeS } = stage.rehearsal;
      if (timeS % 10 !== 0 || timeS === pressedAtS) return Promise.resolve(undefined);
      pressedAtS = timeS;
      return Promise.resolve('\r');
    };
    const left = await cookByHand(stage, { next, end() {} }, { screen: silent, speed: 600, longestS: 9 * 60 });
    expect(left).toBe(false);
    expect(stage.rehearsal.deeds[0]?.deed.kind).toBe('heat');
    expect(stage.rehearsal.progress.stepIndex).toBeGreaterThan(0);
  }, 30_000);

  test('s sees to an alarm when there is one', () => {
    const stage = stageOf();
    const { rehearsal } = stage;
    const press = () => actOf('s', stage, rehearsal.advice());
    expect(press()).toMatchObject({ kind: 'closed' });
    rehearsal.say('foam', { rising: true });
    rehearsal.moveTo(10);
    expect(press()).toEqual({ kind: 'seen', alarms: ['foam'] });
    rehearsal.say('seen', { alarm: 'foam' });
    rehearsal.moveTo(20);
    expect(press()).toMatchObject({ kind: 'closed' });
  });

  test('q leaves', async () => {
    const stage = stageOf();
    const typed = ['\r', undefined, 'q'];
    const keys = { next: () => Promise.resolve(typed.shift()), end() {} };
    expect(await cookByHand(stage, keys, { screen: silent, speed: 60, longestS: 3600 })).toBe(true);
    expect(stage.rehearsal.deeds).toHaveLength(1);
  });
});

test.each([
  [{ isTTY: true, columns: 30 }, { TERM: 'xterm' }, 'drawn over'],
  [{ isTTY: true, columns: 30 }, { TERM: 'dumb' }, 'plain'],
  [{ isTTY: false }, { TERM: 'xterm' }, 'plain'],
])('the status on %o with %o is %s', (stream, environment, how) => {
  let written = '';
  const write = (text: string) => {
    written += text;
  };
  const screen = screenOn({ ...stream, write } as unknown as NodeJS.WriteStream, { quiet: false, environment });
  for (const timeS of [0, 10, 60]) screen.status(`Rehearsal ${timeS}, and more than fits on the line`, timeS);
  if (how === 'plain') expect(written.match(/Rehearsal \d+/g)).toEqual(['Rehearsal 0', 'Rehearsal 60']);
  else expect(written.split('\r').map((line) => line.length)).toEqual([0, 29, 29, 29]);
});
