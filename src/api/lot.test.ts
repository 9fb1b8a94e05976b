import { expect, expectTypeOf, it } from 'vitest';
import type { Lot } from '../core/lot/lot.ts';
import { type ExpectedName, expectedNames } from '../core/lot/yield.ts';
import { type KeptLot, lotChangeSchema, newLotSchema } from './lot.ts';

it('schema and core type are the same, both ways (checked by the compiler)', () => {
  expectTypeOf<KeptLot>().toExtend<Lot>();
  expectTypeOf<Lot>().toExtend<KeptLot>();
  expectTypeOf<keyof KeptLot>().toEqualTypeOf<keyof Lot>();
  expectTypeOf<keyof KeptLot['expected']>().toEqualTypeOf<ExpectedName>();
});

it('a lot may be unweighed, and come from a cook and a plan that are not kept', () => {
  const nothing = Object.fromEntries(expectedNames.map((name) => [name, { low: 0, mid: 0, high: 0 }]));
  const madeAt = '2030-01-01T10:00:00.000Z';
  const bare = { name: 'A', cookId: null, planId: null, madeAt, form: 'syrup', expected: nothing, weighedKg: null };
  expect(newLotSchema.safeParse(bare).success).toBe(true);
  expect(newLotSchema.safeParse({ ...bare, madeAt: '2030-01-01T10:00:00+01:00' }).success).toBe(false);
  expect(lotChangeSchema.safeParse({ name: 'B', weighedKg: 0.5 }).success).toBe(true);
});
