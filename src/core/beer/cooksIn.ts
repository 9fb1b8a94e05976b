/** Which cooks the sugars of a beer came from. */
import type { Origin } from '../lot/lot.ts';
import type { KeptDose } from './keptGlass.ts';

/** A lot as far as it tells of its cook. */
export interface Traced {
  readonly cookId: string | null;
  readonly origin: Origin;
}

export interface CookShare {
  readonly cookId: string;
  /** Of the mass of all sugar in the beer. */
  readonly share: number;
}

/**
 * Each cook once. Sugar that was bought, written in or of a lot that is not known has no cook; what was poured from a simulated pan nobody
 * can have drunk, so a beer with some of it tells of no cook at all.
 */
export function cooksIn(doses: readonly KeptDose[], lotOf: (id: string) => Traced | undefined): readonly CookShare[] {
  const lots = doses.map(({ sugar }) => (sugar.kind === 'lot' ? lotOf(sugar.lotId) : undefined));
  if (lots.some((lot) => lot?.origin === 'rehearsed')) return [];
  const allKg = doses.reduce((sum, { massKg }) => sum + massKg, 0);
  const byCook = new Map<string, number>();
  for (const [at, { massKg }] of doses.entries()) {
    const cookId = lots[at]?.cookId ?? null;
    if (cookId !== null && massKg > 0) byCook.set(cookId, (byCook.get(cookId) ?? 0) + massKg);
  }
  return [...byCook].map(([cookId, kg]) => ({ cookId, share: kg / allKg }));
}
