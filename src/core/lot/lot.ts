/** A lot: one finished sugar, with what was believed of it when it was made and what the scale said. */
import type { Alkali, Form } from '../planning/request.ts';
import { type Expected, expectedNames, type Poured } from './yield.ts';

/** Cooked here; poured from a simulated pan, so that it does not exist; or made before, and told by hand. */
export const origins = ['cooked', 'rehearsed', 'told'] as const;
export type Origin = (typeof origins)[number];

export interface AlkaliGiven {
  readonly substance: Alkali;
  /** Pure alkali for each kg of sucrose in the pan, g/kg; 0 for none. */
  readonly gramsPerKgSucrose: number;
}

export interface Lot {
  /** The user's own name for it. */
  readonly name: string;
  readonly origin: Origin;
  /** The cook that it came from, and the plan of that cook; none when they were not kept. */
  readonly cookId: string | null;
  readonly planId: string | null;
  /** When it was poured, RFC 3339 in UTC. */
  readonly madeAt: string;
  readonly form: Form;
  /** As believed at the pour, or told; it never changes. */
  readonly expected: Expected;
  /** On the scale when it was made, cold, without tray; none before it was weighed. */
  readonly weighedKg: number | null;
  /** What it was browned with, for its sodium and calcium; none when nobody said. */
  readonly alkali: AlkaliGiven | null;
}

/** Lightest and heaviest lot, kg. */
export const lotMassKg = [0.001, 20] as const;
export const alkaliGPerKgRange = [0, 30] as const;

export interface LotFacts extends Omit<Lot, 'expected'> {
  readonly id: string;
  readonly poured: Poured;
}

/** Makes the record of a lot from what was poured. */
export function lotOf({ poured, ...facts }: LotFacts): Lot & { readonly id: string } {
  const expected = Object.fromEntries(expectedNames.map((name) => [name, poured[name]])) as unknown as Expected;
  return { ...facts, name: facts.name.trim(), expected };
}
