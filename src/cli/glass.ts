/** `umberpan glass`: what sugars give a beer, how much of which it takes, or what sugar to plan for it. */
import type { Command } from 'commander';
import { restInputs, shownInputs, swapInputs, wishInputs } from './glass/glassOptions.ts';
import { sugarHelp } from './glass/sugarText.ts';
import { readAll, type Texts } from './input.ts';
import { addInputs } from './options.ts';
import { write, writeJson } from './output.ts';
import { Stop, stopping } from './stop.ts';

export function register(program: Command): void {
  const command = program
    .command('glass')
    .description('what sugars give a beer: gravity, colour, alcohol, minerals, cost; or how much of which it takes')
    .optionsGroup('The rest of the beer:');
  addInputs(command, restInputs);
  command
    .optionsGroup('The sugars:')
    .option('--sugar <fields>', 'a sugar, as below; several by several --sugar', gathered);
  command.optionsGroup('Wished instead (of the sugars without a mass; the first that does is taken, or two together):');
  addInputs(command, wishInputs);
  command
    .optionsGroup('Another sugar instead:')
    .option('--swap <fields>', 'this sugar for the one --sugar, as below, without a mass');
  addInputs(command, swapInputs);
  command.optionsGroup('Output:');
  addInputs(command, shownInputs);
  command
    .option('--json', 'every number with its 10, 50 and 90 % marks, and the formulas, as JSON')
    .option('--no-color', 'no swatches; so does NO_COLOR')
    .addHelpText('after', `\nFields of a sugar, parted by blanks or commas:\n${sugarHelp()}\n${notes}`)
    .action(stopping(glass));
}

const notes = `
All at 20 °C. The volume grows by what the sugars add. A bought sugar needs its solids (or points, degrees) and its
colour (ebc, srm or icumsa; of a 10 % w/w solution unless basis says otherwise). A lot knows both.
Exit codes: 0 done (an aim to plan is an answer), 1 no sugar does it, 2 misused.

Examples:
  umberpan glass --volume 20L --gravity 1.060 --ebc 12 --sugar 'mass=800g ebc=75 solids=98 inverted=90'
  umberpan glass --volume 5gal --plato 15 --srm 6 --units us --sugar 'lot=plum.json mass=1.5lb added=fermenter alkali=naoh dose=5'
  umberpan glass --volume 19L --gravity 1.062 --ebc 12 --to-ebc 45 --to-share 12 --sugar 'name=pale,ebc=10,solids=98' --sugar 'name=dark,ebc=250,solids=98'
  umberpan glass --volume 20L --gravity 1.05 --ebc 8 --sugar 'mass=500g ebc=90 solids=80' --swap 'lot=plum.json' --equal extract`;

function gathered(text: string, before: readonly string[] = []): readonly string[] {
  return [...before, text];
}

interface GlassOptions extends Texts {
  readonly sugar?: readonly string[];
  readonly swap?: string;
  readonly json?: boolean;
  readonly color: boolean;
}

async function glass(options: GlassOptions): Promise<void> {
  const rest = readAll(restInputs, options);
  const wishes = readAll(wishInputs, options);
  const { equal } = readAll(swapInputs, options);
  const { toVolume, path, boughtPrice, units } = readAll(shownInputs, options);
  const [{ restFrom, wishFrom }, { sugarFrom }, { answer }] = await Promise.all([
    import('./glass/glassOptions.ts'),
    import('./glass/sugarFrom.ts'),
    import('./glass/answers.ts'),
  ]);
  const wish = wishFrom(wishes);
  if (options.swap !== undefined && wish) {
    throw new Stop({
      kind: 'misused',
      field: '--swap',
      message: '--swap goes by the beer as it is: leave the wish out',
    });
  }
  if (options.swap === undefined && equal !== undefined) {
    throw new Stop({ kind: 'misused', field: '--equal', message: '--equal is of use with --swap alone' });
  }
  const answered = answer({
    glass: { rest: restFrom(rest), doses: [], kettleLossL: rest.kettleLoss, pathCm: path },
    sugars: await Promise.all((options.sugar ?? []).map((text) => sugarFrom(text, '--sugar'))),
    wish,
    mostShare: wishes.mostShare,
    swap: options.swap === undefined ? undefined : await sugarFrom(options.swap, '--swap'),
    equal: equal ?? 'colour',
    toVolumeL: toVolume,
    boughtPricePerKg: boughtPrice,
  });
  if (options.json) writeJson(answered.document);
  else {
    const { showsColour } = await import('./swatch.ts');
    write(answered.text({ units, coloured: options.color && showsColour(process.stdout) }));
  }
}
