/** What is asked of a table before it can be read: guessed from its head, and remembered for the next one with the same head. */
import type { Mapping } from '../../../../core/learn/imported/preview.ts';
import { readTable } from '../../../../core/learn/imported/rows.ts';
import { secondsOf, type TimeForm, timeForms } from '../../../../core/learn/imported/times.ts';
import type { ReadingUnit } from '../../../../core/log/bodies.ts';
import { keep, kept } from '../../../parts/browserStorage.ts';

export interface Answers {
  readonly columns: readonly string[];
  readonly time: string;
  readonly timeForm: TimeForm;
  readonly temperature: string;
  /** It has to be said: nothing in a table tells Celsius from Fahrenheit for sure. */
  readonly unit: ReadingUnit | '';
  readonly deed: string;
  /** When the pan was put on the ring, ms since 1970. */
  readonly beganMs: number;
}

const likely = (columns: readonly string[], pattern: RegExp): string =>
  columns.find((name) => pattern.test(name)) ?? '';

/** @param writtenMs when the file was written: a cook began before that */
export function answersFor(text: string, writtenMs: number): Answers {
  const { columns, rows } = readTable(text);
  const time = likely(columns, /time|second|minute|clock|zeit|^t$/i) || (columns[0] ?? '');
  const temperature = likely(columns, /temp|probe|celsius|fahrenheit|°|_cel|degf/i) || (columns[1] ?? '');
  const deed = likely(columns, /deed|note|done|what|event/i);
  const first = rows[0]?.cells[time] ?? '';
  const timeForm = timeForms.findLast((form) => secondsOf(first, form) !== undefined) ?? 's';
  const guessed: Answers = {
    ...{ columns, time, temperature, deed, unit: '' },
    timeForm: timeForm === 'min' ? 's' : timeForm,
    beganMs: timeForm === 'instant' ? (secondsOf(first, timeForm) ?? 0) * 1000 : writtenMs,
  };
  return { ...guessed, ...remembered(columns) };
}

/** The columns that are needed are there, and the unit was said. */
export function mappingOf({ time, timeForm, temperature, unit, deed }: Answers): Mapping | undefined {
  if (unit === '' || time === '' || temperature === '') return undefined;
  return { time, timeForm, temperature, unit, ...(deed !== '' && { deed }) };
}

const keyOf = (columns: readonly string[]) => `umberpan.import.${columns.join('|')}`;

export function rememberAnswers({ columns, beganMs: _, ...answers }: Answers): void {
  keep(keyOf(columns), JSON.stringify(answers));
}

function remembered(columns: readonly string[]): Partial<Answers> {
  try {
    const found: unknown = JSON.parse(kept(keyOf(columns)) ?? '{}');
    return typeof found === 'object' && found !== null ? (found as Partial<Answers>) : {};
  } catch {
    return {};
  }
}
