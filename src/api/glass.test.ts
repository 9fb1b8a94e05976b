import { expect, expectTypeOf, it } from 'vitest';
import { glassRanges, usualPathCm } from '../core/beer/glass.ts';
import type { KeptGlass } from '../core/beer/keptGlass.ts';
import type { Tasting } from '../core/beer/tasting.ts';
import { descriptors } from '../core/lot/taste.ts';
import { type NewGlass, newGlassSchema } from './glass.ts';
import { type NewTasting, newTastingSchema } from './tasting.ts';

it('schemas and core types are the same, both ways (checked by the compiler)', () => {
  expectTypeOf<NewGlass>().toExtend<KeptGlass>();
  expectTypeOf<KeptGlass>().toExtend<NewGlass>();
  expectTypeOf<keyof NewGlass>().toEqualTypeOf<keyof KeptGlass>();
  expectTypeOf<NewTasting>().toExtend<Tasting>();
  expectTypeOf<Tasting>().toExtend<NewTasting>();
  expectTypeOf<keyof NewTasting>().toEqualTypeOf<keyof Tasting>();
});

const rest = { volumeL: 20, gravity: 1.06, a430PerCm: 0.48, attenuation: 0.75, sodiumMgPerL: 28, calciumMgPerL: 50 };
const glass = {
  name: 'Abbey',
  rest,
  doses: [],
  kettleLossL: 0,
  pathCm: usualPathCm,
  boughtPricePerKg: null,
  bottledOn: null,
};

it.each(Object.keys(rest) as (keyof typeof rest)[])('%s is taken up to its limits and no further', (field) => {
  const [least, most] = glassRanges[field];
  const passes = (value: number) => newGlassSchema.safeParse({ ...glass, rest: { ...rest, [field]: value } }).success;
  expect([least, most].map(passes)).toEqual([true, true]);
  expect([least - 1e-6, most + 1e-3, Number.NaN].map(passes)).toEqual([false, false, false]);
});

it('knows which days exist', () => {
  const passes = (bottledOn: string) => newGlassSchema.safeParse({ ...glass, bottledOn }).success;
  expect(['2028-02-29', '2027-02-29', '2027-2-1', '2027-01-01T00:00:00Z'].map(passes)).toEqual([
    true,
    false,
    false,
    false,
  ]);
});

it('takes strengths of the listed words alone, in whole steps', () => {
  const none = Object.fromEntries(descriptors.map((name) => [name, null]));
  const passes = (strengths: object) =>
    newTastingSchema.safeParse({ tastedAt: '2030-01-01T10:00:00.000Z', weeks: 2, strengths, liking: 7, note: '' })
      .success;
  expect(passes(none)).toBe(true);
  expect(passes({ ...none, cherry: 5, burnt: 0 })).toBe(true);
  expect(passes({ ...none, cherry: 6 })).toBe(false);
  expect(passes({ ...none, cherry: 2.5 })).toBe(false);
  expect(passes({ ...none, velvet: 1 })).toBe(false);
});
