/** The end of a rehearsal as a person reads it. */
import type { Reveal, Revealed } from '../../core/advice/reveal.ts';
import { noSurprise, surpriseWords } from '../../core/advice/surpriseWords.ts';
import type { Range } from '../../core/twin/range.ts';
import { type Column, table } from '../table.ts';
import type { Ended } from './ended.ts';
import { shownAs } from './revealed.ts';
import { clockText } from './statusText.ts';

type Row = Revealed<keyof typeof shownAs> & { readonly before?: Range };

export function revealText(ended: Ended): string {
  const { reveal, kit } = ended;
  return [
    ledText(ended),
    `Rehearsal: the pan at the end\n${revealTable(reveal.pan, [])}`,
    ...surprisesText(reveal),
    `Rehearsal: the kitchen (${kit.name})\n${revealTable(reveal.kitchen, [{ head: 'before the cook', align: 'right' }])}`,
    'Rehearsal: believed and before the cook are 10-90 % ranges; one hidden value in five lies outside.\nNothing here was cooked.',
  ].join('\n\n');
}

function surprisesText({ surprises }: Reveal): string[] {
  if (!surprises) return [];
  const told = surprises.map((surprise) => surpriseWords(surprise, (timeS) => clockText(timeS).trim()));
  return [['Rehearsal: surprises', ...(told.length > 0 ? told : [noSurprise])].join('\n')];
}

function ledText({ ending, rehearsal, seed, inBand, spoonfuls, turns }: Ended): string {
  const minutes = (rehearsal.timeS / 60).toFixed(0);
  const ends = {
    poured: `poured after ${minutes} min`,
    left: `left after ${minutes} min`,
    'out of time': `not poured within ${minutes} min`,
  };
  const held = inBand === undefined ? 'no hold was reached' : `in band for ${(100 * inBand).toFixed(0)} % of the holds`;
  return `Rehearsal (seed ${seed}): ${ends[ending]}; ${held}; ${spoonfuls} spoonfuls, ${turns} turns of the dial.`;
}

function revealTable(rows: readonly Row[], further: readonly Column[]): string {
  const columns: Column[] = [
    { head: '', align: 'left' },
    { head: 'hidden', align: 'right' },
    { head: 'believed', align: 'right' },
    { head: '', align: 'left' },
    ...further,
  ];
  return table(
    columns,
    rows.map(({ name, hidden, believed, inside, before }) => {
      const { label, scale, digits } = shownAs[name];
      const text = (value: number) => (value * scale).toFixed(digits);
      const range = ({ low, high }: Range) => `${text(low)} to ${text(high)}`;
      return [label, text(hidden), range(believed), inside ? '' : 'outside', ...(before ? [range(before)] : [])];
    }),
  );
}
