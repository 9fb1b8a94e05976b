/** `umberpan compare`: two cooks, or two plans, beside each other, and where their difference comes from. */
import { type Command, Option } from 'commander';
import type { ToldPair } from './compare/told.ts';
import { readAll, type Texts, usually, wholeNumber, word } from './input.ts';
import { addInputs } from './options.ts';
import { write, writeJson, writeTo } from './output.ts';
import { Stop, stopping } from './stop.ts';

const inputs = {
  of: usually(
    word('what is explained in words', ['colour', 'inverted', 'fruit', 'toffee', 'roast', 'burnt', 'mineral']),
    'colour',
  ),
  draws: usually(wholeNumber('of the model’s uncertain numbers, for the ranges', [0, 500]), '24'),
};

export function register(program: Command): void {
  const command = program
    .command('compare')
    .description(
      'lay two cooks, or two plans, beside each other, and tell which difference in them makes which in the sugar',
    )
    .argument('<first>', 'file of a cook as the server exports it or `umberpan import` makes it; or of a plan')
    .argument('<second>', 'file of another of its kind')
    .option('--explain', 'cook both again by the model with their differences exchanged');
  addInputs(command, inputs);
  command
    .optionsGroup('Output:')
    .addOption(new Option('--json', 'the same as JSON').conflicts('svg'))
    .option('--svg <file>', 'two plans drawn on one pan line (- for standard output)')
    .addHelpText(
      'after',
      `
The shares are Shapley's values over alkali, hold time, temperature, water, malt extract, kit and batch size: they add up to the difference
of the two as the model cooks them again. Beside those of two cooks stand the twin's own figures.
A plan is what umberpan plan --json prints, or the report of a cook, which carries its plan.
Exit codes: 0 done, 1 one of the logs tells no cook that could be cooked again or the file can't be written, 2 misused,
7 a plan breaks a limit of safety.

Examples:
  umberpan compare march.ndjson april.ndjson
  umberpan compare march.ndjson april.ndjson --explain --of fruit --json
  umberpan compare plan.json darker.json --explain
  umberpan compare plan.json darker.json --svg both.svg`,
    )
    .action((_: string, __: string, options: object, self: Command) => stopping(compare)(options, self));
}

interface CompareOptions extends Texts {
  readonly explain?: boolean;
  readonly json?: boolean;
  readonly svg?: string;
}

async function compare(options: CompareOptions, { args: [first = '', second = ''] }: Command): Promise<void> {
  const { of, draws } = readAll(inputs, options);
  const { toldPair } = await import('./compare/told.ts');
  const pair = await toldPair(first, second);
  if (options.svg !== undefined) return draw(pair, options.svg);
  const [{ compareDocument }, { compareText }] = await Promise.all([
    import('./compare/document.ts'),
    import('./compare/text.ts'),
  ]);
  const explained = options.explain ? await explainedOf(pair, draws) : undefined;
  if (options.json) writeJson(compareDocument(pair, explained));
  else write(compareText(pair, explained, of === 'colour' ? 'ebc' : of === 'mineral' ? 'alkali' : of));
}

async function draw([first, second]: ToldPair, file: string): Promise<void> {
  if (first.kind === 'cook' || second.kind === 'cook') {
    const message = '--svg draws two plans; cooks are laid over one another in the Book';
    throw new Stop({ kind: 'misused', field: '--svg', message });
  }
  const { plansSvg } = await import('../core/book/report/plansSvg.ts');
  const { centralValues } = await import('../core/pan/model.ts');
  const laid = ({ name, planning: { course, kit } }: typeof first) => ({ name, course, values: centralValues(kit) });
  writeTo(file, '--svg', plansSvg([laid(first), laid(second)]));
}

async function explainedOf(pair: ToldPair, draws: number) {
  const { explain } = await import('../core/book/explain.ts');
  const [first, second] = pair.map(({ file, recipe }) => {
    const found = recipe();
    if (found) return found;
    throw new Stop({ kind: 'failed', field: file, message: `${file}: its log tells too little to cook it again` });
  });
  const explained = explain(first, second, { draws });
  if (explained) return explained;
  throw new Stop({
    kind: 'failed',
    field: '--explain',
    message: 'the model does not come to the end of one of the cooks',
  });
}
