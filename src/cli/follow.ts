/** `umberpan follow`: the twin of a live cook over standard input and output, a JSON object a line. */
import { createInterface } from 'node:readline';
import { setImmediate as breath } from 'node:timers/promises';
import type { Command } from 'commander';
import { planOrFile } from './cook/planOrFile.ts';
import { lineFormats } from './follow/lineFormats.ts';
import { readAll, type Texts, usually, wholeNumber } from './input.ts';
import { addInputs } from './options.ts';
import { write } from './output.ts';
import { addPlanOptions } from './plan/planOptions.ts';
import { exitCodes, Stop, stopping } from './stop.ts';

const twinInputs = {
  members: usually(wholeNumber('simulated pans that the twin is made of', [16, 4096]), '256'),
  seed: usually(wholeNumber('of the twin; the same seed and lines give the same estimates', [0, 2 ** 31 - 1]), '1'),
};

export function register(program: Command): void {
  const command = program
    .command('follow')
    .description('follow a cook: a reading or a deed a line in, what the twin believes and advises a line out');
  addPlanOptions(command);
  command.optionsGroup('The twin:').option('--plan <file>', 'a plan printed by `umberpan plan --json`');
  addInputs(command, twinInputs);
  command.addHelpText('after', lineFormats).action(stopping(follow));
}

async function follow(options: Texts): Promise<void> {
  const { members, seed } = readAll(twinInputs, options);
  const planning = await planOrFile(options, 'readings and deeds');
  const [{ createFollower }, { readLine }, { estimateOf }] = await Promise.all([
    import('./follow/follower.ts'),
    import('./follow/line.ts'),
    import('./follow/estimate.ts'),
  ]);
  const follower = createFollower(planning, { members, seed });
  const cooked = { kit: planning.kit, steps: planning.plan.steps };
  if (process.stdin.isTTY) console.error('Reading lines of JSON; --help says which. Ctrl-D ends.');
  let number = 0;
  for await (const text of createInterface({ input: process.stdin, crlfDelay: Number.POSITIVE_INFINITY })) {
    number++;
    if (text.trim() === '') continue;
    try {
      const taken = follower.take(readLine(text, cooked));
      write(JSON.stringify(estimateOf(follower, taken, number, planning)));
    } catch (error) {
      tellBadLine(error, number);
    }
    // Lines that wait already would otherwise keep a closed pipe from being noticed.
    await breath();
  }
}

function tellBadLine(error: unknown, line: number): void {
  if (!(error instanceof Stop)) throw error;
  const { field, value, allowed, message } = error.problem;
  console.error(JSON.stringify({ error: { line, field, value, allowed, message } }));
  process.exitCode = exitCodes.misused;
}
