/** What a plan needs otherwise, as it is said: `4 min less browning`. */
import type { Lever, NextPlan } from '../../../../core/planning/nextPlan.ts';

const words: Readonly<Record<Lever, { readonly unit: string; readonly of: string; readonly digits: number }>> = {
  brownMinutes: { unit: 'min', of: 'browning', digits: 0 },
  roastMinutes: { unit: 'min', of: 'roast', digits: 0 },
  invertMinutes: { unit: 'min', of: 'inverting', digits: 0 },
  alkaliGPerKg: { unit: 'g/kg', of: 'alkali', digits: 2 },
  brownC: { unit: 'K', of: 'in the browning hold', digits: 0 },
  roastC: { unit: 'K', of: 'in the roast', digits: 0 },
};

export function againLines(again: NonNullable<NextPlan['again']>): readonly string[] {
  return again.flatMap(({ lever, from, to }) => {
    const { unit, of, digits } = words[lever];
    const by = Math.abs(to - from).toFixed(digits);
    if (Number(by) === 0) return [];
    return [`${by} ${unit} ${to > from ? 'more' : 'less'} ${of}`];
  });
}
