/** Markdown of the generated reference. */

const cell = (text: string | number): string => String(text).replaceAll('|', '\\|').replaceAll('\n', ' ');

export function table(head: readonly string[], rows: readonly (readonly (string | number)[])[]): string {
  const line = (cells: readonly (string | number)[]) => `| ${cells.map(cell).join(' | ')} |`;
  return [line(head), line(head.map(() => '---')), ...rows.map(line)].join('\n');
}

export function page(title: string, lead: string, parts: readonly string[]): string {
  const note = 'This page is made from the program by `npm run reference`; a test compares the two.';
  return `---\nkind: reference\n---\n\n${[`# ${title}`, lead, note, ...parts].join('\n\n')}\n`;
}
