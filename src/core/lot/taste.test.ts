import fc from 'fast-check';
import { expect, test } from 'vitest';
import { blindOrder } from './blind.ts';
import { descriptors, profileOf, type Strengths } from './taste.ts';

const none = Object.fromEntries(descriptors.map((name) => [name, null])) as Strengths;

test('a profile is the mean of what was asked; a word that was not asked does not count as none', () => {
  const profile = profileOf([
    { strengths: { ...none, toffee: 4, burnt: 0 } },
    { strengths: { ...none, toffee: 1 } },
    { strengths: none },
  ]);
  expect(profile).toEqual([
    { name: 'toffee', mean: 2.5, least: 1, most: 4, count: 2 },
    { name: 'burnt', mean: 0, least: 0, most: 0, count: 1 },
  ]);
});

test('a blind order holds each lot once under a code of its own, and the same seed gives it again', () => {
  const order = fc.property(fc.uniqueArray(fc.uuid(), { minLength: 2, maxLength: 40 }), fc.integer(), (ids, seed) => {
    const blind = blindOrder(ids, seed);
    expect(blind.map(({ id }) => id).toSorted()).toEqual(ids.toSorted());
    expect(new Set(blind.map(({ code }) => code)).size).toBe(ids.length);
    for (const { code } of blind) expect(code).toMatch(/^[1-9]\d\d$/);
    expect(blindOrder(ids, seed)).toEqual(blind);
  });
  fc.assert(order, { numRuns: 50 });
});

test('no place in the order is likelier than another: over 3000 seeds each of three lots is first a third of the times, within 4 %', () => {
  const first = { a: 0, b: 0, c: 0 };
  for (let seed = 0; seed < 3000; seed++) first[(blindOrder(['a', 'b', 'c'], seed)[0]?.id ?? 'a') as 'a'] += 1;
  for (const times of Object.values(first)) expect(Math.abs(times / 3000 - 1 / 3)).toBeLessThan(0.04);
});
