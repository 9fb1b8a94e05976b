import { expect, test } from 'vitest';
import type { AnyEntry } from '../log/corrections.ts';
import { amountsFor } from '../planning/amounts.ts';
import { defaultRequest } from '../planning/request.ts';
import { alkaliOfCook } from './alkaliOfCook.ts';

const { charge, alkali } = amountsFor(defaultRequest, 0.5);
const amounts = { charge, alkali: alkali ?? null };
const parts = alkali?.parts ?? [];
const given = (some: typeof parts) =>
  some.map((part, at) => ({ kind: 'alkali', body: { ...part, part: at + 1 } }) as unknown as AnyEntry);

test('all parts of the plan are its dose for each kg of sugar; one part left out is that much less', () => {
  expect(alkaliOfCook({ amounts }, given(parts))?.gramsPerKgSucrose).toBeCloseTo(defaultRequest.alkaliGPerKg, 9);
  const less = alkaliOfCook({ amounts }, given(parts.slice(1)))?.gramsPerKgSucrose ?? 0;
  expect(less).toBeCloseTo((defaultRequest.alkaliGPerKg * (parts.length - 1)) / parts.length, 9);
});

test('a cook without alkali had none, and one with both kinds is not one figure', () => {
  expect(alkaliOfCook({ amounts }, [])?.gramsPerKgSucrose).toBe(0);
  const both = [
    ...parts.slice(0, 1),
    ...parts.slice(1, 2).map((part) => ({ ...part, substance: 'calciumHydroxide' as const })),
  ];
  expect(alkaliOfCook({ amounts }, given(both))).toBeNull();
});
