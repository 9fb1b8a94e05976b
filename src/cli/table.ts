/** Plain aligned columns with one thin rule under the heads. */

export interface Column {
  readonly head: string;
  readonly align: 'left' | 'right';
}

/** Escape sequences take no room on the screen. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: the escape character is what is looked for
const escapes = /\u001b\[[\d;]*m/g;

function padded(text: string, width: number, align: Column['align']): string {
  const blanks = ' '.repeat(Math.max(0, width - text.replace(escapes, '').length));
  return align === 'left' ? text + blanks : blanks + text;
}

/** @param rows cells as they are shown; a missing cell is left blank */
export function table(columns: readonly Column[], rows: readonly (readonly string[])[]): string {
  const widths = columns.map(({ head }, at) =>
    Math.max(head.length, ...rows.map((row) => (row[at] ?? '').replace(escapes, '').length)),
  );
  const line = (cells: readonly string[]) =>
    columns
      .map(({ align }, at) => padded(cells[at] ?? '', widths[at] ?? 0, align))
      .join('  ')
      .trimEnd();
  const rule = '─'.repeat(widths.reduce((sum, width) => sum + width + 2, -2));
  return [line(columns.map(({ head }) => head)), rule, ...rows.map(line)].join('\n');
}

/** Label and value lines, the values below each other. */
export function pairs(rows: readonly (readonly [string, string])[], indent = '  '): string {
  const width = Math.max(...rows.map(([label]) => label.length));
  return rows.map(([label, value]) => `${indent}${label.padEnd(width)}  ${value}`.trimEnd()).join('\n');
}

/** Text broken at blanks, continued under its beginning. */
export function wrapped(text: string, indent: string, width = 88): string {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    if (line && indent.length + line.length + 1 + word.length > width) {
      lines.push(line);
      line = word;
    } else line = line ? `${line} ${word}` : word;
  }
  return [...lines, line].join(`\n${indent}`);
}
