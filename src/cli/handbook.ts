/** `umberpan handbook`: every property that the model uses, each answer with unit, range and source. */
import { type Command, Option } from 'commander';
import { answerDocument, answerText } from './handbook/answerText.ts';
import { entries, handbook } from './handbook/entries.ts';
import type { Entry } from './handbook/entry.ts';
import { namedParameters, parameterDocument, parameterText } from './handbook/parametersText.ts';
import { flagOf, type Texts } from './input.ts';
import { suggestion } from './nearest.ts';
import { addInputs } from './options.ts';
import { write, writeJson } from './output.ts';
import { Stop, stopping } from './stop.ts';
import { pairs } from './table.ts';

interface Json {
  readonly json?: boolean;
}

export function register(program: Command): void {
  const command = program
    .command('handbook')
    .description('look up a property: boiling points, water, glass, colour, reactions, spoonfuls')
    .usage('[property] [options]')
    .option('--json', 'the list of properties as JSON');
  for (const entry of entries) addProperty(command, entry);
  addList(command);
  addParameters(command);
  command
    .allowUnknownOption()
    .allowExcessArguments()
    .addHelpText(
      'after',
      `\nExit codes: 0 done, 2 misused or outside the range.\n\nExample:\n  umberpan handbook boiling-point ${entries[0]?.example}`,
    )
    .action(
      stopping((options: Json, { args: [typed] }) => {
        if (typed !== undefined) throw unknown(typed);
        list(options);
      }),
    );
}

function addProperty(command: Command, entry: Entry): void {
  const property = command
    .command(entry.name)
    .description(entry.meaning)
    .allowExcessArguments(false)
    .addHelpText('after', `\nKnown for ${entry.valid}.\n\nExample:\n  ${exampleOf(entry)}`);
  addInputs(property, entry.inputs);
  property.option('--json', 'value, UCUM unit, range, source and more as JSON').action(
    stopping(async (options: Texts & Json) => {
      const answer = await entry.answer(options);
      if (options.json) writeJson(answerDocument(entry, answer));
      else write(answerText(entry, answer));
    }),
  );
}

function addList(command: Command): void {
  command
    .command('list')
    .description('the properties, one line each')
    .allowExcessArguments(false)
    .option('--json', 'with units, inputs, validity and sources as JSON')
    .addHelpText('after', '\nExample:\n  umberpan handbook list --json')
    .action(stopping(list));
}

function list({ json }: Json): void {
  if (json) writeJson(entries.map(listed));
  else write(listText());
}

function listed(entry: Entry) {
  const { name, meaning, unit, valid, source, mark } = entry;
  const inputs = Object.entries(entry.inputs).map(([input, { meaning: what, required, usual, placeholder }]) => ({
    flag: flagOf(input),
    placeholder,
    meaning: what,
    required,
    ...(usual !== undefined && { usual }),
  }));
  return { name, meaning, unit, valid, source, mark, inputs, example: exampleOf(entry) };
}

function listText(): string {
  const blocks = handbook.map(({ theme, entries: ofTheme }) => {
    const lines = ofTheme.flatMap(({ name, meaning, example }) => [
      `  ${name}`,
      `      ${meaning}`,
      `      ${name} ${example}`,
    ]);
    return `${theme}\n${lines.join('\n')}`;
  });
  const further = pairs([
    ['list', 'this list (--json: with inputs, validity and sources)'],
    ['parameters', 'every uncertain number of the model with its spread and source'],
  ]);
  return `umberpan handbook PROPERTY; each has --help and --json\n\n${blocks.join('\n\n')}\n\nAlso\n${further}`;
}

function exampleOf({ name, example }: Entry): string {
  return `umberpan handbook ${name} ${example}`;
}

function addParameters(command: Command): void {
  command
    .command('parameters')
    .description('every uncertain number of the model with its spread and source')
    .allowExcessArguments(false)
    .addOption(
      new Option('--stove <kind>', 'whose efficiency and lag')
        .choices(['gas', 'coil', 'ceramic', 'induction'])
        .default('ceramic'),
    )
    .addOption(new Option('--thermometer <kind>', 'whose error').choices(['digital', 'dial']).default('digital'))
    .option('--json', 'as JSON')
    .addHelpText('after', '\nExample:\n  umberpan handbook parameters --stove gas --json')
    .action(
      stopping((options: Json & { stove: 'gas'; thermometer: 'dial' }) => {
        const named = namedParameters(options.stove, options.thermometer);
        if (options.json) writeJson(named.map(parameterDocument));
        else write(named.map(parameterText).join('\n'));
      }),
    );
}

function unknown(typed: string): Stop {
  const names = [...entries.map(({ name }) => name), 'list', 'parameters'];
  const what = typed.startsWith('-')
    ? 'is no option of handbook itself'
    : `is not in the handbook${suggestion(typed, names)}`;
  const message = `'${typed}' ${what}; \`umberpan handbook\` lists what is`;
  return new Stop({ kind: 'misused', field: 'property', value: typed, message });
}
