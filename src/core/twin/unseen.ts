/** What no thermometer shows: water, inversion, acidity and colour, of one pan and of the twin's many. */
import { contentsKg, place } from '../pan/state.ts';
import type { Charge } from '../pan/steps.ts';
import { amount, amountMassKg } from '../reactions/rates.ts';
import { a430Of, type Seen } from './observe.ts';
import { type Range, rangeOf } from './range.ts';

/** Water as a share of all in the pan, by mass, inverted as a share of the sucrose's moles, hot pH, A430 of a 10 % w/w solution. */
export const unseenNames = ['waterShare', 'inverted', 'ph', 'a430'] as const;
export type UnseenName = (typeof unseenNames)[number];
export type Unseen<T> = Readonly<Record<UnseenName, T>>;

/** @param charge what the pan was filled with */
export function unseenOf(seen: Pick<Seen, 'y' | 'values' | 'ph'>, charge: Charge): Unseen<number> {
  const { y } = seen;
  const sucroseMol = charge.sucroseKg / amountMassKg[amount.sucrose];
  return {
    waterShare: y[place.waterKg] / contentsKg(y),
    inverted: 1 - (y[place.sucrose] + y[place.crystals]) / sucroseMol,
    ph: seen.ph,
    a430: a430Of(seen),
  };
}

export function unseenRanges(members: readonly Seen[], charge: Charge): Unseen<Range> {
  const each = members.map((member) => unseenOf(member, charge));
  const range = (name: UnseenName) => rangeOf(each.map((one) => one[name]));
  return { waterShare: range('waterShare'), inverted: range('inverted'), ph: range('ph'), a430: range('a430') };
}
