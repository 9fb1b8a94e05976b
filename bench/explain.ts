/**
 * Pairs of cooks in which one difference was planted: how often it is found first, whether the shares add up, and what it takes.
 * `PAIRS=200 npm run bench explain` for the bar.
 */
import { explain, outcomeNames } from '../src/core/book/explain.ts';
import { type PlantedFactor, planted, plantedPair } from './measure/plantedPair.ts';
import { publish, ratio, table } from './measure/report.ts';

const pairs = Number(process.env['PAIRS'] ?? 200);
const draws = Number(process.env['DRAWS'] ?? 24);
const names = Object.keys(planted) as PlantedFactor[];
const bar = 0.95;
/** Of how many pairs the ranges are drawn, too: they take most of the time. */
const drawnPairs = Math.min(pairs, 12);

const found = new Map(names.map((name) => [name, { pairs: 0, first: 0, smallest: Number.POSITIVE_INFINITY }]));
let worstSum = 0;
let spentMs = 0;
const others = new Map<string, number>();
for (let number = 0; number < pairs; number++) {
  const factor = names[number % names.length];
  const { first, second } = plantedPair(factor, number);
  const begun = performance.now();
  const explained = explain(first, second, { draws: 0 });
  spentMs += performance.now() - begun;
  if (!explained) throw new Error(`pair ${number} can't be cooked again`);
  for (const name of outcomeNames) {
    const sum = explained.shares[name].reduce((all, { adds }) => all + adds.mid, 0);
    const whole = explained.difference[name].mid;
    if (Math.abs(whole) > 1e-6) worstSum = Math.max(worstSum, Math.abs(sum - whole) / Math.abs(whole));
  }
  const tally = found.get(factor);
  if (!tally) continue;
  const [leading, next] = explained.shares[planted[factor]];
  tally.pairs += 1;
  if (leading?.factor === factor) {
    tally.first += 1;
    tally.smallest = Math.min(tally.smallest, Math.abs(leading.adds.mid / (next?.adds.mid || 1e-9)));
  } else
    others.set(`${factor}, but ${leading?.factor} led`, (others.get(`${factor}, but ${leading?.factor} led`) ?? 0) + 1);
}

let drawnMs = 0;
let kept = 0;
for (let number = 0; number < drawnPairs; number++) {
  const { first, second } = plantedPair(names[number % names.length], 10_000 + number);
  const begun = performance.now();
  kept += explain(first, second, { draws })?.draws ?? 0;
  drawnMs += performance.now() - begun;
}

const all = [...found.values()];
const firsts = all.reduce((sum, { first }) => sum + first, 0);
const rows = [...found].map(([name, { pairs: n, first, smallest }]) => [
  name,
  planted[name],
  String(n),
  `${((100 * first) / n).toFixed(0)} %`,
  Number.isFinite(smallest) ? ratio(smallest) : '-',
]);
publish('explain', 'Explaining a difference', [
  `${pairs} pairs of cooks, each pair in one hidden kitchen (every uncertain number drawn 1.25 times wider than stated), by a person with a thermometer (0.4 C of noise, a reading each 10 s) and spoonfuls that scatter by 20 %, so that both cooks differ a little in hold and temperature, too. One difference is planted: 1.2 to 1.8 g/kg of alkali, 16 to 24 min of browning, 4 to 6 C of browning, 350 to 450 mg/L of alkalinity in the water, 6.4 to 9.6 g/kg of malt extract, or 1700 to 2500 m of altitude. It is looked for in the logs alone, on the outcome that it mostly moves, chosen beforehand. The model that explains is the model that made the cooks, with other numbers: what a real pan does otherwise is not in these figures.`,
  table(['planted', 'looked for on', 'pairs', 'found first', 'least lead over the next'], rows),
  `Found first in ${firsts} of ${pairs}: ${((100 * firsts) / pairs).toFixed(1)} %. The bar: ${100 * bar} %, ${firsts / pairs >= bar ? 'kept' : 'missed'}.${others.size > 0 ? ` Not found: ${[...others].map(([what, count]) => `${what} (${count})`).join('; ')}.` : ''}`,
  `Largest gap between the sum of the shares and the difference: ${worstSum.toExponential(1)} of the difference. The bar: 1 %.`,
  `A pair takes ${(spentMs / pairs).toFixed(0)} ms without ranges, and ${(drawnMs / drawnPairs / 1000).toFixed(1)} s with ${draws} draws (of which ${(kept / drawnPairs).toFixed(1)} came to their end).`,
]);
