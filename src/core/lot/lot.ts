/** A lot: one finished sugar, with what the twin believed of it at the pour and what the scale said. */
import type { Form } from '../planning/request.ts';
import { type Expected, expectedNames, type Poured } from './yield.ts';

export interface Lot {
  /** The user's own name for it. */
  readonly name: string;
  /** The cook that it came from, and the plan of that cook; none when they were not kept. */
  readonly cookId: string | null;
  readonly planId: string | null;
  /** When it was poured, RFC 3339 in UTC. */
  readonly madeAt: string;
  readonly form: Form;
  /** As believed at the pour; it never changes. */
  readonly expected: Expected;
  /** On the scale, cold, without tray; none before it was weighed. */
  readonly weighedKg: number | null;
}

/** Lightest and heaviest lot, kg. */
export const lotMassKg = [0.001, 20] as const;

export interface LotFacts extends Omit<Lot, 'expected'> {
  readonly id: string;
  readonly poured: Poured;
}

/** Makes the record of a lot from what was poured. */
export function lotOf({ poured, ...facts }: LotFacts): Lot & { readonly id: string } {
  const expected = Object.fromEntries(expectedNames.map((name) => [name, poured[name]])) as unknown as Expected;
  return { ...facts, name: facts.name.trim(), expected };
}
