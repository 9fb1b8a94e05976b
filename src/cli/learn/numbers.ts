/** What a cook or a check changed, as a table and in a document. */
import type { Change } from '../../core/learn/changes.ts';
import { figureOf, numberWords, tellingWords } from '../../core/learn/words.ts';
import type { Range } from '../../core/twin/range.ts';
import { table } from '../table.ts';
import { keys, labelOf } from './words.ts';

export function changesDocument(changes: readonly Change[]) {
  return Object.fromEntries(
    changes.map(({ name, before, after, narrowing, toldBy = null }) => {
      const { scale } = numberWords[name];
      const scaled = ({ low, mid, high }: Range) => ({ low: low * scale, mid: mid * scale, high: high * scale });
      return [keys[name], { before: scaled(before), after: scaled(after), narrowing, toldBy }];
    }),
  );
}

export function changesTable(changes: readonly Change[]): string {
  const rows = changes.map(({ name, before, after, narrowing }) => {
    const text = (value: number) => figureOf(numberWords[name], value);
    const range = ({ low, high }: Range) => `${text(low)} to ${text(high)}`;
    return [labelOf(name), range(before), range(after), `${(100 * (1 - narrowing)).toFixed(0)} %`];
  });
  return table(
    [
      { head: '', align: 'left' },
      { head: 'before', align: 'right' },
      { head: 'after', align: 'right' },
      { head: 'narrower by', align: 'right' },
    ],
    rows,
  );
}

/** What stayed open, with what would tell it. */
export function openText(changes: readonly Change[]): string | undefined {
  const open = changes.flatMap(({ name, toldBy }) =>
    toldBy ? [`  ${numberWords[name].name}: ${tellingWords[toldBy]} would`] : [],
  );
  return open.length > 0 ? open.join('\n') : undefined;
}
