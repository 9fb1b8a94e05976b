/** A cook as rows of a table, for other programs. What a person wrote may look like a formula to them, and is guarded. */
import type { AnyEntry } from '../log/corrections.ts';
import type { CookState } from '../log/fold.ts';
import { instantText } from '../log/instant.ts';
import type { Step } from '../pan/steps.ts';
import { entriesOf, entryText } from './entryText.ts';

export const tableColumns = ['time_s', 'time_utc', 'kind', 'temperature_Cel', 'quality', 'deed', 'text'] as const;
export type TableRow = readonly (string | number | null)[];

/** `deed` is written as the import of tables reads it, so that a table goes both ways. */
function tableRows(state: CookState): readonly TableRow[] {
  const steps = state.begun?.body.steps ?? [];
  return entriesOf(state).map((entry) => {
    const reading = entry.kind === 'reading' ? entry.body : undefined;
    return [
      Math.round(10 * entry.timeS) / 10,
      instantText(entry.trueMs),
      entry.kind,
      reading?.valueC ?? null,
      reading?.quality ?? null,
      deedWord(entry, steps),
      guarded(reading ? '' : entryText(entry, steps)),
    ];
  });
}

/** A spreadsheet takes a text that begins so for a formula (OWASP, CSV injection). Numbers have columns of their own and stay numbers. */
function guarded(text: string): string {
  return /^[=+\-@\t\r\0]/.test(text) ? `'${text}` : text;
}

function deedWord(entry: AnyEntry, steps: readonly Step[]): string | null {
  switch (entry.kind) {
    case 'heat':
      return `heat ${entry.body.notch}`;
    case 'water': {
      const { spoonfuls, waterKg } = entry.body;
      return spoonfuls > 0 ? `spoonfuls ${spoonfuls}` : `water ${Number((1000 * waterKg).toPrecision(6))} g`;
    }
    case 'alkali':
      return 'alkali';
    case 'step':
      return `step ${steps[entry.body.index]?.kind ?? ''}`;
    case 'poured':
      return 'poured';
    default:
      return null;
  }
}

/** RFC 4180: a head, lines that end in CR LF, and quotation marks where a cell has a comma, a mark or a line break. */
export function tableText(state: CookState): string {
  const cell = (value: string | number | null) => {
    const text = value === null ? '' : String(value);
    return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
  };
  return [tableColumns, ...tableRows(state)].map((row) => `${row.map(cell).join(',')}\r\n`).join('');
}
