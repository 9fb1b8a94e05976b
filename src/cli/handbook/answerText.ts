/** How an answer of the handbook is printed: for a person, and as a JSON document. */
import { pairs, wrapped } from '../table.ts';
import type { Answer, Entry } from './entry.ts';
import { shownUnit } from './ucum.ts';

/** Names of further results that a person would not read as they stand. */
const words: Readonly<Record<string, string>> = {
  hueIndex: 'hue index',
  srm: 'SRM',
  icumsa: 'ICUMSA',
  srgb: 'sRGB',
  lab: 'CIELAB',
  sd: 'standard deviation',
  with_scission: 'by acid and heat',
  slope_only: 'by dilution alone',
  all_flashed: 'if all flashes',
  equivalents: 'alkali',
};

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
  const { value, range, note, unit = entry.unit } = answer;
  const rows: [string, string][] = [
    [entry.name, withUnit(figure(value, range[1] - range[0]), unit) + aside(value, unit)],
    ['range', rangeText(answer, unit)],
    ...furtherRows(answer),
  ];
  const width = Math.max(...rows.map(([label]) => label.length), 6) + 2;
  const prose = (text: string) => wrapped(text, ' '.repeat(width));
  if (note) rows.push(['note', prose(note)]);
  rows.push(['valid', prose(entry.valid)]);
  rows.push(['source', prose(marked(answer.source ?? entry.source, answer.mark ?? entry.mark))]);
  return pairs(rows, '');
}

/** The source with its mark, unless its last words say the mark already. */
function marked(source: string, mark: string): string {
  return source.endsWith(`${mark})`) ? source : `${source} (${mark})`;
}

function rangeText({ range, rangeMeans }: Answer, unit: string): string {
  if (rangeMeans === 'exact') return 'exact';
  const [low, high] = range.map((each) => figure(each, range[1] - range[0]));
  const reach = low === high ? 'narrower than these digits' : withUnit(`${low} to ${high}`, unit);
  return `${reach} (${rangeMeans})`;
}

/** Long times in hours or days besides. */
function aside(value: number, unit: string): string {
  if (unit !== 'min' || value < 180) return '';
  const hours = value / 60;
  return hours < 48 ? ` (${hours.toPrecision(2)} hours)` : ` (${Math.round(hours / 24)} days)`;
}

function withUnit(text: string, unit: string): string {
  return `${text} ${shownUnit(unit)}`.trimEnd();
}

/** `flashed_g` is a name with its unit. */
function furtherRows({ further = {}, inWords = {} }: Answer): [string, string][] {
  return Object.entries(further).flatMap(([name, value]): [string, string][] => {
    const [label = name, unit = ''] = name.split(/_(?=[^_]*$)/);
    const text = name in inWords ? inWords[name] : withUnit(figuresOf(value), unit);
    return text === undefined ? [] : [[words[label] ?? label.replaceAll('_', ' '), text]];
  });
}

function figuresOf(value: unknown): string {
  return [value]
    .flat()
    .map((each) => (typeof each === 'number' ? figure(each, 0) : String(each)))
    .join(', ');
}

/** As many digits as the range supports; without a range four. */
function figure(value: number, width: number): string {
  const decimals = width === 0 ? Number.POSITIVE_INFINITY : 1 - Math.floor(Math.log10(width));
  if (decimals > 6) return String(Math.abs(value) >= 1e4 ? Math.round(value) : Number(value.toPrecision(4)));
  if (decimals >= 0) return value.toFixed(decimals);
  const step = 10 ** -decimals;
  return String(Math.round(value / step) * step);
}
