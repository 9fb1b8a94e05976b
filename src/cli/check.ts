/** `umberpan check`: what a ten-minute check of thermometer, spoon or stove says, and the kit with it. */
import type { Command } from 'commander';
import { type CheckInput, checkInputs } from './check/inputs.ts';
import { readAll, type Texts } from './input.ts';
import { writeKit } from './learn/writeKit.ts';
import { addInputs } from './options.ts';
import { write, writeJson } from './output.ts';
import { Stop, stopping } from './stop.ts';

export function register(program: Command): void {
  const command = program
    .command('check')
    .description('what a check of thermometer, spoon or stove tells of a kit')
    .usage('<check> [options]')
    .addHelpText(
      'after',
      `
Nothing is changed unless --write names a file. Exit codes: 0 done, 2 misused, or too few readings.

Example:
  umberpan check boiling-water --kit kit.json --readings 100.4,100.6,100.5 --pressure 985hPa --write kit.json`,
    );
  for (const check of checkInputs) addCheck(command, check);
}

interface CheckOptions extends Texts {
  readonly kit: string;
  readonly write?: string;
  readonly json?: boolean;
}

function addCheck(command: Command, check: CheckInput): void {
  const one = command
    .command(check.name)
    .description(check.meaning)
    .allowExcessArguments(false)
    .requiredOption('--kit <file>', 'the kit, as JSON')
    .addHelpText('after', `\nExample:\n  umberpan check ${check.name} --kit kit.json ${check.example}`);
  addInputs(one, check.inputs);
  one
    .option('--write <file>', 'write the kit with what was measured to this file')
    .option('--json', 'what was found, the ranges before and after, and the kit as JSON')
    .action(stopping((options: CheckOptions) => run(check, options)));
}

async function run(check: CheckInput, options: CheckOptions): Promise<void> {
  const given = readAll(check.inputs, options);
  const [{ kitSchema }, { checked, readJson }, { checkKit }, { changesBy }, { checkDocument, checkText }] =
    await Promise.all([
      import('../api/kit.ts'),
      import('./plan/readDocument.ts'),
      import('../core/learn/checks/check.ts'),
      import('../core/learn/changes.ts'),
      import('./check/shown.ts'),
    ]);
  const kit = await checked(kitSchema, readJson(options.kit, '--kit'), '--kit');
  const { found, learned } = tried(() => checkKit(kit, check.entryOf(given, kit), new Date().toISOString()));
  const told = { found, changes: changesBy(kit, learned), kit: { ...kit, learned } };
  if (options.write !== undefined) writeKit(options.write, told.kit);
  if (options.json) writeJson(checkDocument(told));
  else write(checkText(told));
}

/** Too few readings, or readings that no check can give. */
function tried<T>(reckon: () => T): T {
  try {
    return reckon();
  } catch (error) {
    if (error instanceof RangeError) throw new Stop({ kind: 'misused', message: error.message });
    throw error;
  }
}
