/** `umberpan learn`: what finished cooks teach of a kit, and the kit with it. */
import type { Command } from 'commander';
import { type Input, optional, readAll, type Texts } from './input.ts';
import { things } from './learn/things.ts';
import { writeKit } from './learn/writeKit.ts';
import { addInputs } from './options.ts';
import { write, writeJson } from './output.ts';
import { exitCodes, misused, stopping } from './stop.ts';

type Thing = (typeof things)[number];

const forget: Input<readonly Thing[]> = {
  placeholder: '<things>',
  meaning: `what is no longer the same, so that what was learned of it is forgotten first: ${things.join(', ')}, or all`,
  required: true,
  read: (text, flag) =>
    text === 'all'
      ? things
      : text
          .split(',')
          .map(
            (word) =>
              things.find((thing) => thing === word.trim()) ??
              misused(flag, word, 'is not known', [...things, 'all'].join(', ')),
          ),
};
const inputs = { forget: optional(forget) };

export function register(program: Command): void {
  const command = program
    .command('learn')
    .description('learn stove, pan, thermometer, spoon and sugar from the logs of finished cooks')
    .argument(
      '<logs...>',
      'files of cooks as the server exports them or `umberpan import` makes them, the oldest first',
    )
    .requiredOption('--kit <file>', 'the kit they were cooked with, as JSON')
    .option('--rehearsal', 'learn from rehearsals, too: to try it out, as no real stove is behind them');
  addInputs(command, inputs);
  command
    .optionsGroup('Output:')
    .option('--write <file>', 'write the kit with what was learned to this file')
    .option('--json', 'the same as JSON, with the kit')
    .addHelpText(
      'after',
      `
Each log is checked before anything is learned from it: another unit in the middle, a long gap, a probe out of the pan, two cooks
in one file, another kit. Then it is fitted, and refused when no kit that was likely tells it. A log is learned whole or not at all.
Exit codes: 0 learned from every log, 1 a log was left out (what was learned from the others still counts), 2 misused.

Examples:
  umberpan learn march.ndjson april.ndjson --kit kit.json --write kit.json
  umberpan learn new-pan.ndjson --kit kit.json --forget pan --json`,
    )
    .action((_: readonly string[], options: object, self: Command) => stopping(learn)(options, self));
}

interface LearnOptions extends Texts {
  readonly kit: string;
  readonly rehearsal?: boolean;
  readonly write?: string;
  readonly json?: boolean;
}

async function learn(options: LearnOptions, { args }: Command): Promise<void> {
  const { forget: forgotten } = readAll(inputs, options);
  const [{ kitSchema }, { checked, readJson }, { learnAll }, { forgetting }] = await Promise.all([
    import('../api/kit.ts'),
    import('./plan/readDocument.ts'),
    import('./learn/learnAll.ts'),
    import('../core/learn/forget.ts'),
  ]);
  const told = await checked(kitSchema, readJson(options.kit, '--kit'), '--kit');
  const all = forgotten && things.every((thing) => forgotten.includes(thing));
  const kit = forgotten ? forgetting(told, all ? undefined : forgotten) : told;
  const learned = learnAll(args, kit, options.rehearsal ?? false);
  if (options.write !== undefined) writeKit(options.write, learned.kit);
  if (options.json) writeJson((await import('./learn/document.ts')).learnDocument(learned));
  else write((await import('./learn/text.ts')).learnText(learned));
  if (learned.logs.some(({ outcome }) => outcome.kind !== 'learned')) process.exitCode = exitCodes.failed;
}
