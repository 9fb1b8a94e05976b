/** How an answer of the handbook is printed: for a person, and as a JSON document. */
import { pairs, wrapped } from '../table.ts';
import type { Answer, Entry } from './entry.ts';
import { shownUnit } from './ucum.ts';

export function answerDocument(entry: Entry, answer: Answer) {
  const { value, range, rangeMeans, note, further, unit = entry.unit } = answer;
  return {
    value,
    unit,
    range,
    source: answer.source ?? entry.source,
    rangeMeans,
    valid: entry.valid,
    mark: answer.mark ?? entry.mark,
    ...(note && { note }),
    ...further,
  };
}

export function answerText(entry: Entry, answer: Answer): string {
  const { value, range, rangeMeans, note, further = {}, unit = entry.unit } = answer;
  const shown = (each: number) => figure(each, range[1] - range[0]);
  const [low, high] = range.map(shown);
  const rows: [string, string][] = [
    [entry.name, withUnit(shown(value), unit)],
    ['range', rangeMeans === 'exact' ? 'exact' : `${withUnit(`${low} to ${high}`, unit)} (${rangeMeans})`],
    ...Object.entries(further).map(([name, each]): [string, string] => furtherRow(name, each)),
  ];
  const width = Math.max(...rows.map(([label]) => label.length), 6) + 2;
  const prose = (text: string) => wrapped(text, ' '.repeat(width));
  if (note) rows.push(['note', prose(note)]);
  rows.push(['valid', prose(entry.valid)]);
  rows.push(['source', prose(`${answer.source ?? entry.source} (${answer.mark ?? entry.mark})`)]);
  return pairs(rows, '');
}

function withUnit(text: string, unit: string): string {
  return `${text} ${shownUnit(unit)}`.trimEnd();
}

/** `flashed_g` is a name with its unit. */
function furtherRow(name: string, value: unknown): [string, string] {
  const [label, unit = ''] = name.split(/_(?=[^_]*$)/) as [string, string?];
  const text = [value].flat().map((each) => (typeof each === 'number' ? figure(each, 0) : String(each)));
  return [label.replaceAll('_', ' '), withUnit(text.join(', '), unit)];
}

/** As many digits as the range supports; without a range four. */
function figure(value: number, width: number): string {
  if (width === 0) return String(Math.abs(value) >= 1e4 ? Math.round(value) : Number(value.toPrecision(4)));
  const decimals = 1 - Math.floor(Math.log10(width));
  if (decimals > 6) return value.toPrecision(3);
  return value.toFixed(Math.max(0, decimals));
}
