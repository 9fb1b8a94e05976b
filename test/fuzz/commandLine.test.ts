import { existsSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Command, CommanderError, type Option } from 'commander';
import fc from 'fast-check';
import { expect, it, onTestFinished, vi } from 'vitest';
import { exitCodeFor, umberpanProgram } from '../../src/cli/program.ts';
import { defaultKit } from '../../src/core/pan/kit.ts';
import { scratchFolder } from '../testServer.ts';
import { casesOf, everyCase, tallyOf, timeFor } from './cases.ts';
import { anyText, oddValue, spoilt, spoiltText } from './spoilt.ts';

const cases = casesOf(1500);

it(
  'any command line ends with an exit code, and says what it refuses; then it has written no file',
  async () => {
    const tally = tallyOf('command lines');
    const folder = scratchFolder();
    const files = { kit: join(folder, 'kit.json'), out: join(folder, 'out'), data: join(folder, 'data') };
    vi.stubEnv('UMBERPAN_DATA', files.data);
    onTestFinished(() => void vi.unstubAllEnvs());
    const program = umberpanProgram();
    await everyCase(fc.tuple(linesOf(program, files), documents), cases, async ([args, document]) => {
      writeFileSync(files.kit, document);
      rmSync(files.out, { force: true });
      const { code, stderr } = await ended(program, args);
      tally.count(`with ${code}`);
      expect([0, 1, 2, 7]).toContain(code);
      if (code === 0) return;
      expect(stderr).toMatch(/\w/);
      expect(stderr).not.toMatch(/^\s+at /m);
      expect(existsSync(files.out)).toBe(false);
      const names = args.some((each) => each !== '' && stderr.includes(each.slice(0, 8)));
      if (!names) expect(stderr).toMatch(/--\w|unknown|missing|line \d|allowed/);
    });
    tally.tell();
  },
  timeFor(cases, 20),
);

/** Runs it within this process. What a command does not expect is no way to end, though `main.ts` would give it a code, too. */
async function ended(program: Command, args: readonly string[]) {
  let stderr = '';
  const hear = (text: unknown) => {
    stderr += `${text}\n`;
    return true;
  };
  const spies = [
    vi.spyOn(process.stdout, 'write').mockImplementation(() => true),
    vi.spyOn(process.stderr, 'write').mockImplementation(hear as never),
    vi.spyOn(console, 'error').mockImplementation(hear),
  ];
  process.exitCode = undefined;
  try {
    await program.parseAsync(args, { from: 'user' });
    return { code: Number(process.exitCode ?? 0), stderr };
  } catch (error) {
    if (!(error instanceof CommanderError)) throw error;
    return { code: exitCodeFor(error), stderr };
  } finally {
    process.exitCode = undefined;
    for (const spy of spies) spy.mockRestore();
  }
}

const kit = fc.constant(defaultKit);
const json = (values: fc.Arbitrary<unknown>) => values.map((value) => JSON.stringify(value) ?? '');
/** What the file of a kit holds. */
const documents = fc.oneof(json(kit), json(spoilt(kit)), json(spoilt(kit)), spoiltText(json(kit)), json(oddValue));

/** Commands that reckon for long, talk with a person, or serve: these are given something that is refused in any case. */
const refusedAlways = [
  'plan',
  'field',
  'simulate',
  'rehearse',
  'follow',
  'import',
  'learn',
  'compare',
  'serve',
  'trust',
  'doctor',
  'export',
];
/** Options whose text is taken as it is. */
const free = /<(text|name|file|folder|column|address|things|kind)>/;
const nonsense = '\u2603';

interface Files {
  readonly kit: string;
  readonly out: string;
  readonly data: string;
}

function linesOf(program: Command, files: Files): fc.Arbitrary<string[]> {
  return fc.oneof(
    { weight: 30, arbitrary: fc.constantFrom(...leaves(program)).chain((command) => lineOf(command, files)) },
    { weight: 1, arbitrary: fc.array(oddText, { maxLength: 3 }).filter(([first]) => first !== 'trust') },
  );
}

function leaves(command: Command): Command[] {
  return command.commands.length === 0 ? [command] : command.commands.flatMap(leaves);
}

function lineOf(command: Command, files: Files): fc.Arbitrary<string[]> {
  const options = command.options.filter(({ long }) => long !== '--help');
  const given = fc.subarray(options).chain((some) => fc.tuple(...some.map((option) => optionOf(option, files))));
  const paths = fc.array(fc.constantFrom(files.kit, join(files.data, 'nowhere'), files.data), {
    minLength: command.registeredArguments.length > 0 ? 1 : 0,
    maxLength: 2,
  });
  const stray = fc.oneof({ weight: 12, arbitrary: fc.constant<string[]>([]) }, fc.array(oddText, { maxLength: 2 }));
  return fc.tuple(given, paths, stray).map(([texts, where, others]) => {
    const line = [...pathTo(command), ...where, ...others, ...texts.flat()];
    return refusedAlways.includes(pathTo(command)[0] ?? '') ? [...line, ...refused(options)] : line;
  });
}

function refused(options: readonly Option[]): string[] {
  const checked = options.find(({ flags }) => /</.test(flags) && !free.test(flags));
  return checked?.long ? [checked.long, nonsense] : [`--${nonsense}`];
}

function pathTo(command: Command): string[] {
  return command.parent ? [...pathTo(command.parent), command.name()] : [];
}

function optionOf({ long, flags }: Option, files: Files): fc.Arbitrary<string[]> {
  const flag = long ?? '';
  if (!flags.includes('<')) return fc.constant([flag]);
  if (['--write', '--svg', '--png'].includes(flag)) return fc.constant([flag, files.out]);
  if (flag === '--data') return fc.constant([flag, files.data]);
  if (flags.includes('<file>')) return fc.constant([flag, files.kit]);
  const placeholder = /<(.*)>/.exec(flags)?.[1] ?? '';
  const usual = examples[placeholder] ?? placeholder.split('|');
  const value = fc.oneof(
    { weight: 6, arbitrary: fc.constantFrom(...usual) },
    spoiltText(fc.constantFrom(...usual)),
    oddText,
  );
  return value.map((text) => (text === '-' ? [flag] : [flag, text]));
}

const examples: Readonly<Record<string, readonly string[]>> = {
  mass: ['500g', '1.1lb', '0.4 kg', '17 oz'],
  volume: ['20L', '5mL', '1tsp', '5 gal', '330ml'],
  temperature: ['135C', '275F', '20C', '400K', '8C'],
  duration: ['25min', '1h20min', '90s'],
  length: ['1cm', '18 cm', '300m', '7in'],
  pressure: ['985hPa', '1 bar', '30inHg'],
  power: ['1800W', '2kW'],
  percent: ['20', '80 %', '0.5', '99'],
  number: ['1', '0.3', '5.2', '12', '200', '1.06', '1,5'],
  list: ['100.4,100.6,100.5', '20s:31.5,40s:36', '4.6g,5.1g,4.4g', '0s:6,420s:0'],
  fields: ['mass=100g,ebc=200', 'kind=lot', 'name=candi,mass=0.3kg'],
  word: ['sucrose', 'invert', 'glass', 'mass', 'k1'],
};

const oddText = fc.oneof(
  fc.constantFrom(
    '',
    ' ',
    '--',
    '--json',
    '--help',
    '-x',
    'help',
    '\u0000',
    '__proto__',
    'constructor',
    'NaN',
    '1e999',
  ),
  fc.constantFrom('9'.repeat(300), 'x'.repeat(5000), '½', '--mass', '-1', '%', '1/0', '\u2212', '=', ',', ':'),
  anyText(),
);
