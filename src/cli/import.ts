/** `umberpan import`: a table of times, temperatures and deeds as the file of a cook. */
import { createHash, randomBytes, randomUUID } from 'node:crypto';
import { readFileSync } from 'node:fs';
import type { Command } from 'commander';
import { type Input, optional, readAll, type Texts, usually, word } from './input.ts';
import { addInputs } from './options.ts';
import { write, writeJson } from './output.ts';
import { addPlanOptions } from './plan/planOptions.ts';
import { Stop, stopping } from './stop.ts';

const column = (meaning: string): Input<string> => ({
  placeholder: '<column>',
  meaning,
  required: true,
  read: (text) => text,
});

const inputs = {
  time: column('column of the times'),
  timeForm: usually(
    word('how they are written: seconds, minutes, 18:30:05, or 2031-05-09T18:30:05Z', ['s', 'min', 'clock', 'instant']),
    's',
  ),
  temperature: column('column of the temperatures'),
  unit: word('which they are in; it has to be said', ['C', 'F', 'K']),
  deed: optional(column('column of what was done: heat 4, spoonfuls 2, water 30 g, alkali, step brown, poured')),
};
const ucum = { C: 'Cel', F: '[degF]', K: 'K' } as const;

export function register(program: Command): void {
  const command = program
    .command('import')
    .description('make the file of a cook of a table (CSV or an object of JSON a line), for `learn` and the server')
    .argument('<table>', 'the file, or - for standard input');
  addInputs(command, inputs);
  addPlanOptions(command);
  command
    .option('--plan <file>', 'the plan that was cooked, as `umberpan plan --json` prints it')
    .optionsGroup('Output:')
    .option('--preview', 'only tell what would be taken')
    .option('--json', 'what is told, and what goes wrong, as JSON')
    .addHelpText(
      'after',
      `
The table begins when the filled pan was put on the ring. A cell that says nothing is told with its line, and nothing is written then.
Exit codes: 0 done, 1 the plan can't be made, 2 misused, or the table has a cell that says nothing.

Examples:
  umberpan import april.csv --plan plan.json --time Seconds --temperature Probe --unit C --deed Note --preview
  umberpan import april.csv --plan plan.json --time Seconds --temperature Probe --unit C --deed Note > april.ndjson`,
    )
    .action((_: string, options: object, self: Command) => stopping(importTable)(options, self));
}

interface ImportOptions extends Texts {
  readonly preview?: boolean;
  readonly json?: boolean;
}

async function importTable(options: ImportOptions, { args: [file = '-'] }: Command): Promise<void> {
  const { time, timeForm, temperature, unit, deed } = readAll(inputs, options);
  const { planOrFile } = await import('./cook/planOrFile.ts');
  const { plan, kit } = await planOrFile(options, 'the table');
  const [{ begunOf }, { previewTable }, { eventsOf }, { writeCookFile }] = await Promise.all([
    import('../core/planning/begunOf.ts'),
    import('../core/learn/imported/preview.ts'),
    import('../core/learn/imported/events.ts'),
    import('../core/log/cookFile.ts'),
  ]);
  const begun = begunOf(plan, kit, { mode: 'live', rehearsal: null, planId: null });
  const mapping = { time, timeForm, temperature, unit: ucum[unit], ...(deed !== undefined && { deed }) };
  const preview = previewTable(tableIn(file), mapping, begun);
  const { previewText } = await import('./import/previewText.ts');
  if (preview.wrong.length > 0) {
    throw new Stop({ kind: 'misused', field: 'table', value: file, message: previewText(preview) });
  }
  if (options.preview) {
    const { happenings, ...told } = preview;
    if (options.json) writeJson({ ...told, deeds: happenings.filter((each) => each.deed) });
    else write(previewText(preview));
    return;
  }
  const cook = randomUUID();
  const importing = { cook, device: randomUUID(), tz: 'UTC', startMs: Date.now(), random: () => randomBytes(10) };
  const sha256 = (text: string) => createHash('sha256').update(text).digest('hex');
  write(writeCookFile(cook, eventsOf(preview, begun, importing), sha256));
}

function tableIn(file: string): string {
  try {
    return readFileSync(file === '-' ? 0 : file, 'utf8');
  } catch (error) {
    const trouble = (error as NodeJS.ErrnoException).code ?? error;
    throw new Stop({ kind: 'misused', field: 'table', value: file, message: `${file}: can't be read (${trouble})` });
  }
}
