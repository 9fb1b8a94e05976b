/** A table seen as a cook, before any of it is taken: what each row says, and every cell that says nothing. */
import type { Begun, Reading, ReadingUnit } from '../../log/bodies.ts';
import { readingAsReceived } from '../../log/readingAsReceived.ts';
import type { Deed } from '../../pan/steps.ts';
import { type CookSoFar, deedOf } from './deeds.ts';
import { readTable } from './rows.ts';
import { secondsOf, type TimeForm, timeExamples } from './times.ts';

/** Which column says what. */
export interface Mapping {
  readonly time: string;
  readonly timeForm: TimeForm;
  readonly temperature: string;
  readonly unit: ReadingUnit;
  readonly deed?: string;
}

export interface WrongCell {
  readonly line: number;
  readonly column: string | null;
  readonly value: string;
  readonly reason: string;
}

export interface Happening {
  readonly timeS: number;
  readonly reading?: Reading;
  readonly deed?: Deed;
}

export interface Preview {
  readonly columns: readonly string[];
  readonly rows: number;
  /** From the first row on, in the order of time. */
  readonly happenings: readonly Happening[];
  readonly readings: number;
  readonly lowestC: number | null;
  readonly highestC: number | null;
  readonly lastS: number;
  /** Nothing is taken as long as there are any. */
  readonly wrong: readonly WrongCell[];
}

const dayS = 86_400;

/** @param begun how the cook began, for its dial, spoon, alkali and steps */
export function previewTable(text: string, mapping: Mapping, begun: Begun): Preview {
  const { columns, rows, broken } = readTable(text);
  const wrong: WrongCell[] = broken.map(({ line, reason }) => ({ line, column: null, value: '', reason }));
  for (const column of [mapping.time, mapping.temperature, mapping.deed]) {
    if (column !== undefined && !columns.includes(column)) {
      wrong.push({ line: 1, column, value: '', reason: `is no column; there are ${columns.join(', ')}` });
    }
  }
  const isMapped = wrong.every(({ column }) => column === null);
  const happenings: Happening[] = [];
  let originS: number | undefined;
  let beforeS = Number.NEGATIVE_INFINITY;
  let soFar: CookSoFar = { begun, partsGiven: 0 };
  for (const { line, cells } of isMapped ? rows : []) {
    // A line of JSON need not have every column, and a column may be called like what every object has.
    const cell = (column: string) => (Object.hasOwn(cells, column) ? cells[column] : '');
    const fail = (column: string, reason: string) => wrong.push({ line, column, value: cell(column), reason });
    let atS = secondsOf(cell(mapping.time), mapping.timeForm);
    if (atS === undefined) {
      fail(mapping.time, `is no time; allowed: written like ${timeExamples[mapping.timeForm]}`);
      continue;
    }
    // A clock that goes on past midnight.
    if (mapping.timeForm === 'clock' && originS !== undefined && originS - atS > dayS / 2) atS += dayS;
    originS ??= atS;
    const timeS = atS - originS;
    if (timeS < beforeS) {
      fail(mapping.time, 'is earlier than the row before: there may be two cooks in it');
      continue;
    }
    if (!(timeS <= dayS)) {
      fail(mapping.time, 'is more than a day after the first row: there may be two cooks in it');
      continue;
    }
    beforeS = timeS;
    const shown = cell(mapping.temperature);
    if (shown !== '') {
      const reading = readingAsReceived('imported', shown, mapping.unit);
      if (reading.valueC === null)
        fail(mapping.temperature, `is no temperature in ${mapping.unit}; allowed: -40 to 400 C, or nothing`);
      else happenings.push({ timeS, reading });
    }
    const said = mapping.deed === undefined ? '' : cell(mapping.deed);
    for (const word of said.split(';').filter((each) => each.trim() !== '')) {
      const deed = deedOf(word, soFar);
      if (typeof deed === 'string') fail(mapping.deed ?? '', `is no deed; ${deed}`);
      else {
        if (deed.kind === 'alkali') soFar = { begun, partsGiven: soFar.partsGiven + 1 };
        happenings.push({ timeS, deed });
      }
    }
  }
  const values = happenings.flatMap(({ reading }) => reading?.valueC ?? []);
  const extreme = (of: (...all: number[]) => number) => (values.length > 0 ? values.reduce((a, b) => of(a, b)) : null);
  return {
    columns,
    rows: rows.length,
    happenings,
    readings: values.length,
    lowestC: extreme(Math.min),
    highestC: extreme(Math.max),
    lastS: Math.max(0, beforeS),
    wrong,
  };
}
