/** The options of `field` that say which levers span it, how far, and how finely. */

import { type Axis, type Lever, leversOf, type usualAxis } from '../../core/planning/field/levers.ts';
import { type FieldSpec, usualField } from '../../core/planning/field.ts';
import { type PlanRequest, requestRanges } from '../../core/planning/request.ts';
import { flagOf, number, optional, readAll, type Texts, usually, wholeNumber, word } from '../input.ts';
import { requestFields } from '../plan/requestOptions.ts';
import { Stop } from '../stop.ts';

const levers = {
  dose: 'alkaliGPerKg',
  malt: 'maltExtractGPerKg',
  'invert-time': 'invertMinutes',
  brown: 'brownC',
  'brown-time': 'brownMinutes',
  roast: 'roastC',
  'roast-time': 'roastMinutes',
} as const satisfies Record<string, Lever>;
const leverWords = Object.keys(levers) as [keyof typeof levers, ...(keyof typeof levers)[]];

export const leverNames: Readonly<Record<Lever, string>> = {
  alkaliGPerKg: 'dose, g/kg',
  maltExtractGPerKg: 'malt extract, g/kg',
  invertMinutes: 'invert, min',
  brownC: 'brown, °C',
  brownMinutes: 'brown, min',
  roastC: 'roast, °C',
  roastMinutes: 'roast, min',
};

const end = (meaning: string) => optional(number(`${meaning}, in g/kg, min or °C`, [0, 1000]));
const count = (meaning: string, usual: string) => optional(wholeNumber(meaning, [2, 128]), usual);

export const fieldInputs = {
  across: optional(word('lever from left to right', leverWords), 'dose'),
  acrossFrom: end('where it begins'),
  acrossTo: end('where it ends'),
  up: optional(word('lever from bottom to top', leverWords), 'brown-time'),
  upFrom: end('where it begins'),
  upTo: end('where it ends'),
  look: usually(
    word('painted as a glass of a 10 % solution, 1 cm, or as a drop on a white plate', ['glass', 'drop']),
    'glass',
  ),
  columns: count('sugars side by side', '10 as text, 48 otherwise'),
  rows: count('sugars one above the other', '8 as text, 32 otherwise'),
};

/** Size when it isn't asked for. */
export interface UsualSize {
  readonly columns: number;
  readonly rows: number;
}

/** @param axisOf how far a lever goes where nobody says */
export function fieldFrom(texts: Texts, request: PlanRequest, usual: UsualSize, axisOf: typeof usualAxis): FieldSpec {
  const given = readAll(fieldInputs, texts);
  const base = usualField(request);
  const axis = (asked: keyof typeof levers | undefined, usually: Lever, count: number) =>
    axisOf(asked === undefined ? usually : levers[asked], request, count);
  const across = axis(given.across, base.x.lever, given.columns ?? usual.columns);
  const up = axis(given.up, base.y.lever, given.rows ?? usual.rows);
  const x = withEnds('across', across, given.acrossFrom, given.acrossTo);
  const y = withEnds('up', up, given.upFrom, given.upTo);
  if (x.lever === y.lever) stop('up', `--across and --up are the same lever; allowed: two different ones`);
  for (const [name, { lever }] of Object.entries({ across: x, up: y })) {
    const open = leversOf(request.route);
    if (!open.includes(lever)) {
      const allowed = leverWords.filter((each) => open.includes(levers[each])).join(', ');
      stop(name, `${flagOf(name)}: this lever does nothing on the ${request.route} route; allowed: ${allowed}`);
    }
    const option = requestFields[lever];
    if (texts[option] !== undefined)
      stop(option, `${flagOf(option)} is a lever of this field: leave it out, or set its ends`);
  }
  return { request, x, y };
}

function withEnds(name: 'across' | 'up', axis: Axis, from: number | undefined, to: number | undefined): Axis {
  const [low, high] = requestRanges[axis.lever];
  for (const [end, value] of [
    ['From', from],
    ['To', to],
  ] as const) {
    if (value === undefined || (value >= low && value <= high)) continue;
    stop(
      `${name}${end}`,
      `${flagOf(`${name}${end}`)} is ${value}; allowed: ${low} to ${high} (${leverNames[axis.lever]})`,
    );
  }
  const found = { ...axis, low: from ?? axis.low, high: to ?? axis.high };
  if (found.low >= found.high)
    stop(`${name}To`, `${flagOf(`${name}To`)} must lie above where the lever begins, ${found.low}`);
  return found;
}

function stop(option: string, message: string): never {
  throw new Stop({ kind: 'misused', field: flagOf(option), message });
}
