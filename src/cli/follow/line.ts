/** A line of input: a JSON object with the time and one thing that was read, measured or done. */
import { eventRanges } from '../../core/log/ranges.ts';
import type { Kit } from '../../core/pan/kit.ts';
import type { Step } from '../../core/pan/steps.ts';
import type { Observation } from '../../core/twin/observe.ts';
import { suggestion } from '../nearest.ts';
import { misused } from '../stop.ts';
import { numberIn, readingIn, shown, stepIn, volumeIn, wholeIn } from './fields.ts';

export type Said =
  | { readonly kind: 'observed'; readonly observation: Observation }
  | { readonly kind: 'heat'; readonly notch: number }
  | { readonly kind: 'water'; readonly waterKg: number }
  | { readonly kind: 'alkali'; readonly parts: number }
  | { readonly kind: 'step'; readonly index: number }
  | { readonly kind: 'poured' };

export interface Line {
  readonly timeS: number;
  readonly said: Said;
}

/** What lines are read against. */
export interface Cooked {
  readonly kit: Kit;
  readonly steps: readonly Step[];
}

type Fields = Readonly<Record<string, unknown>>;
type Reader = (value: unknown, cooked: Cooked, fields: Fields) => Said;

/** A plan is refused when its cook takes more than 6 hours; twice that leaves room. */
const latestS = 43_200;
const longestLine = 10_000;
/** Cold water, within 0.1 % (IAPWS-95). */
const waterKgPerM3 = 1000;

const observed = (observation: Observation): Said => ({ kind: 'observed', observation });

const readers: Readonly<Record<string, Reader>> = {
  reading: (value, _, { unit, byHand }) => observed(readingIn(value, unit, byHand)),
  heat: (value, { kit }) => ({ kind: 'heat', notch: numberIn('heat', value, [0, kit.stove.notches]) }),
  spoonfuls: (value, { kit }) => {
    const volumeM3 = numberIn('spoonfuls', value, [0.1, 20]) * kit.spoonM3;
    return { kind: 'water', waterKg: volumeM3 * waterKgPerM3 };
  },
  water: (value) => ({ kind: 'water', waterKg: volumeIn('water', value) * waterKgPerM3 }),
  alkali: (value) => ({ kind: 'alkali', parts: wholeIn('alkali', value, eventRanges.alkaliPart) }),
  step: (value, { steps }) => ({ kind: 'step', index: stepIn(value, steps) }),
  poured: (value) => (value === true ? { kind: 'poured' } : misused('poured', shown(value), 'is not true', 'true')),
  weight: (value) => observed({ kind: 'weight', contentsKg: numberIn('weight', value, [0.01, 20], 'kg') }),
  spoonColour: (value) => observed({ kind: 'spoonColour', a430: numberIn('spoonColour', value, eventRanges.a430) }),
  dilutionPh: (value) => observed({ kind: 'dilutionPh', ph: numberIn('dilutionPh', value, eventRanges.ph) }),
  solids: (value) => observed({ kind: 'solids', solids: numberIn('solids', value, [0.1, 1]) }),
};

const kinds = Object.keys(readers);
/** Fields that go with others. */
const besides = ['t', 'unit', 'byHand'];

/** @throws Stop that names field, value and what is allowed */
export function readLine(text: string, cooked: Cooked): Line {
  const fields = objectIn(text);
  const timeS = numberIn('t', fields['t'], [0, latestS], 's');
  const [kind = '', second] = kinds.filter((each) => Object.hasOwn(fields, each));
  if (second !== undefined) misused(second, shown(fields[second]), `stands beside ${kind}`, 'one of them a line');
  const read = readers[kind];
  if (read === undefined) return nothingSaid(fields);
  return { timeS, said: read(fields[kind], cooked, fields) };
}

function objectIn(text: string): Fields {
  const start = text.slice(0, 60);
  if (text.length > longestLine) misused('line', start, 'is too long', `${longestLine} characters`);
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    misused('line', start, 'is not JSON', 'an object such as {"t": 60, "heat": 3}');
  }
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    misused('line', start, 'is not an object', 'an object such as {"t": 60, "heat": 3}');
  }
  return value as Fields;
}

function nothingSaid(fields: Fields): never {
  const other = Object.keys(fields).find((name) => !besides.includes(name));
  if (other === undefined) misused('line', shown(fields), 'says nothing', kinds.join(', '));
  misused(
    other.trim() === '' ? JSON.stringify(other) : other,
    shown(fields[other]),
    `is not known${suggestion(other, kinds)}`,
    kinds.join(', '),
  );
}
