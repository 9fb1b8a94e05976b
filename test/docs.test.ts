// Holds the documentation to its word: links lead somewhere, pages say what they are, commands run, and figures are the model's.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { referenceFiles } from '../scripts/reference/files.ts';
import { defaultKit } from '../src/core/pan/kit.ts';
import { centralValues } from '../src/core/pan/model.ts';
import { prepareKit } from '../src/core/pan/preparedKit.ts';
import { dissolvedKg, place } from '../src/core/pan/state.ts';
import { planFor } from '../src/core/planning/plan.ts';
import { defaultRequest } from '../src/core/planning/request.ts';
import { absorbance420PerCm } from '../src/core/reactions/rates.ts';
import { umberpan } from './runProgram.ts';

const root = fileURLToPath(new URL('../', import.meta.url));
const read = (path: string) => readFileSync(join(root, path), 'utf8');
const docs = readdirSync(join(root, 'docs'), { recursive: true, encoding: 'utf8' })
  .filter((path) => path.endsWith('.md'))
  .map((path) => `docs/${path.split(sep).join('/')}`);
const pages = ['README.md', 'CHANGELOG.md', ...docs];

/** Text without fenced blocks and code spans, where brackets mean other things. */
function prose(text: string): string {
  return text.replace(/^```[\s\S]*?^```/gm, '').replace(/`[^`\n]*`/g, '');
}

describe('links', () => {
  test.each(pages)('of %s lead to files that exist', (page) => {
    const targets = [...prose(read(page)).matchAll(/\]\(([^)\s]+)\)/g)].map((match) => match[1] ?? '');
    const local = targets.filter((target) => !/^(https?:|mailto:|#)/.test(target));
    const dead = local.filter((target) => !existsSync(join(root, dirname(page), target.replace(/#.*/, ''))));
    expect(dead).toEqual([]);
  });

  test.each(pages)('of %s into a page lead to a heading of it', (page) => {
    const targets = [...prose(read(page)).matchAll(/\]\(([^)\s#:]*)#([^)\s]+)\)/g)];
    const dead = targets.filter(([, file = '', heading = '']) => {
      const text = read(file ? join(dirname(page), file) : page);
      return ![...prose(text).matchAll(/^#+ (.*)$/gm)].some(([, title = '']) => slugOf(title) === heading);
    });
    expect(dead.map(([link]) => link)).toEqual([]);
  });
});

/** The anchor that a heading gets where Markdown is shown. */
function slugOf(title: string): string {
  return title
    .toLowerCase()
    .replace(/[^\p{L}\p{N} _-]/gu, '')
    .replaceAll(' ', '-');
}

describe('pages', () => {
  const kinds = ['tutorial', 'how-to', 'reference', 'explanation'];

  test.each(docs)('%s declares its kind, and it is that of its folder', (page) => {
    const folder = relative('docs', page).split(sep)[0] ?? '';
    if (folder === 'decisions') {
      // A decision's kind is told by its folder and number.
      expect(page).toMatch(/\/\d{4}-[a-z-]+\.md$/);
      return;
    }
    expect(kinds).toContain(folder);
    expect(/^---\nkind: (\S+)\n---\n/.exec(read(page))?.[1]).toBe(folder);
  });

  test("the README's first line is the package's description, short enough for a list", () => {
    const { description } = JSON.parse(read('package.json')) as { description: string };
    expect(read('README.md').split('\n')[2]).toBe(description);
    expect(description.length).toBeLessThan(120);
  });
});

test('the reference is what the program says of itself; else `npm run reference`', async () => {
  for (const [name, text] of Object.entries(await referenceFiles())) {
    expect(read(`docs/reference/${name}`), name).toBe(text);
  }
}, 120_000);

/** Commands that a page shows: blocks marked `sh run`, lines after `$` in consoles, and code spans of the handbook. */
function commandsOf(page: string): string[] {
  const text = read(page);
  const blocks = [...text.matchAll(/^```sh run\n([\s\S]*?)^```/gm)].flatMap((match) =>
    (match[1] ?? '').trim().split('\n'),
  );
  const consoles = [...text.matchAll(/^\$ (npx umberpan .*)$/gm)].map((match) => match[1] ?? '');
  const spans = [...text.matchAll(/`((?:npx )?umberpan handbook(?: [^`]*)?)`/g)].map((match) => match[1] ?? '');
  return [...blocks, ...consoles, ...spans];
}

const shown = pages.flatMap((page) => commandsOf(page).map((command) => [page, command] as const));

/** What a page shows below `$ npx umberpan ...`: the lines up to the fence, without those that only say that something is left out. */
const outputs = pages.flatMap((page) =>
  [...read(page).matchAll(/^\$ npx umberpan (.*)\n([\s\S]*?)^```/gm)].map(
    ([, command = '', lines = '']) =>
      [page, command, lines.split('\n').filter((line) => line && line !== '...')] as const,
  ),
);

describe('outputs', { timeout: 120_000 }, () => {
  test('are found', () => expect(outputs.length).toBeGreaterThanOrEqual(3));

  test.each(outputs)('%s shows what `umberpan %s` really prints', async (_, command, lines) => {
    const { stdout } = await umberpan(command);
    const printed = stdout.split('\n');
    expect(lines.filter((line) => !printed.includes(line))).toEqual([]);
  });
});

describe('commands', { timeout: 120_000 }, () => {
  test('are found, so that the next test cannot pass by finding none', () => {
    expect(shown.filter(([page]) => page === 'docs/tutorial/first-plan.md').length).toBeGreaterThanOrEqual(5);
    expect(shown.filter(([page]) => page === 'README.md').length).toBeGreaterThanOrEqual(3);
  });

  test.each(shown)('%s: %s', async (_, command) => {
    const [first = '', ...then] = command.split(/\s*\|\s*/).map((part) => part.replace(/^(npx )?umberpan /, ''));
    let said = await umberpan(first);
    for (const next of then) said = await umberpan(next, { input: said.stdout });
    expect([said.code, said.stderr]).toEqual([0, '']);
    expect(said.stdout).not.toBe('');
  });
});

/** A420 per cm in the pan at the times of the table in `trust.md`, for the default deep plan. */
function absorbances(): Record<string, number> {
  const planned = planFor(defaultRequest, prepareKit(defaultKit));
  if (planned.kind === 'refused') throw new Error('the default plan is refused');
  const { course } = planned;
  const { absorptivity420 } = centralValues(defaultKit);
  const at = (timeS: number): number => {
    const row = Math.min(course.timeS.length - 1, Math.round(timeS));
    const y = Float64Array.from(course.states, (column) => column[row] ?? Number.NaN);
    return absorbance420PerCm(y, dissolvedKg(y) + (y[place.waterKg] ?? Number.NaN), absorptivity420);
  };
  const parts = course.deeds.filter(({ deed }) => deed.kind === 'alkali').map(({ timeS }) => timeS);
  const ends = (kind: string) => course.steps.find((step) => step.kind === kind)?.endS ?? Number.NaN;
  const [first = Number.NaN, last = Number.NaN] = [parts[0], parts.at(-1)];
  return {
    'before alkali': at(first - 1),
    '1.5 min after the last part': at(last + 90),
    '8 min after the last part': at(last + 480),
    'end of browning': at(ends('brown') - 1),
    'end of roast': at(ends('roast')),
  };
}

// 10 %: two digits are printed, and a spoonful more or less moves the end by some per cent.
test('the table of colour against practice in trust.md is that of the model, within 10 %', () => {
  const page = read('docs/explanation/trust.md');
  const measured = absorbances();
  console.log('A420 per cm:', measured);
  for (const [when, value] of Object.entries(measured)) {
    const row = page.split('\n').find((line) => line.startsWith(`| ${when} |`));
    const [, , anchor = Number.NaN, printed = Number.NaN, times = Number.NaN] = (row ?? '').split('|').map(Number);
    expect(Math.abs(printed / value - 1), `${when}: the page prints ${printed}, the model gives ${value}`).toBeLessThan(
      0.1,
    );
    expect(Math.abs(times / (value / anchor) - 1), `${when}: times the anchor`).toBeLessThan(0.15);
  }
});
