/** `umberpan compare`: two cooks beside each other, and where their difference comes from. */
import type { Command } from 'commander';
import { readAll, type Texts, usually, wholeNumber, word } from './input.ts';
import { addInputs } from './options.ts';
import { write, writeJson } from './output.ts';
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
      'lay two cooks beside each other, and tell which difference in the cook made which difference in the sugar',
    )
    .argument('<first>', 'file of a cook as the server exports it or `umberpan import` makes it')
    .argument('<second>', 'file of another')
    .option('--explain', 'cook both again by the model with their differences exchanged');
  addInputs(command, inputs);
  command
    .optionsGroup('Output:')
    .option('--json', 'the same as JSON')
    .addHelpText(
      'after',
      `
The shares are Shapley's values over alkali, hold time, temperature, water, malt extract, kit and batch size: they add up to the difference
of the two cooks as the model cooks them again. The twin's own figures stand beside them.
Exit codes: 0 done, 1 one of the logs tells no cook that could be cooked again, 2 misused.

Examples:
  umberpan compare march.ndjson april.ndjson
  umberpan compare march.ndjson april.ndjson --explain --of fruit --json`,
    )
    .action((_: string, __: string, options: object, self: Command) => stopping(compare)(options, self));
}

interface CompareOptions extends Texts {
  readonly explain?: boolean;
  readonly json?: boolean;
}

async function compare(options: CompareOptions, { args: [first = '', second = ''] }: Command): Promise<void> {
  const { of, draws } = readAll(inputs, options);
  const [{ told }, { compareDocument }, { compareText }] = await Promise.all([
    import('./compare/told.ts'),
    import('./compare/document.ts'),
    import('./compare/text.ts'),
  ]);
  const cooks = [told(first, 'first'), told(second, 'second')] as const;
  const explained = options.explain ? await explainedOf(cooks, draws) : undefined;
  if (options.json) writeJson(compareDocument(cooks, explained));
  else write(compareText(cooks, explained, of === 'colour' ? 'ebc' : of === 'mineral' ? 'alkali' : of));
}

type Told = Awaited<ReturnType<typeof import('./compare/told.ts')['told']>>;

async function explainedOf(cooks: readonly [Told, Told], draws: number) {
  const [{ asCooked }, { explain }] = await Promise.all([
    import('../core/book/asCooked.ts'),
    import('../core/book/explain.ts'),
  ]);
  const [first, second] = cooks.map(({ file, state }) => {
    const recipe = asCooked(state);
    if (recipe) return recipe;
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
