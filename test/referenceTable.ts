/** Reads the published tables in `reference/` for tests: `#` lines are the source notes, then a header row, then quoted CSV. */
import { readFileSync } from 'node:fs';

/** Rows of `reference/NAME.csv`, one record of strings each, keyed by the header. */
export function referenceTable(name: string): Record<string, string>[] {
  const text = readFileSync(new URL(`../reference/${name}.csv`, import.meta.url), 'utf8');
  const lines = text.split(/\r?\n/).filter((line) => line.trim() !== '' && !line.startsWith('#'));
  const [header, ...rows] = lines.map(splitCells);
  if (header === undefined) throw new Error(`reference/${name}.csv has no header row`);
  return rows.map((cells, row) => {
    if (cells.length !== header.length) {
      throw new Error(`reference/${name}.csv, row ${row + 1}: ${cells.length} cells, expected ${header.length}`);
    }
    return Object.fromEntries(header.map((column, at) => [column, cells[at] ?? '']));
  });
}

/** Cells of one line; a cell in double quotes may hold commas, and `""` for a quote. */
function splitCells(line: string): string[] {
  const cells = line.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^,]*))/g);
  return Array.from(cells, ([, quoted, plain]) => quoted?.replaceAll('""', '"') ?? plain?.trim() ?? '');
}
