import { randomUUID } from 'node:crypto';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it, vi } from 'vitest';
import { cookedLog } from '../../test/cookedLog.ts';
import { umberpan } from '../../test/runProgram.ts';
import { sha256 } from '../../test/sampleCook.ts';
import { scratchFolder } from '../../test/testServer.ts';
import { writeCookFile } from '../core/log/cookFile.ts';
import { defaultKit } from '../core/pan/kit.ts';
import { defaultRequest } from '../core/planning/request.ts';

vi.setConfig({ testTimeout: 60_000 });

const short = { ...defaultRequest, massKg: 0.2, route: 'bright', invertMinutes: 10, brownMinutes: 10 } as const;

/** The file of a cook with a reading each 20 s. */
function cookFile(folder: string, name: string, alkaliGPerKg: number): string {
  const cook = randomUUID();
  const { events } = cookedLog(defaultKit, 4, 'live', cook, { request: { ...short, name, alkaliGPerKg } });
  const few = events.filter(({ kind }, place) => kind !== 'reading' || place % 2 === 0);
  const file = join(folder, `${name}.ndjson`);
  writeFileSync(file, writeCookFile(cook, few, sha256));
  return file;
}

it('compare lays two cooks beside each other and tells what made the difference', async () => {
  const folder = scratchFolder();
  const [first, second] = [cookFile(folder, 'March', 4), cookFile(folder, 'April', 7)];
  const { code, stdout } = await umberpan(`compare ${first} ${second} --explain --draws 2`);
  expect(code).toBe(0);
  expect(stdout).toMatch(/Pure alkali given +4\.00 +7\.00 +\+3\.00 +g\/kg sugar/);
  expect(stdout).toMatch(/April is \d+ EBC\s+darker than March[\s\S]*mostly\s+alkali/);
});

/** The file of a plan, as `plan --json` prints it. */
async function planFile(folder: string, name: string, line: string): Promise<string> {
  const file = join(folder, `${name}.json`);
  writeFileSync(file, (await umberpan(`plan --name ${name} --mass 300g --route bright ${line} --json`)).stdout);
  return file;
}

it('compare lays two plans beside each other, tells what makes the difference, and draws both on one pan line', async () => {
  const folder = scratchFolder();
  const plans = [
    await planFile(folder, 'March', '--dose 4'),
    await planFile(folder, 'April', '--dose 7 --step 146C,10min'),
  ];
  const { code, stdout, stderr } = await umberpan(`compare ${plans.join(' ')} --explain --draws 2`);
  expect([code, stderr]).toEqual([0, '']);
  expect(stdout).toMatch(/Dose, sodium hydroxide +4\.0 +7\.0 +\+3\.0 +g\/kg/);
  expect(stdout).toMatch(/Further hold 1 for +- +10 +min/);
  expect(stdout).toMatch(/April is \d+ EBC\s+darker than March/);
  expect(stdout).not.toContain('twin');

  const drawn = join(folder, 'both.svg');
  expect(await umberpan(`compare ${plans.join(' ')} --svg ${drawn}`)).toMatchObject({ code: 0, stdout: '' });
  const svg = readFileSync(drawn, 'utf8');
  // Line, halo and sample of each; a ring where each step of the second ends, and one in its sample.
  expect(svg.match(/class="middle behind"/g)).toHaveLength(3);
  const ends = JSON.parse(readFileSync(plans[1] ?? '', 'utf8')).steps.length;
  expect(svg.match(/class="ring"/g)).toHaveLength(ends + 1);
  expect(svg).toMatch(/March, \d+ EBC[\s\S]*April, \d+ EBC/);
});

it('compares two of a kind', async () => {
  const folder = scratchFolder();
  const [cook, plan] = [cookFile(folder, 'March', 4), await planFile(folder, 'April', '')];
  const mixed = await umberpan(`compare ${cook} ${plan}`);
  expect([mixed.code, mixed.stdout]).toEqual([2, '']);
  expect(mixed.stderr).toContain('allowed: two cooks, or two plans');
  expect((await umberpan(`compare ${cook} ${cook} --svg -`)).code).toBe(2);
  const lye = join(folder, 'lye.json');
  const asked = JSON.parse(readFileSync(plan, 'utf8'));
  writeFileSync(lye, JSON.stringify({ ...asked, request: { ...asked.request, alkaliGPerKg: 11 } }));
  const refused = await umberpan(`compare ${plan} ${lye}`);
  expect(refused.code).toBe(7);
  expect(refused.stderr).toContain('LIM-ALKALI-DOSE');
});

it('a report’s plan is rehearsed and simulated like any other plan', async () => {
  const folder = scratchFolder();
  const html = join(folder, 'march.html');
  expect(await umberpan(`report ${cookFile(folder, 'March', 4)} --write ${html}`)).toMatchObject({
    code: 0,
    stderr: '',
  });
  expect(readFileSync(html, 'utf8')).toMatch(/^<!doctype html>/);
  const { code, stdout } = await umberpan(`simulate --plan ${html} --draws 16 --json`);
  expect(code).toBe(0);
  expect(stdout).toContain('"alkaliGPerKg": 4');
});

it('says which file and which line is not as it should be', async () => {
  const folder = scratchFolder();
  const file = join(folder, 'broken.ndjson');
  writeFileSync(file, '{"format":"umberpan-cook"\n');
  const { code, stderr } = await umberpan(`report ${file}`);
  expect(code).toBe(2);
  expect(stderr).toMatch(/broken\.ndjson: line 1: this is not the file of a cook/);
});

it('export and restore go round byte for byte', async () => {
  const folder = scratchFolder();
  const [from, to] = [join(folder, 'from'), join(folder, 'to')];
  const first = await umberpan(`export --data ${from}`);
  expect(first.code).toBe(0);
  const file = join(folder, 'all.json');
  writeFileSync(file, first.stdout);
  expect(await umberpan(`restore ${file} --data ${to}`)).toMatchObject({ code: 0 });
  expect((await umberpan(`export --data ${to}`)).stdout).toBe(first.stdout);
  const { code, stderr } = await umberpan(`restore ${join(folder, 'none.json')} --data ${to} --json`);
  expect(code).toBe(2);
  expect(JSON.parse(stderr).error).toMatchObject({ kind: 'misused', field: 'file' });
});
