/** Two cooks, or two plans, beside each other, as a person reads them. */
import type { Explained, OutcomeName } from '../../core/book/explain.ts';
import { addsText, explanationText, factorWords, outcomeWords } from '../../core/book/words.ts';
import { table, wrapped } from '../table.ts';
import { rowsOf, type ToldCook, type ToldPair, type ToldPlan } from './told.ts';

export function compareText(pair: ToldPair, explained: Explained | undefined, of: OutcomeName): string {
  const [first, second] = namesOf(pair);
  const rows = rowsOf(pair).map(({ what, unit, digits, values }) => {
    const [a, b] = values;
    const shown = (value: number | null) => (value === null ? '-' : value.toFixed(digits));
    const more = a === null || b === null ? '' : signed(b - a, digits);
    return [what, shown(a), shown(b), more, unit];
  });
  const columns = [
    { head: '', align: 'left' },
    { head: first, align: 'right' },
    { head: second, align: 'right' },
    { head: 'off by', align: 'right' },
    { head: '', align: 'left' },
  ] as const;
  return [
    table(columns, rows),
    ...kitsPart(pair),
    ...(explained ? [explainedPart(explained, of, pair, [first, second])] : []),
  ].join('\n\n');
}

/** Those of one name are told apart by their place. */
function namesOf([a, b]: ToldPair): readonly [string, string] {
  const named = (told: ToldCook | ToldPlan) =>
    told.kind === 'cook' && told.state.mode === 'rehearsal' ? `${told.name} (rehearsal)` : told.name;
  const [first, second] = [named(a), named(b)];
  return first === second ? [`${first} 1`, `${second} 2`] : [first, second];
}

/** Plans of two kitchens differ in more than what is asked for. */
function kitsPart([first, second]: ToldPair): readonly string[] {
  if (first.kind === 'cook' || second.kind === 'cook') return [];
  const [one, other] = [first.planning.kit, second.planning.kit];
  if (JSON.stringify({ ...one, name: '' }) === JSON.stringify({ ...other, name: '' })) return [];
  const kits = one.name === other.name ? `two different ones called ${one.name}` : `${one.name}; ${other.name}`;
  return [`Each is cooked with the kit that it was made for: ${kits}.`];
}

function signed(value: number, digits: number): string {
  const text = Math.abs(value).toFixed(digits);
  return Number(text) === 0 ? '' : `${value < 0 ? '-' : '+'}${text}`;
}

/** What the twin makes of the two logs, which is not what the model makes of the recipes: it knows the readings and the spoon tests. */
function seenPart([a, b]: ToldPair, of: OutcomeName): string {
  if (a.kind === 'plan' || b.kind === 'plan') return '';
  if ((of !== 'ebc' && of !== 'inverted') || !a.landed || !b.landed) return '';
  const { unit, scale, digits } = outcomeWords[of];
  const seen = scale * (b.landed[of].mid - a.landed[of].mid);
  return `\nThe twin, who knows the readings and spoon tests, makes it ${signed(seen, digits) || 'none'} ${unit}.`;
}

function explainedPart(
  explained: Explained,
  of: OutcomeName,
  pair: ToldPair,
  [first, second]: readonly [string, string],
): string {
  const { name, unit } = outcomeWords[of];
  const rows = explained.shares[of].map(({ factor, adds }) => [
    factorWords[factor],
    addsText(of, adds),
    bar(adds.mid, explained, of),
  ]);
  const columns = [
    { head: `${name}${unit && `, ${unit}`}`, align: 'left' },
    { head: 'adds', align: 'left' },
    { head: '', align: 'left' },
  ] as const;
  const words = wrapped(explanationText(explained, of, first, second), '', 100);
  return `${words}${seenPart(pair, of)}\n\n${table(columns, rows)}\n\nRanges: ${explained.draws} draws of the model's uncertain numbers, the same for both.`;
}

const barWidth = 24;

/** Left of the line what lessens, right of it what adds. */
function bar(value: number, explained: Explained, of: OutcomeName): string {
  const most = Math.max(...explained.shares[of].map(({ adds }) => Math.abs(adds.mid)), 1e-12);
  const length = Math.round((Math.abs(value) / most) * (barWidth / 2));
  const blocks = '█'.repeat(length);
  return value < 0 ? `${blocks.padStart(barWidth / 2)}│` : `${' '.repeat(barWidth / 2)}│${blocks}`;
}
