import { expect, it } from 'vitest';
import { mineralGuidance, mineralGuideline } from './mineralGuidance.ts';
import { mineralsOfAlkali } from './minerals.ts';
import { certain } from './uncertain.ts';

const dry = certain(1);

// Arithmetic of molar masses: Na 22.990, Ca 40.078, NaOH 39.997, Ca(OH)2 74.093.
it.each([
  ['sodiumHydroxide', 1, 23],
  ['sodiumHydroxide', 2, 46],
  ['sodiumHydroxide', 5, 115],
  ['calciumHydroxide', 1, 22],
  ['calciumHydroxide', 2, 43],
  ['calciumHydroxide', 5, 108],
] as const)(
  '%s, %d g for each kg, at 40 g of sugar in a litre of beer: %d mg/L',
  (substance, gramsPerKgSucrose, mgPerL) => {
    const { sodiumGPerKg, calciumGPerKg } = mineralsOfAlkali({ substance, gramsPerKgSucrose }, dry, 0);
    const [metal, other] =
      substance === 'sodiumHydroxide' ? [sodiumGPerKg, calciumGPerKg] : [calciumGPerKg, sodiumGPerKg];
    expect(Math.abs(40 * metal.mid - mgPerL)).toBeLessThanOrEqual(0.5);
    expect(other.mid).toBe(0);
  },
);

it('a sugar that grew by inversion, or holds water, has less of it in each kg', () => {
  const { sodiumGPerKg } = mineralsOfAlkali({ substance: 'sodiumHydroxide', gramsPerKgSucrose: 5 }, certain(0.8), 1);
  expect(sodiumGPerKg.mid).toBeCloseTo((5 * 0.57478 * 0.8) / 1.05263, 4);
});

it('the strongest guideline that is reached is told, that of the WHO at 200 mg/L of sodium', () => {
  expect(mineralGuideline('sodium', 10, 40)).toBeUndefined();
  expect(mineralGuideline('sodium', 70, 98)?.level).toBe('note');
  expect(mineralGuideline('sodium', 10, 130)?.level).toBe('warning');
  expect(mineralGuideline('sodium', 172, 200)?.source).toContain('WHO');
  expect(mineralGuideline('calcium', 0, 160)?.level).toBe('warning');
  expect(mineralGuidance.every(({ source }) => source.length > 0)).toBe(true);
});
