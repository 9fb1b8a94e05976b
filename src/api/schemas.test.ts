import { expect, expectTypeOf, it } from 'vitest';
import type { Kit } from '../core/pan/kit.ts';
import { defaultKit, kitRanges } from '../core/pan/kit.ts';
import type { PlanRequest } from '../core/planning/request.ts';
import { defaultRequest, requestRanges } from '../core/planning/request.ts';
import { fieldErrors } from './fieldError.ts';
import { kitSchema } from './kit.ts';
import { planRequestSchema } from './planRequest.ts';
import type { z } from './zod.ts';

it('schemas and core types are the same, both ways (checked by the compiler)', () => {
  expectTypeOf<z.infer<typeof kitSchema>>().toExtend<Kit>();
  expectTypeOf<Kit>().toExtend<z.infer<typeof kitSchema>>();
  expectTypeOf<keyof z.infer<typeof kitSchema>>().toEqualTypeOf<keyof Kit>();
  expectTypeOf<z.infer<typeof planRequestSchema>>().toExtend<PlanRequest>();
  expectTypeOf<PlanRequest>().toExtend<z.infer<typeof planRequestSchema>>();
  expectTypeOf<keyof z.infer<typeof planRequestSchema>>().toEqualTypeOf<keyof PlanRequest>();
});

it('the defaults that the app opens with pass', () => {
  expect(kitSchema.parse(defaultKit)).toEqual(defaultKit);
  expect(planRequestSchema.parse(defaultRequest)).toEqual(defaultRequest);
});

it.each(Object.entries(requestRanges))('%s is taken up to its limits and no further', (field, [least, most]) => {
  const passes = (value: number) => planRequestSchema.safeParse({ ...defaultRequest, [field]: value }).success;
  const step = (most - least) * 1e-6;
  expect([least, most].map(passes)).toEqual([true, true]);
  expect([least - step, most + step, Number.NaN, Number.POSITIVE_INFINITY].map(passes)).toEqual(Array(4).fill(false));
});

it('further holds are taken up to their limits and number, and a request from before them passes', () => {
  const passes = (...holds: readonly (readonly [number, number])[]) => {
    const moreHolds = holds.map(([celsius, minutes]) => ({ celsius, minutes }));
    return planRequestSchema.safeParse({ ...defaultRequest, moreHolds }).success;
  };
  expect(planRequestSchema.parse(defaultRequest)).not.toHaveProperty('moreHolds');
  expect([passes(), passes([110, 1], [165, 90]), passes([150, 5], [150, 5], [150, 5], [150, 5])]).toEqual([
    true,
    true,
    true,
  ]);
  expect([passes([109, 5]), passes([150, 0]), passes(...Array(5).fill([150, 5]))]).toEqual([false, false, false]);
  const wrong = planRequestSchema.safeParse({ ...defaultRequest, moreHolds: [{ celsius: 170, minutes: 5 }] });
  expect(wrong.error && fieldErrors(wrong.error)).toMatchObject([
    { field: 'moreHolds.0.celsius', message: expect.stringMatching(/is 170; .*110 to 165/) },
  ]);
});

it('the kit is taken up to its limits', () => {
  const [lowest, highest] = kitRanges.altitudeM;
  for (const altitudeM of [lowest, highest])
    expect(kitSchema.safeParse({ ...defaultKit, altitudeM }).success).toBe(true);
  expect(kitSchema.safeParse({ ...defaultKit, altitudeM: highest + 1 }).success).toBe(false);
});

it('a kit from before hardness was asked for is taken as it is, and one with it up to its limits', () => {
  const { water } = defaultKit;
  expect(JSON.stringify(kitSchema.parse(defaultKit))).toBe(JSON.stringify(defaultKit));
  const hard = (hardnessMgPerL: unknown) => kitSchema.safeParse({ ...defaultKit, water: { ...water, hardnessMgPerL } });
  for (const mgPerL of kitRanges.hardnessMgPerL) expect(hard(mgPerL).success).toBe(true);
  for (const wrong of [-1, 1501, '10 dH', null]) expect(hard(wrong).success).toBe(false);
});

it('every field that is wrong is named, and a long value is cut short', () => {
  const refused = planRequestSchema.safeParse({ ...defaultRequest, name: 'x'.repeat(500), massKg: -1, sugar: 1 });
  const errors = refused.error ? fieldErrors(refused.error) : [];
  expect(errors.map(({ field }) => field).toSorted()).toEqual(['massKg', 'name', 'sugar']);
  for (const { message } of errors) expect(message.length).toBeLessThan(400);
});
