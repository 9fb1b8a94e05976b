/** What a table would give, or the cells that keep it from being taken, as a person reads it. */
import type { Preview, WrongCell } from '../../core/learn/imported/preview.ts';
import { pairs } from '../table.ts';

/** More are counted, not told. */
const mostTold = 20;

export function previewText({ rows, readings, happenings, lowestC, highestC, lastS, wrong }: Preview): string {
  if (wrong.length > 0) return wrongText(wrong);
  const deeds = happenings.flatMap(({ deed }) => (deed ? [deed.kind] : []));
  const kinds = [...new Set(deeds)].map((kind) => `${deeds.filter((one) => one === kind).length} ${kind}`);
  return pairs([
    ['rows', String(rows)],
    [
      'readings',
      lowestC === null || highestC === null ? '0' : `${readings}, ${lowestC.toFixed(1)} to ${highestC.toFixed(1)} °C`,
    ],
    ['deeds', kinds.length > 0 ? kinds.join(', ') : 'none'],
    ['lasts', `${(lastS / 60).toFixed(0)} min`],
  ]);
}

function wrongText(wrong: readonly WrongCell[]): string {
  const lines = wrong.slice(0, mostTold).map(({ line, column, value, reason }) => {
    const cell = column === null ? '' : ` ${column}${value && ` '${value.slice(0, 40)}'`}`;
    return `line ${line}:${cell} ${reason}`;
  });
  const more = wrong.length > mostTold ? [`and ${wrong.length - mostTold} more`] : [];
  return ['Nothing is taken from this table.', ...lines, ...more].join('\n');
}
