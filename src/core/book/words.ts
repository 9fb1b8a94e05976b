/** How steps, factors and outcomes are spoken of in the Book, on the command line and in a report alike. */
import type { StepKind } from '../pan/steps.ts';
import type { Range } from '../twin/range.ts';
import type { Explained, OutcomeName } from './explain.ts';
import type { Factor } from './factors.ts';

export const stepWords: Readonly<Record<StepKind, string>> = {
  dissolve: 'Dissolve',
  climb: 'Climb',
  invert: 'Invert',
  brown: 'Brown',
  roast: 'Roast',
  cast: 'Cast',
  letDown: 'Let down',
};

/** Names of steps in their order, those of a kind told apart: `Brown`, `Brown 2`. */
export function stepTitles(kinds: readonly StepKind[]): readonly string[] {
  return kinds.map((kind, at) => {
    const before = kinds.slice(0, at).filter((each) => each === kind).length;
    return before === 0 ? stepWords[kind] : `${stepWords[kind]} ${before + 1}`;
  });
}

export const factorWords: Readonly<Record<Factor, string>> = {
  alkali: 'alkali',
  holdTime: 'hold time',
  temperature: 'temperature',
  water: 'water',
  nitrogen: 'malt extract',
  kit: 'kit',
  batch: 'batch size',
};

interface OutcomeWords {
  readonly name: string;
  readonly unit: string;
  /** From the outcome's number to the one that is shown, and its decimals. */
  readonly scale: number;
  readonly digits: number;
  readonly more: string;
  readonly less: string;
}

const taste = (name: string): OutcomeWords => ({
  name: `${name} index`,
  unit: '',
  scale: 1,
  digits: 1,
  more: `higher in ${name.toLowerCase()}`,
  less: `lower in ${name.toLowerCase()}`,
});

export const outcomeWords: Readonly<Record<OutcomeName, OutcomeWords>> = {
  ebc: { name: 'Colour', unit: 'EBC', scale: 1, digits: 0, more: 'darker', less: 'paler' },
  inverted: { name: 'Inverted', unit: '%', scale: 100, digits: 0, more: 'more inverted', less: 'less inverted' },
  fruit: taste('Fruit'),
  toffee: taste('Toffee'),
  roast: taste('Roast'),
  burnt: taste('Burnt'),
  alkali: taste('Mineral'),
};

/** `12 EBC`, without a sign. */
export function amountText(name: OutcomeName, value: number): string {
  const { unit, scale, digits } = outcomeWords[name];
  return `${Math.abs(value * scale).toFixed(digits)}${unit && ` ${unit}`}`;
}

const signed = (name: OutcomeName, value: number): string => {
  const { scale, digits } = outcomeWords[name];
  const text = Math.abs(value * scale).toFixed(digits);
  return `${value < 0 && Number(text) > 0 ? '−' : '+'}${text}`;
};

/** `+4 to +9`, or the one number when both ends read the same. */
function rangeText(name: OutcomeName, { low, high }: Range): string {
  const [from, to] = [signed(name, low), signed(name, high)];
  return from === to ? from : `${from} to ${to}`;
}

/** `+9 (8 in 10: +6 to +12)`. */
export function addsText(name: OutcomeName, adds: Range): string {
  return `${signed(name, adds.mid)} (8 in 10: ${rangeText(name, adds)})`;
}

/** What is not shown with the digits of the outcome is not told. */
const tells = (name: OutcomeName, { mid }: Range): boolean =>
  Number(signed(name, mid)) !== 0 && signed(name, mid) !== '+0';

/** Where the difference comes from, in a sentence or two. */
export function explanationText(explained: Explained, name: OutcomeName, first: string, second: string): string {
  const difference = explained.difference[name];
  const { more, less } = outcomeWords[name];
  const told = explained.shares[name].filter(({ adds }) => tells(name, adds));
  const up = difference.mid >= 0;
  if (!tells(name, difference)) {
    const even = `By the model ${second} and ${first} are alike in this to what is shown`;
    return told.length > 1
      ? `${even}: what differs cancels out, ${told.map(({ factor, adds }) => `${factorWords[factor]} ${signed(name, adds.mid)}`).join(', ')}.`
      : `${even}.`;
  }
  const head = `By the model ${second} is ${amountText(name, difference.mid)} ${up ? more : less} than ${first} (8 in 10: ${rangeText(name, difference)})`;
  const [main, ...rest] = told.filter(({ adds }) => adds.mid >= 0 === up);
  const against = told.filter(({ adds }) => adds.mid >= 0 !== up);
  if (!main) return `${head}.`;
  const others = rest.map(({ factor, adds }) => `${factorWords[factor]} ${signed(name, adds.mid)}`);
  const back = against.map(({ factor, adds }) => `${factorWords[factor]} ${signed(name, adds.mid)}`);
  return [
    `${head}: mostly ${factorWords[main.factor]}, ${addsText(name, main.adds)}`,
    others.length > 0 ? `; then ${others.join(', ')}` : '',
    back.length > 0 ? `; ${back.join(', ')} the other way` : '',
    '.',
  ].join('');
}
