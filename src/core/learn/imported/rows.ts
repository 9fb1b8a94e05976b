/** A table as text: comma-separated values with a head (RFC 4180; semicolons and tabs, too) or an object of JSON a line. */

export interface Row {
  /** Line of the text on which it begins, from 1. */
  readonly line: number;
  readonly cells: Readonly<Record<string, string>>;
}

export interface Table {
  readonly columns: readonly string[];
  readonly rows: readonly Row[];
  /** Lines that are no rows, with the reason. */
  readonly broken: readonly { readonly line: number; readonly reason: string }[];
}

export function readTable(text: string): Table {
  const plain = text.replace(/^\uFEFF/, '');
  return plain.trimStart().startsWith('{') ? objectRows(plain) : separatedRows(plain);
}

function objectRows(text: string): Table {
  const columns = new Set<string>();
  const rows: Row[] = [];
  const broken: { line: number; reason: string }[] = [];
  for (const [place, content] of text.split(/\r?\n/).entries()) {
    if (content.trim() === '') continue;
    const value = parsed(content);
    if (typeof value !== 'object' || value === null || Array.isArray(value)) {
      broken.push({ line: place + 1, reason: 'this is no object of JSON' });
      continue;
    }
    const cells = Object.fromEntries(Object.entries(value).map(([name, cell]) => [name, cellText(cell)]));
    for (const name of Object.keys(cells)) columns.add(name);
    rows.push({ line: place + 1, cells });
  }
  return { columns: [...columns], rows, broken };
}

/** What a cell says as text. A list or an object says nothing that a cell can say, and may not be turned into text at all. */
function cellText(cell: unknown): string {
  if (cell === null || cell === undefined) return '';
  if (typeof cell === 'object') return Array.isArray(cell) ? '[…]' : '{…}';
  return String(cell);
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

function separatedRows(text: string): Table {
  const head = text.slice(0, text.search(/\r?\n|$/));
  const separator = [',', ';', '\t'].toSorted((a, b) => head.split(b).length - head.split(a).length)[0];
  const { records, open } = recordsOf(text, separator);
  const [first, ...others] = records;
  const columns = (first?.cells ?? []).map((name) => name.trim());
  const broken: { line: number; reason: string }[] = [];
  const repeated = columns.find((name, i) => columns.indexOf(name) !== i);
  if (repeated !== undefined) broken.push({ line: 1, reason: `the column "${repeated}" is there twice` });
  if (open !== undefined) broken.push({ line: open, reason: 'a quotation mark is not closed' });
  const rows = others.flatMap(({ line, cells }): Row[] => {
    if (cells.length === 1 && cells[0].trim() === '') return [];
    if (cells.length !== columns.length) {
      broken.push({ line, reason: `there are ${cells.length} cells; the head has ${columns.length}` });
      return [];
    }
    return [{ line, cells: Object.fromEntries(columns.map((name, i) => [name, cells[i].trim()])) }];
  });
  return { columns, rows, broken };
}

interface Cells {
  readonly line: number;
  readonly cells: string[];
}

/** Cells may stand in quotation marks, with line breaks and doubled marks within. `open`: line of a mark that is never closed. */
function recordsOf(text: string, separator: string): { readonly records: Cells[]; readonly open: number | undefined } {
  const records: Cells[] = [];
  let cells: string[] = [];
  let cell = '';
  let quoted = false;
  let line = 1;
  let begunAt = 1;
  const endCell = () => {
    cells.push(cell);
    cell = '';
  };
  const endRecord = () => {
    endCell();
    records.push({ line: begunAt, cells });
    cells = [];
    begunAt = line + 1;
  };
  for (let i = 0; i < text.length; i++) {
    const letter = text[i];
    if (quoted) {
      if (letter !== '"') cell += letter;
      else if (text[i + 1] === '"') {
        cell += '"';
        i++;
      } else quoted = false;
    } else if (letter === '"' && cell === '') quoted = true;
    else if (letter === separator) endCell();
    else if (letter === '\n') endRecord();
    else if (letter !== '\r') cell += letter;
    if (letter === '\n') line++;
  }
  if (quoted) return { records, open: begunAt };
  if (cell !== '' || cells.length > 0) endRecord();
  return { records, open: undefined };
}
