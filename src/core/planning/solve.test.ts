import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { limits } from '../advice/limits.ts';
import { equivalentsOf } from '../pan/deeds.ts';
import { defaultKit, type Kit } from '../pan/kit.ts';
import { centralValues } from '../pan/model.ts';
import { prepareKit } from '../pan/preparedKit.ts';
import { landedIn } from './odds.ts';
import { defaultRequest, type Route } from './request.ts';
import { landsNear, solve } from './solve.ts';

const prepared = prepareKit(defaultKit);
const aimAt = (ebc: number) => ({ colour: { a430: ebc / 25 } });

function solved(...args: Parameters<typeof solve>) {
  const found = solve(...args);
  if (found.kind === 'refused') throw new Error(found.refusals.map(({ message }) => message).join('; '));
  return found;
}

describe('a plan made for a colour', () => {
  test('lands within 2 EBC or 3 % of it in the median kit, cooked anew, on every route (40 aims: bench/results/solve.md)', () => {
    for (const [ebc, route] of [
      [3, 'pale'],
      [25, 'bright'],
      [120, 'bright'],
      [60, 'deep'],
      [210, 'deep'],
    ] as const) {
      const { plan, aimA430, short } = solved(aimAt(ebc), defaultRequest, prepared, [route]);
      const { a430 } = landedIn(plan, prepared, centralValues(defaultKit), () => 0);
      expect(landsNear(a430, aimA430), `${ebc} EBC, ${route}: ${25 * a430}`).toBe(true);
      expect(short).toBeUndefined();
      expect(plan.request.route).toBe(route);
    }
  });

  test('keeps mass, form and Brix', () => {
    const { plan } = solved(aimAt(50), { ...defaultRequest, form: 'syrup', syrupSolids: 0.76, massKg: 0.3 }, prepared);
    expect(plan.request).toMatchObject({ form: 'syrup', syrupSolids: 0.76, massKg: 0.3 });
    expect(Math.abs(plan.yieldKg / 0.3 - 1)).toBeLessThan(0.01);
  });

  test('tastes more of roast when that is wished for, and more of fruit when that is', () => {
    const fruity = solved({ ...aimAt(80), taste: { fruit: 6, roast: 0 } }, defaultRequest, prepared).made.taste;
    const roasty = solved({ ...aimAt(80), taste: { roast: 9 } }, defaultRequest, prepared).made.taste;
    expect(roasty.roast).toBeGreaterThan(fruity.roast + 3);
    expect(fruity.fruit).toBeGreaterThanOrEqual(roasty.fruit - 0.5);
  });
});

describe('an aim out of reach', () => {
  test('is answered with the nearest plan, and which limit stands in the way', () => {
    const dark = solved(aimAt(700), defaultRequest, prepared);
    expect(dark.offBy).toBeLessThan(0.8);
    expect(dark.short).toContain('LIM-ALKALI-DOSE');
    const pale = solved(aimAt(1), defaultRequest, prepared, ['deep']);
    expect(pale.offBy).toBeGreaterThan(1.2);
    expect(pale.short).toContain('least alkali');
  });

  test('in an aluminium pan goes the pale route and says what bars the others; deep alone is refused', () => {
    const kit: Kit = { ...defaultKit, pan: { ...defaultKit.pan, material: 'aluminium' } };
    const found = solved(aimAt(60), defaultRequest, prepareKit(kit));
    expect(found.plan.request.route).toBe('pale');
    expect(found.short).toContain('hydrogen');
    const deep = solve(aimAt(60), defaultRequest, prepareKit(kit), ['deep']);
    expect(deep).toMatchObject({ kind: 'refused', refusals: [{ limit: 'LIM-PAN' }] });
  });
});

test('no plan breaks a limit of safety, whatever colour, taste and batch are wished for; every refusal names its limit and what is allowed', () => {
  const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  const anyWish = fc.record({
    a430: fc.oneof(within(0.01, 1), within(1, 52)),
    fruit: fc.option(within(0, 10), { nil: undefined }),
    roast: fc.option(within(0, 10), { nil: undefined }),
    massKg: within(0.1, 0.8),
    form: fc.constantFrom('hard' as const, 'syrup' as const),
    alkali: fc.constantFrom('sodiumHydroxide' as const, 'calciumHydroxide' as const),
    alkaliGPerKg: within(0.2, 12),
    solutionStrength: within(0.05, 0.4),
    invertC: within(110, 140),
    roastC: within(145, 165),
    routes: fc.subarray<Route>(['pale', 'bright', 'deep'], { minLength: 1 }),
    material: fc.constantFrom('stainless' as const, 'aluminium' as const, 'unknownCoating' as const),
    spoonM3: within(1e-6, 2e-5),
  });
  fc.assert(
    fc.property(anyWish, ({ a430, fruit, roast, routes, material, spoonM3, ...changes }) => {
      const kit: Kit = { ...defaultKit, spoonM3, pan: { ...defaultKit.pan, material } };
      const request = { ...defaultRequest, ...changes, invertMinutes: 10, brownMinutes: 6, roastMinutes: 2 };
      const found = solve({ colour: { a430 }, taste: { fruit, roast } }, request, prepareKit(kit), routes);
      if (found.kind === 'refused') {
        expect(found.refusals.length).toBeGreaterThan(0);
        for (const { limit, message } of found.refusals) {
          expect(limit).toMatch(/^LIM-/);
          expect(message).toContain('allowed');
        }
        return;
      }
      const { amounts, fit, steps } = found.plan;
      const sugarKg = amounts.charge.sucroseKg;
      const parts = amounts.alkali?.parts ?? [];
      expect(fit.fill).toBeLessThanOrEqual(limits.fillWithDosing.value);
      expect(spoonM3 * 1000).toBeLessThanOrEqual(limits.hotSpoonful.value);
      if (parts.length > 0) expect(material).toBe('stainless');
      expect(parts.reduce((sum, part) => sum + equivalentsOf(part), 0) / sugarKg).toBeLessThanOrEqual(
        limits.alkaliPerSugar.value + 1e-9,
      );
      for (const { waterKg } of parts) expect(waterKg / sugarKg).toBeLessThanOrEqual(limits.hotPortion.value + 1e-9);
      if (amounts.alkali) {
        expect(amounts.alkali.strength).toBeLessThanOrEqual(limits.solutionStrength.value + 1e-9);
        const before = steps[steps.findIndex(({ alkali }) => alkali.length > 0) - 1];
        expect(before?.bandC[1]).toBeLessThanOrEqual(limits.alkaliTemperature.value);
      }
      for (const { kind, bandC } of steps) {
        if (kind !== 'letDown') expect(bandC[1]).toBeLessThanOrEqual(limits.roastTemperature.value);
      }
    }),
    { numRuns: 16, endOnFailure: true },
  );
}, 120_000);
