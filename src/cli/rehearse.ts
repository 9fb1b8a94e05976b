/** `umberpan rehearse`: a planned cook on a simulated pan with hidden properties, by keys or by doing what is advised. */
import type { Command } from 'commander';
import { begunOf } from '../core/planning/begunOf.ts';
import { planOrFile } from './cook/planOrFile.ts';
import { type Input, number, readAll, type Texts, usually, wholeNumber } from './input.ts';
import { addInputs } from './options.ts';
import { write, writeJson } from './output.ts';
import { addPlanOptions } from './plan/planOptions.ts';
import { keyWords } from './rehearse/keyWords.ts';
import { screenOn } from './rehearse/screen.ts';
import { exitCodes, Stop, stopping } from './stop.ts';
import { wrapped } from './table.ts';

const pace = number('', [1, 600]);
const speed: Input<number> = {
  ...pace,
  placeholder: '<number|max>',
  meaning: 'cook seconds for each second, 1 to 600; max (with --follow-advice): as fast as it goes',
  read: (text, flag) => (text === 'max' ? Number.POSITIVE_INFINITY : pace.read(text, flag)),
};

const runInputs = {
  speed: usually(speed, '60'),
  seed: usually(wholeNumber('of what is hidden; the same seed hides the same', [0, 2 ** 31 - 1]), '1'),
  members: usually(wholeNumber('simulated pans that the twin is made of', [16, 4096]), '128'),
};

/** A cook takes an hour or two; who takes longer than this has stopped cooking. */
const longestS = 6 * 3600;

export function register(program: Command): void {
  const command = program
    .command('rehearse')
    .description('rehearse a plan on a simulated pan with hidden properties, led by keys or by what is advised');
  addPlanOptions(command);
  command
    .optionsGroup('The rehearsal:')
    .option('--plan <file>', 'a plan printed by `umberpan plan --json`')
    .option('--follow-advice', 'what is advised is done by itself, 25 s after it is said')
    .option('--surprises', 'the thermometer fails once or twice in the holds, so that alarms can be practised');
  addInputs(command, runInputs);
  command
    .optionsGroup('Output:')
    .option('--json', 'the summary as JSON')
    .addHelpText(
      'after',
      `
Keys: ${wrapped(keyWords, '      ', 100)}.
While advice waits to be done, or an alarm to be seen, time goes at 1. At the end it shows what was hidden against what the
twin believed, and which surprises there were.
Exit codes: 0 done, 1 the kitchen can't do it or the pour is not reached in 6 hours, 2 misused, 7 refused because it breaks
a limit of safety.

Examples:
  umberpan rehearse --mass 400g --dose 5
  umberpan rehearse --stove gas --power 2.5kW --seed 7 --speed 20 --surprises
  umberpan rehearse --follow-advice --speed max --json`,
    )
    .action(stopping(rehearse));
}

interface RehearseOptions extends Texts {
  readonly followAdvice?: boolean;
  readonly surprises?: boolean;
  readonly json?: boolean;
}

async function rehearse(options: RehearseOptions): Promise<void> {
  const run = readAll(runInputs, options);
  if (!options.followAdvice) refuseWithoutHands(run.speed);
  const planning = await planOrFile(options, 'keys');
  const [{ createRehearsal }, { cook }, { endedOf }] = await Promise.all([
    import('../core/advice/rehearsal.ts'),
    import('./rehearse/cook.ts'),
    import('./rehearse/ended.ts'),
  ]);
  const { steps } = planning.plan;
  const { seed, members } = run;
  const surprises = options.surprises ? { surprises: true } : {};
  const how = { seed, speed: Math.min(60, run.speed), ...surprises };
  const begun = begunOf(planning.plan, planning.kit, { mode: 'rehearsal', rehearsal: how, planId: null });
  const rehearsal = createRehearsal({ prepared: planning.prepared, begun, members });
  const pacing = { screen: screenFor(options), speed: run.speed, longestS };
  const left = await cook({ rehearsal, kit: planning.kit, steps }, pacing, options.followAdvice ?? false);
  const ended = endedOf(planning, rehearsal, { seed, members, left });
  if (options.json) writeJson((await import('./rehearse/document.ts')).rehearsalDocument(ended));
  else write(`\n${(await import('./rehearse/revealText.ts')).revealText(ended)}`);
  if (ended.ending === 'out of time') process.exitCode = exitCodes.failed;
}

/** Without a terminal there are no keys, and nobody's hands keep up with `max`. */
function refuseWithoutHands(speed: number): void {
  const field = '--follow-advice';
  if (speed === Number.POSITIVE_INFINITY) {
    throw new Stop({
      kind: 'misused',
      field: '--speed',
      value: 'max',
      message: `--speed max is of use with ${field} alone`,
    });
  }
  if (process.stdin.isTTY) return;
  throw new Stop({
    kind: 'misused',
    field,
    message: `standard input is no terminal, so there are no keys: add ${field}`,
  });
}

/** Standard output is for the summary alone when that is JSON. */
function screenFor({ json = false }: RehearseOptions) {
  return screenOn(json ? process.stderr : process.stdout, { quiet: json });
}
