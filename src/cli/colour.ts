/** `umberpan colour`: what a sugar's colour is on every scale, from a reading or a picture of a dilution or from a number on one scale, and how it looks. */
import type { Command } from 'commander';
import { lightKinds } from '../core/colour/photo/viewer.ts';
import { paperPlaces, noteRanges as ranges } from '../core/lot/note.ts';
import type { MeasuredColour } from './colour/measuredColour.ts';
import { regionInput, regionsInput } from './colour/regionInput.ts';
import {
  type Input,
  mapped,
  number,
  optional,
  percent,
  quantity,
  readAll,
  type Texts,
  usually,
  word,
} from './input.ts';
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
const centimetres = mapped(
  quantity(
    'length',
    'width of the cell; of a picture, of the liquid in the line of sight',
    'cm',
    limits(ranges.pathCm, 1e-2),
  ),
  (m) => 100 * m,
);

const pictureFile: Input<string> = {
  placeholder: '<file>',
  meaning: 'a picture of the dilution and of white, JPEG or PNG',
  required: true,
  read: (text) => text,
};

const ofNumbers = {
  a430: optional(number('absorbance at 430 nm, less that of water', [0, 100])),
  a420: optional(number('absorbance at 420 nm, less that of water', [0, 100])),
  ebc: optional(number('EBC of a 10 % w/w solution', [0, 2500])),
  srm: optional(number('SRM of a 10 % w/w solution', [0, 1270])),
  icumsa: optional(number('ICUMSA colour of the dry sugar', [0, 1e6], 'IU')),
  sugar: optional(grams, 'a 10 % w/w solution'),
  madeUpTo: optional(millilitres),
  fold: usually(number('how many fold that was thinned again', ranges.fold), '1'),
  path: optional(centimetres, '1cm, but it has to be said of a picture'),
  solids: usually(percent('dry solids of the sugar, per cent', [0.05, 1]), '100'),
} as const;
const ofPicture = {
  photo: optional(pictureFile),
  sample: optional(regionInput('the dilution')),
  white: optional(regionsInput('white seen through water; one to either side by two of it')),
  paper: usually(
    word('where the white paper is: the picture is taken from the side, or from above', paperPlaces),
    'behind',
  ),
  light: usually(word('what it was taken in', lightKinds), 'daylight'),
} as const;

export function register(program: Command): void {
  const command = program
    .command('colour')
    .description("a sugar's colour on every scale, from a dilution's absorbance or picture, or from one scale");
  addInputs(command, ofNumbers);
  command.optionsGroup('From a picture:');
  addInputs(command, ofPicture);
  command
    .optionsGroup('Output:')
    .option('--json', 'with 10, 50 and 90 % marks as JSON')
    .addHelpText(
      'after',
      `
Give one of --a430, --a420, --ebc, --srm, --icumsa and --photo. With --sugar and --made-up-to an absorbance is that of
the dilution, and its errors are reckoned; without them it is that of a 10 % w/w solution.

A picture shows the dilution before white paper, beside a like glass of water or two, in one even light. It needs
--sugar, --made-up-to and --path. Where the dilution and the white are is found, and said; --sample and --white tell it
instead, in pixels as the file stores them, from the left and the top, with width and height; a note in the file to
turn the picture for viewing is not followed. No phone was taught here, so the range is that of any phone; a picture
that can't tell is refused, with the reason and the dilution to make.

Exit codes: 0 done, 2 misused, outside the range, or a picture that can't tell.

Examples:
  umberpan colour --a430 0.42 --sugar 1g --made-up-to 100mL --solids 98
  umberpan colour --a420 0.61 --sugar 2g --made-up-to 100mL --fold 10
  umberpan colour --ebc 210 --json
  umberpan colour --photo glass.jpg --sugar 1g --made-up-to 100mL --path 6cm
  umberpan colour --photo glass.jpg --sample 1500,900,400,500 --white 400,900,400,500 --white 2600,900,400,500 \\
    --sugar 1g --made-up-to 100mL --path 6cm`,
    )
    .action(stopping(colour));
}

function limits([least, most]: readonly [number, number], scale: number): [number, number] {
  return [least * scale, most * scale];
}

const inputs = { ...ofNumbers, ...ofPicture };
export type ColourGiven = ReturnType<typeof readAll<typeof inputs>>;

async function colour(options: Texts & { readonly json?: boolean }): Promise<void> {
  const given = readAll(inputs, options);
  requireOne(given);
  if (given.photo !== undefined) return photographed(given, options.json);
  const { measuredColour } = await import('./colour/measuredColour.ts');
  const measured = colourOf(given, measuredColour);
  if (options.json) writeJson({ format: 'umberpan-colour-1', ...measured });
  else write((await import('./colour/colourText.ts')).colourText(measured));
}

async function photographed(given: ColourGiven, json?: boolean): Promise<void> {
  const { photographedColour } = await import('./colour/photographedColour.ts');
  const { document, text } = await photographedColour(given);
  if (json) writeJson(document);
  else write(text());
}

const misuse = (field: string, trouble: string) => new Stop({ kind: 'misused', field, message: `${field} ${trouble}` });

function requireOne(given: ColourGiven): void {
  const { a430, a420, photo, sugar, madeUpTo } = given;
  const told = [a430, a420, given.ebc, given.srm, given.icumsa, photo].filter((each) => each !== undefined);
  if (told.length !== 1)
    throw misuse('--a430', 'or one of --a420, --ebc, --srm, --icumsa and --photo is needed, and no more');
  if ((sugar === undefined) !== (madeUpTo === undefined)) {
    throw misuse(sugar === undefined ? '--sugar' : '--made-up-to', 'is missing: a dilution needs both');
  }
  if (sugar !== undefined && a430 === undefined && a420 === undefined && photo === undefined) {
    throw misuse('--sugar', 'is of use with --a430, --a420 or --photo: the other scales name their own strength');
  }
  for (const region of ['sample', 'white'] as const)
    if (given[region] && photo === undefined) throw misuse(`--${region}`, 'is of use with --photo alone');
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
