/** What a sugar costs to make, against a bought one: in the user's own currency, by the prices that they give. */
import type { Prices } from '../../pan/kit.ts';
import type { Amounts } from '../amounts.ts';

export interface Cost {
  /** Of the batch, and for each kg of finished sugar. */
  readonly batch: number;
  readonly perKg: number;
  /** What the batch saves against as much bought sugar; nothing without its price. */
  readonly saved: number | undefined;
  /** What was used and has no price. */
  readonly unpriced: readonly (keyof Prices)[];
}

/** @returns nothing when no price is given */
export function costOf(
  { charge, alkali }: Amounts,
  energyKWh: number,
  yieldKg: number,
  prices: Prices,
): Cost | undefined {
  if (Object.values(prices).every((price) => price === undefined)) return undefined;
  const used: readonly (readonly [keyof Prices, number])[] = [
    ['sugar', charge.sucroseKg],
    ['maltExtract', charge.maltExtractKg],
    ['alkali', alkali?.weighedKg ?? 0],
    ['acid', charge.citricAcidKg],
    ['energy', energyKWh],
  ];
  const batch = used.reduce((sum, [name, amount]) => sum + amount * (prices[name] ?? 0), 0);
  return {
    batch,
    perKg: batch / yieldKg,
    saved: prices.bought === undefined ? undefined : prices.bought * yieldKg - batch,
    unpriced: used.filter(([name, amount]) => amount > 0 && prices[name] === undefined).map(([name]) => name),
  };
}
