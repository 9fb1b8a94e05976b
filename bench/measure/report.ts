/** Results of a bench as Markdown: printed, and kept in `bench/results`. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { machine, type Timing } from './timing.ts';

/** Median and least, ms. */
export const ms = ({ medianMs, leastMs }: Timing): string => `${medianMs.toFixed(2)} (${leastMs.toFixed(2)})`;
export const ratio = (value: number): string => (value >= 10 ? value.toFixed(0) : value.toFixed(2));
export const share = (value: number): string => value.toExponential(1);

export function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]) => `| ${cells.join(' | ')} |`;
  return [line(head), line(head.map(() => '---')), ...rows.map(line)].join('\n');
}

/** @param name of the bench, as on the command line */
export function publish(name: string, title: string, sections: readonly string[]): void {
  const head = `Run by \`npm run bench ${name}\`. ${machine()}. Times are median (least) of many runs in ms; ratios are of the least.`;
  const text = `${[`# ${title}`, head, ...sections].join('\n\n')}\n`;
  const folder = join(process.cwd(), 'bench', 'results');
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, `${name}.md`), text);
  console.log(text);
}
