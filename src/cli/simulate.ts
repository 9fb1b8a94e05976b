/** `umberpan simulate`: a planned cook in a simulated pan, with the spread of what it may turn out like. */
import { type Command, Option } from 'commander';
import { forecastDraws, forecastSeed } from '../core/planning/forecast.ts';
import { quantity, readAll, type Texts, usually, wholeNumber } from './input.ts';
import { addInputs } from './options.ts';
import { write, writeJson } from './output.ts';
import { addPlanOptions } from './plan/planOptions.ts';
import { stopping } from './stop.ts';

export const runInputs = {
  draws: usually(wholeNumber('cooks drawn from what is uncertain', [2, 10_000]), String(forecastDraws)),
  seed: usually(
    wholeNumber('of the draws; the same seed gives the same cooks', [0, 2 ** 31 - 1]),
    String(forecastSeed),
  ),
  every: usually(quantity('duration', 'distance of the rows of the course', 's', [1, 3600]), '10s'),
};

export function register(program: Command): void {
  const command = program
    .command('simulate')
    .description(
      'cook a plan in a simulated pan: times, temperatures, water, acidity, colour, each with its 10-90 % band',
    );
  addPlanOptions(command);
  command
    .optionsGroup('The run:')
    .option('--plan <file>', 'a plan printed by `umberpan plan --json` (- for standard input)');
  addInputs(command, runInputs);
  command
    .optionsGroup('Output:')
    .addOption(new Option('--json', 'steps with their bands, and the course, as JSON').conflicts('csv'))
    .option('--csv', 'the course alone as CSV, a row each --every')
    .option('--no-color', 'no swatches; so does NO_COLOR')
    .addHelpText(
      'after',
      `
Colour is EBC of a 10 % w/w solution. The course is the cook of the most likely values; low and high are the 10 % and
90 % marks of the draws at the same time.
Exit codes: 0 done, 1 the kitchen can't do it, 2 misused, 7 refused because it breaks a limit of safety.

Examples:
  umberpan simulate --mass 400g --dose 5
  umberpan simulate --stove gas --power 2.5kW --pan 20cm --draws 256 --seed 7
  umberpan plan --json | umberpan simulate --plan - --csv --every 30s > course.csv`,
    )
    .action(stopping(simulate));
}

interface SimulateOptions extends Texts {
  readonly plan?: string;
  readonly json?: boolean;
  readonly csv?: boolean;
  readonly color: boolean;
}

async function simulate(options: SimulateOptions): Promise<void> {
  const { draws, seed, every } = readAll(runInputs, options);
  const [{ planFromFile, planFromOptions }, { rehearse }] = await Promise.all([
    import('./plan/makePlan.ts'),
    import('./simulate/rehearse.ts'),
  ]);
  const planning =
    options.plan === undefined ? await planFromOptions(options) : await planFromFile(options.plan, options);
  const rehearsed = rehearse(planning, { draws, seed, everyS: every });
  if (options.csv) write((await import('./simulate/courseRows.ts')).courseCsv(rehearsed));
  else if (options.json) writeJson((await import('./simulate/document.ts')).simulationDocument(rehearsed));
  else {
    const { simulationText } = await import('./simulate/text.ts');
    write(simulationText(rehearsed, options.color && (await import('./swatch.ts')).showsColour(process.stdout)));
  }
}
