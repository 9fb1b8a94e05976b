/** `umberpan colour`: what a sugar's colour is on every scale, from a reading of a dilution or from a number on one scale, and how it looks. */
import type { Command } from 'commander';
import { noteRanges as ranges } from '../core/lot/note.ts';
import type { MeasuredColour } from './colour/measuredColour.ts';
import { mapped, number, optional, percent, quantity, readAll, type Texts, usually } from './input.ts';
import { addInputs } from './options.ts';
import { write, writeJson } from './output.ts';
import { Stop, stopping } from './stop.ts';

const grams = mapped(
  quantity('mass', 'sugar weighed into the dilution', 'g', limits(ranges.sugarG, 1e-3)),
  (kg) => 1000 * kg,
);
const millilitres = mapped(
  quantity('volume', 'that it was made up to', 'mL', limits(ranges.totalMl, 1e-6)),
  (m3) => 1e6 * m3,
);
const centimetres = mapped(quantity('length', 'width of the cell', 'cm', limits(ranges.pathCm, 1e-2)), (m) => 100 * m);

const inputs = {
  a430: optional(number('absorbance at 430 nm, less that of water', [0, 100])),
  a420: optional(number('absorbance at 420 nm, less that of water', [0, 100])),
  ebc: optional(number('EBC of a 10 % w/w solution', [0, 2500])),
  srm: optional(number('SRM of a 10 % w/w solution', [0, 1270])),
  icumsa: optional(number('ICUMSA colour of the dry sugar', [0, 1e6], 'IU')),
  sugar: optional(grams, 'a 10 % w/w solution'),
  madeUpTo: optional(millilitres),
  fold: usually(number('how many fold that was thinned again', ranges.fold), '1'),
  path: usually(centimetres, '1cm'),
  solids: usually(percent('dry solids of the sugar, per cent', [0.05, 1]), '100'),
} as const;

export function register(program: Command): void {
  const command = program
    .command('colour')
    .description("a sugar's colour on every scale, from a dilution's absorbance or from one scale");
  addInputs(command, inputs);
  command
    .option('--json', 'with 10, 50 and 90 % marks as JSON')
    .addHelpText(
      'after',
      `
Give one of --a430, --a420, --ebc, --srm and --icumsa. With --sugar and --made-up-to an absorbance is that of
the dilution, and its errors are reckoned; without them it is that of a 10 % w/w solution.

Exit codes: 0 done, 2 misused or outside the range.

Examples:
  umberpan colour --a430 0.42 --sugar 1g --made-up-to 100mL --solids 98
  umberpan colour --a420 0.61 --sugar 2g --made-up-to 100mL --fold 10
  umberpan colour --ebc 210 --json`,
    )
    .action(stopping(colour));
}

function limits([least, most]: readonly [number, number], scale: number): [number, number] {
  return [least * scale, most * scale];
}

export type ColourGiven = ReturnType<typeof readAll<typeof inputs>>;

async function colour(options: Texts & { readonly json?: boolean }): Promise<void> {
  const given = readAll(inputs, options);
  requireOne(given);
  const { measuredColour } = await import('./colour/measuredColour.ts');
  const measured = colourOf(given, measuredColour);
  if (options.json) writeJson({ format: 'umberpan-colour-1', ...measured });
  else write((await import('./colour/colourText.ts')).colourText(measured));
}

function requireOne(given: ColourGiven): void {
  const scales = (['a430', 'a420', 'ebc', 'srm', 'icumsa'] as const).filter((scale) => given[scale] !== undefined);
  const misuse = (field: string, trouble: string) =>
    new Stop({ kind: 'misused', field, message: `${field} ${trouble}` });
  if (scales.length !== 1) throw misuse('--a430', 'or one of --a420, --ebc, --srm and --icumsa is needed, and no more');
  if ((given.sugar === undefined) !== (given.madeUpTo === undefined)) {
    throw misuse(given.sugar === undefined ? '--sugar' : '--made-up-to', 'is missing: a dilution needs both');
  }
  const isAbsorbance = given.a430 !== undefined || given.a420 !== undefined;
  if (given.sugar !== undefined && !isAbsorbance) {
    throw misuse('--sugar', 'is of use with --a430 or --a420: the other scales name their own strength');
  }
}

function colourOf(given: ColourGiven, measure: (given: ColourGiven) => MeasuredColour): MeasuredColour {
  try {
    return measure(given);
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    const field = given.a420 === undefined ? '--a430' : '--a420';
    throw new Stop({ kind: 'outsideRange', field, message: `${field}: ${error.message}` });
  }
}
