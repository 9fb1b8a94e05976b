/** `umberpan field`: every sugar that a kitchen can make over two levers of the cook. */
import { type Command, Option } from 'commander';
import { openAxis, usualAxis } from '../core/planning/field/levers.ts';
import { fieldInputs } from './field/fieldOptions.ts';
import { readAll, type Texts } from './input.ts';
import { addInputs } from './options.ts';
import { write, writeJson, writeTo } from './output.ts';
import { addPlanOptions } from './plan/planOptions.ts';
import { Stop, stopping } from './stop.ts';

export function register(program: Command): void {
  const command = program
    .command('field')
    .description('every sugar that your kitchen can make, over two levers of the cook');
  command.optionsGroup('The field:');
  addInputs(command, fieldInputs);
  addPlanOptions(command);
  command
    .optionsGroup('Output:')
    .addOption(
      new Option('--json', 'every sugar with its colour, taste, inversion and time, as JSON').conflicts(['svg', 'png']),
    )
    .addOption(
      new Option(
        '--svg <file>',
        'a drawing as on the Desk, with lines of equal taste (- for standard output)',
      ).conflicts('png'),
    )
    .option('--png <file>', 'the same as a picture (- for standard output)')
    .option('--no-color', 'no swatches; so does NO_COLOR')
    .addHelpText(
      'after',
      `
Each sugar is painted as its 10 % solution looks, 1 cm of it, where dark ones still differ; what a limit of safety
forbids is hatched, or an x. A drawing is grained by how unsure its colours are, and goes on a little past the limits.
Levers: dose, malt, invert-time, brown, brown-time, roast, roast-time.
Exit codes: 0 done, 1 no sugar of the field can be made or the file can't be written, 2 misused, 7 a limit of safety
forbids all of it.

Examples:
  umberpan field --route bright
  umberpan field --across dose --up roast-time --brown-time 20min --svg field.svg
  umberpan field --look drop --png field.png
  umberpan field --stove gas --pan 22cm --columns 24 --rows 16 --json`,
    )
    .action(stopping(field));
}

interface FieldOptions extends Texts {
  readonly json?: boolean;
  readonly svg?: string;
  readonly png?: string;
  readonly color: boolean;
}

const asText = { columns: 10, rows: 8 };
const asPicture = { columns: 48, rows: 32 };

async function field(options: FieldOptions): Promise<void> {
  const [{ refusedStop, whatIsAsked }, { fieldFrom }, { cookedField }] = await Promise.all([
    import('./plan/makePlan.ts'),
    import('./field/fieldOptions.ts'),
    import('./field/cooked.ts'),
  ]);
  const { look } = readAll(fieldInputs, options);
  const { request, kit } = await whatIsAsked(options);
  const drawn = options.svg !== undefined || options.png !== undefined;
  const spec = fieldFrom(options, request, options.json || drawn ? asPicture : asText, drawn ? openAxis : usualAxis);
  const cooked = cookedField(spec, kit);
  const spots = Array.from({ length: cooked.grid.rows }, (_, row) => row).flatMap((row) =>
    Array.from({ length: cooked.grid.columns }, (_, column) => cooked.grid.spot(column, row)),
  );
  if (spots.every((spot) => spot?.made === undefined)) {
    const refusals = spots.flatMap((spot) => spot?.refusals ?? []);
    if (refusals.length > 0) throw refusedStop(spots.find((spot) => spot?.refusals.length)?.refusals ?? []);
    throw new Stop({
      kind: 'failed',
      field: '--power',
      message: 'in this kit no cook of the field is done within 6 hours',
    });
  }
  if (options.json) writeJson((await import('./field/document.ts')).fieldDocument(cooked));
  else if (options.svg !== undefined)
    writeTo(options.svg, '--svg', (await import('./field/svg.ts')).fieldSvg(cooked, look));
  else if (options.png !== undefined) {
    const [{ fieldSvg }, { rasterised }] = await Promise.all([import('./field/svg.ts'), import('./field/raster.ts')]);
    writeTo(options.png, '--png', await rasterised(fieldSvg(cooked, look)));
  } else {
    const colour = options.color && (await import('./swatch.ts')).showsColour(process.stdout);
    write((await import('./field/fieldText.ts')).fieldText(cooked, colour ? look : undefined));
  }
}
