/**
 * How much of what two cooks differ in comes from which difference in how they were cooked: the model cooks both again with every
 * combination of their differences exchanged, and the shares are Shapley's values. Draws of the model's uncertain numbers, the same for
 * both cooks, say how sure that is.
 */
import { ebcFromA430 } from '../colour/scales.ts';
import { equivalentsOf } from '../pan/deeds.ts';
import { centralValues, drawnValues } from '../pan/model.ts';
import { createPan, type ModelValues } from '../pan/physics.ts';
import type { PreparedKit } from '../pan/preparedKit.ts';
import { type Branches, createBranches } from '../planning/field/branches.ts';
import { type Made, madeOf } from '../planning/field/made.ts';
import { tasteNames } from '../planning/taste.ts';
import { normalNumbers } from '../reactions/normal.ts';
import { type Range, rangeOf } from '../twin/range.ts';
import type { AsCooked } from './asCooked.ts';
import { differing, type Factor, type Mixed, mixed } from './factors.ts';
import { shapleyValues } from './shapley.ts';

/** EBC of a 10 % w/w solution, inverted share of the sucrose's moles, taste indices from 0 to 10. */
export const outcomeNames = ['ebc', 'inverted', ...tasteNames] as const;
export type OutcomeName = (typeof outcomeNames)[number];
export type Outcome = Readonly<Record<OutcomeName, number>>;

export interface Share {
  readonly factor: Factor;
  /** What the factor adds on the way from the first cook to the second. */
  readonly adds: Range;
}

export interface Explained {
  /** As the model cooks each again with its middle numbers. */
  readonly first: Outcome;
  readonly second: Outcome;
  /** Second less first. */
  readonly difference: Readonly<Record<OutcomeName, Range>>;
  /** In the order of the size of their middles, which add up to the middle of the difference. */
  readonly shares: Readonly<Record<OutcomeName, readonly Share[]>>;
  /** Draws that the ranges rest on; those in which a cook did not come to its end are left out. */
  readonly draws: number;
}

export interface ExplainOptions {
  readonly draws?: number;
  readonly seed?: number;
}

const usualDraws = 24;

/** Yields how far it has come, 0 to 1. */
export function* explaining(
  first: AsCooked,
  second: AsCooked,
  { draws = usualDraws, seed = 1 }: ExplainOptions = {},
): Generator<number, Explained | undefined, void> {
  const factors = differing(first, second);
  const middle = cookedAll(first, second, factors, ({ kit }) => centralValues(kit));
  if (!middle) return undefined;
  const shares = sharesOf(middle, factors.length);
  const drawn: (readonly Outcome[])[] = [];
  for (let draw = 0; draw < draws; draw++) {
    yield (draw + 1) / (draws + 1);
    const stream = seed * 100_003 + draw;
    const outcomes = cookedAll(first, second, factors, ({ kit }) => drawnValues(kit, normalNumbers(stream)));
    if (outcomes) drawn.push(outcomes);
  }
  const drawnShares = drawn.map((outcomes) => sharesOf(outcomes, factors.length));
  const last = middle.length - 1;
  return {
    first: middle[0],
    second: middle[last],
    difference: each((name) =>
      around(
        middle[last][name] - middle[0][name],
        drawn.map((outcomes) => outcomes[last][name] - outcomes[0][name]),
      ),
    ),
    shares: each((name) =>
      factors
        .map((factor, i): Share => {
          const found = drawnShares.map((one) => one[name][i]);
          return { factor, adds: around(shares[name][i], found) };
        })
        .sort((a, b) => Math.abs(b.adds.mid) - Math.abs(a.adds.mid)),
    ),
    draws: drawn.length,
  };
}

/** @returns nothing when the model does not come to the end of one of the combinations */
export function explain(first: AsCooked, second: AsCooked, options?: ExplainOptions): Explained | undefined {
  const run = explaining(first, second, options);
  for (;;) {
    const { done, value } = run.next();
    if (done) return value as Explained | undefined;
  }
}

/** The outcome of every combination, by its bits: bit i is set when factor i is the second cook's. */
function cookedAll(
  first: AsCooked,
  second: AsCooked,
  factors: readonly Factor[],
  valuesFor: (of: PreparedKit) => ModelValues,
): readonly Outcome[] | undefined {
  const stoves = new Map<string, Stove>();
  const outcomes: Outcome[] = [];
  for (let combination = 0; combination < 1 << factors.length; combination++) {
    const from = (factor: Factor) =>
      (combination >> factors.indexOf(factor)) & 1 && factors.includes(factor) ? second : first;
    const mix = mixed(from);
    const key = JSON.stringify(mix.kit);
    const stove =
      stoves.get(key) ?? stoveOf({ ...from('kit').prepared, kit: mix.kit }, valuesFor(from('kit').prepared));
    stoves.set(key, stove);
    const made = cooked(mix, stove);
    if (!made) return undefined;
    outcomes.push({ ...made.taste, ebc: ebcFromA430(made.a430), inverted: made.inverted });
  }
  return outcomes;
}

interface Stove {
  readonly values: ModelValues;
  readonly branches: Branches;
}

function stoveOf(prepared: PreparedKit, values: ModelValues): Stove {
  return { values, branches: createBranches(createPan(prepared, values), prepared.kit) };
}

function cooked({ charge, steps }: Mixed, { values, branches }: Stove): Made | undefined {
  const [end] = branches.cook([{ charge, steps }]);
  if (!end.poured) return undefined;
  const parts = steps.flatMap(({ alkali }) => alkali);
  const equivalents = parts.reduce((sum, part) => sum + equivalentsOf(part), 0);
  return madeOf(end, { charge, alkali: parts[0] && { substance: parts[0].substance, equivalents } }, values);
}

function sharesOf(outcomes: readonly Outcome[], count: number): Record<OutcomeName, number[]> {
  return each((name) => shapleyValues(count, (combination) => outcomes[combination][name]));
}

function each<V>(of: (name: OutcomeName) => V): Record<OutcomeName, V> {
  return Object.fromEntries(outcomeNames.map((name) => [name, of(name)])) as Record<OutcomeName, V>;
}

/** The marks of the draws around the middle that the shares add up to. */
function around(mid: number, drawn: readonly number[]): Range {
  if (drawn.length === 0) return { low: mid, mid, high: mid };
  const { low, high } = rangeOf(drawn);
  return { low: Math.min(low, mid), mid, high: Math.max(high, mid) };
}
