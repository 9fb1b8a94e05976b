import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { usualHorizon } from '../advice/advise.ts';
import { alkaliBlockedBy, limits } from '../advice/limits.ts';
import { createRehearsal, followAdvice } from '../advice/rehearsal.ts';
import { waterShare } from '../pan/course.ts';
import { equivalentsOf } from '../pan/deeds.ts';
import { defaultKit, type Kit } from '../pan/kit.ts';
import { drawnValues } from '../pan/model.ts';
import { prepareKit } from '../pan/preparedKit.ts';
import { simulate } from '../pan/simulate.ts';
import { dissolvedKg, place } from '../pan/state.ts';
import { normalNumbers } from '../reactions/normal.ts';
import { begunOf } from './begunOf.ts';
import { dialSettings } from './dial.ts';
import { planFor } from './plan.ts';
import { defaultRequest, furtherHoldRanges, type PlanRequest, requestRanges } from './request.ts';
import { isHold } from './steps.ts';

const prepared = prepareKit(defaultKit);

function madePlan(request: PlanRequest, kit = prepared) {
  const planned = planFor(request, kit);
  if (planned.kind === 'refused') throw new Error(planned.refusals.map((r) => r.message).join('; '));
  return planned;
}

function refusedLimits(request: PlanRequest, kit: Kit = defaultKit): string[] {
  const planned = planFor(request, prepareKit(kit));
  return planned.kind === 'refused' ? planned.refusals.map(({ limit }) => limit) : [];
}

describe('further holds', () => {
  const held = { ...defaultRequest, massKg: 0.3, invertMinutes: 10, brownMinutes: 8 };

  test('follow those of the route, each of the kind that its heat makes it, and are held as long as asked', () => {
    const moreHolds = [
      { celsius: 144, minutes: 6 },
      { celsius: 156, minutes: 3 },
    ];
    const { plan, course } = madePlan({ ...held, route: 'bright', moreHolds });
    expect(plan.steps.map(({ kind }) => kind)).toEqual(['dissolve', 'climb', 'invert', 'brown', 'brown', 'roast']);
    expect(plan.steps.slice(-2).map(({ bandC, end, alkali }) => [bandC, end, alkali])).toEqual([
      [[141, 147], { heldMinutes: 6 }, []],
      [[153, 159], { heldMinutes: 3 }, []],
    ]);
    expect(course.ending).toBe('poured');
    for (const [i, { minutes }] of moreHolds.entries()) {
      const { startS, endS } = course.steps[4 + i];
      expect((endS - startS) / 60).toBeGreaterThanOrEqual(minutes);
      // The way up to the band comes on top.
      expect((endS - startS) / 60).toBeLessThan(minutes + 6);
    }
    expect(Math.abs(plan.yieldKg / 0.3 - 1)).toBeLessThan(0.01);
    expect(waterShare(course).at(-1)).toBeLessThan(
      waterShare(madePlan({ ...held, route: 'bright' }).course).at(-1) ?? 0,
    );
  });

  test('invert on where there is no alkali, and come before the cast or the letting down', () => {
    const moreHolds = [{ celsius: 135, minutes: 5 }];
    const kinds = (form: PlanRequest['form']) =>
      madePlan({ ...held, route: 'pale', form, moreHolds }).plan.steps.map(({ kind }) => kind);
    expect(kinds('hard')).toEqual(['dissolve', 'climb', 'invert', 'invert', 'cast']);
    expect(kinds('syrup')).toEqual(['dissolve', 'climb', 'invert', 'invert', 'letDown']);
  });

  test('are gone through one after the other by who follows the advice, also two of a kind', () => {
    const moreHolds = [
      { celsius: 144, minutes: 3 },
      { celsius: 147, minutes: 2 },
      { celsius: 150, minutes: 2 },
    ];
    const short = { ...held, massKg: 0.2, route: 'bright', invertMinutes: 3, brownMinutes: 3, moreHolds } as const;
    const { plan } = madePlan(short);
    const begun = begunOf(plan, defaultKit, { mode: 'rehearsal', rehearsal: { seed: 2, speed: 1 }, planId: null });
    const rehearsal = createRehearsal({ prepared, begun, members: 16 });
    const horizon = { ...usualHorizon, members: 8 };
    followAdvice(rehearsal, plan.steps, { reactionS: 25, longestS: 3 * 3600, horizon });
    const begunSteps = rehearsal.deeds.flatMap(({ deed }) => (deed.kind === 'step' ? [deed.index] : []));
    expect(begunSteps).toEqual(plan.steps.slice(1).map((_, i) => i + 1));
    expect(plan.steps.filter(({ kind }) => kind === 'roast')).toHaveLength(2);
    expect(rehearsal.progress.poured).toBe(true);
  }, 30_000);

  test('make no difference where there are none: a plan from before them is the same', () => {
    const { plan } = madePlan(held);
    expect(madePlan({ ...held, moreHolds: [] }).plan.steps).toEqual(plan.steps);
    expect(madePlan({ ...held, moreHolds: undefined }).plan.amounts).toEqual(plan.amounts);
  });

  test('are refused where they would have to cool, or are too hot, each by its place', () => {
    const refusals = (...holds: readonly (readonly [number, number])[]) => {
      const moreHolds = holds.map(([celsius, minutes]) => ({ celsius, minutes }));
      const planned = planFor({ ...held, moreHolds }, prepared);
      return planned.kind === 'refused' ? planned.refusals.map(({ limit, field }) => [limit, field]) : [];
    };
    expect(refusals([154, 5])).toEqual([['LIM-ORDER', 'moreHolds.0.celsius']]);
    expect(refusals([158, 5], [157, 5])).toEqual([['LIM-ORDER', 'moreHolds.1.celsius']]);
    expect(refusals([156, 5], [160, 5])).toEqual([['LIM-ROAST', 'moreHolds.1.celsius']]);
    expect(refusals([155, 5], [155, 5])).toEqual([]);
  });

  test('that are no holds are named with what is allowed', () => {
    const asked = (celsius: number, minutes: number) => () =>
      planFor({ ...held, moreHolds: [{ celsius, minutes }] }, prepared);
    expect(asked(100, 5)).toThrow('moreHolds.0.celsius is 100; allowed is 110 to 165');
    expect(asked(156, 0)).toThrow('moreHolds.0.minutes is 0; allowed is 1 to 90');
    const many = Array.from({ length: 5 }, () => ({ celsius: 156, minutes: 1 }));
    expect(() => planFor({ ...held, moreHolds: many }, prepared)).toThrow('further holds is 5; allowed is 0 to 4');
  });
});

describe('a plan', () => {
  test('yields the mass asked for within 1 %, hard and syrup, on every route', () => {
    for (const route of ['pale', 'bright', 'deep'] as const) {
      for (const form of ['hard', 'syrup'] as const) {
        const { plan, course } = madePlan({ ...defaultRequest, route, form, massKg: 0.4 });
        expect(course.ending, `${route} ${form}`).toBe('poured');
        expect(Math.abs(plan.yieldKg / 0.4 - 1), `${route} ${form}`).toBeLessThan(0.01);
      }
    }
  });

  test('lets a syrup down to the Brix asked for', () => {
    const { course } = madePlan({ ...defaultRequest, form: 'syrup', syrupSolids: 0.76 });
    // Mass balance: solids share of what is poured, within one cool portion of water (2 %).
    const dry = dissolvedKg(course.last);
    const solids = dry / (dry + course.last[place.waterKg]);
    expect(solids).toBeLessThan(0.765);
    expect(solids).toBeGreaterThan(0.735);
  });

  test('weighs alkali for its active share, and the solution for its strength, as by hand', () => {
    const { plan } = madePlan({ ...defaultRequest, alkaliGPerKg: 5, solutionStrength: 0.2 });
    const { charge, alkali } = plan.amounts;
    if (!alkali) throw new Error('no alkali planned');
    // 5 g pure NaOH per kg; 97 % active: 5.155 g weighed; 25 g of 20 % solution less what was weighed is water.
    expect((alkali.pureKg / charge.sucroseKg) * 1000).toBeCloseTo(5, 9);
    expect((alkali.weighedKg / charge.sucroseKg) * 1000).toBeCloseTo(5 / 0.97, 9);
    expect((alkali.waterKg + alkali.weighedKg) / charge.sucroseKg).toBeCloseTo(0.025, 9);
    // 5 g / 39.997 g/mol = 0.125 eq for each kg.
    expect(alkali.equivalents / charge.sucroseKg).toBeCloseTo(0.12501, 4);
  });

  test('takes the acid instead of alkali on the pale route', () => {
    const { plan } = madePlan({ ...defaultRequest, route: 'pale' });
    expect(plan.amounts.alkali).toBeUndefined();
    expect((plan.amounts.charge.citricAcidKg / plan.amounts.charge.sucroseKg) * 1000).toBeCloseTo(1.5, 9);
    expect(plan.steps.some(({ kind }) => kind === 'brown')).toBe(false);
  });

  test('ends bright hard sugar above 150 C, where it shatters', () => {
    const { plan, course } = madePlan({ ...defaultRequest, route: 'bright' });
    expect(plan.steps.at(-1)?.kind).toBe('cast');
    expect(course.readingC.at(-1)).toBeGreaterThan(150);
  });
});

describe('what a plan tells', () => {
  test('of the dial is what its cook did: the last setting told is the one the step ends with', () => {
    for (const route of ['pale', 'bright', 'deep'] as const) {
      const { course } = madePlan({ ...defaultRequest, route });
      for (const [i, { startS, endS, kind }] of course.steps.entries()) {
        const turns = course.deeds.flatMap(({ timeS, deed }) =>
          deed.kind === 'heat' && timeS >= startS && timeS < endS ? [deed.notch] : [],
        );
        expect(dialSettings(course, i).at(-1), `${route} ${kind}`).toBe(turns.at(-1));
      }
    }
  });

  test('of depth and foam is whole millimetres, and the probe is covered by the depth told', () => {
    for (const massKg of [0.37, 0.38, 0.385, 0.39, 0.4, 0.5]) {
      const { fit } = madePlan({ ...defaultRequest, massKg }).plan;
      for (const m of [fit.depthM, fit.foamM]) expect(m * 1000).toBeCloseTo(Math.round(m * 1000), 9);
      expect(fit.probeCovered, `${massKg} kg`).toBe(Math.round(fit.depthM * 1000) >= 15);
    }
  });

  test('of the most the pan takes is told as weighed in and as finished, and a plan for that much is made', () => {
    const { plan } = madePlan({ ...defaultRequest, form: 'syrup', syrupSolids: 0.7 });
    const { fit, mostFinishedKg, amounts, yieldKg } = plan;
    // A syrup holds water: more is poured than was weighed in.
    expect(mostFinishedKg / fit.mostSugarKg).toBeCloseTo(yieldKg / amounts.charge.sucroseKg, 9);
    expect(mostFinishedKg).toBeGreaterThan(1.2 * fit.mostSugarKg);
    const largest = { ...defaultRequest, form: 'syrup' as const, syrupSolids: 0.7, massKg: 0.97 * mostFinishedKg };
    expect(madePlan(largest).plan.amounts.charge.sucroseKg).toBeLessThan(fit.mostSugarKg);
  });

  test('of weak lye names its strength, its parts, and a strength that takes a dozen at most; a usual one has no caution', () => {
    const weak = madePlan({ ...defaultRequest, solutionStrength: 0.02 }).plan;
    const [caution] = weak.cautions;
    expect(caution.field).toBe('solutionStrength');
    // 5 g/kg at 2 %: 250 g of solution less 5.2 g weighed is 245 g of water, by 5 g a part for each kg of sugar.
    expect(weak.amounts.alkali?.parts).toHaveLength(49);
    expect(caution.message).toMatch(/^at 2 % .* 49 parts, 30 s apart: 25 minutes/);
    const [, percent, parts] = /At (\d+) % it takes (\d+) parts/.exec(caution.message) ?? [];
    const stronger = madePlan({ ...defaultRequest, solutionStrength: Number(percent) / 100 }).plan;
    expect(stronger.amounts.alkali?.parts).toHaveLength(Number(parts));
    expect(Number(parts)).toBeLessThanOrEqual(12);
    expect(stronger.cautions).toEqual([]);
    expect(madePlan(defaultRequest).plan.cautions).toEqual([]);
    expect(madePlan({ ...defaultRequest, route: 'pale', solutionStrength: 0.01 }).plan.cautions).toEqual([]);
  });
});

describe('a number outside its limits', () => {
  test('is named with what is allowed, and never simulated', () => {
    const asked: readonly (readonly [Partial<PlanRequest>, string])[] = [
      [{ massKg: 0 }, 'massKg is 0; allowed is 0.1 to 5'],
      [{ massKg: -1 }, 'massKg is -1'],
      [{ massKg: Number.NaN }, 'massKg is NaN'],
      [{ alkaliGPerKg: -3 }, 'alkaliGPerKg is -3'],
      [{ invertC: 500 }, 'invertC is 500'],
    ];
    for (const [changes, message] of asked) {
      expect(() => planFor({ ...defaultRequest, ...changes }, prepared)).toThrow(message);
    }
    expect(() => prepareKit({ ...defaultKit, roomC: 400 })).toThrow('roomC is 400; allowed is 0 to 45');
  });
});

test('a syrup plan says how much hot water letting down takes; by mass balance', () => {
  const { plan, course } = madePlan({ ...defaultRequest, form: 'syrup', syrupSolids: 0.7 });
  const before = course.steps[course.steps.length - 1].startS;
  const row = Math.ceil(before) + 1;
  const gained =
    course.last[place.waterKg] +
    course.last[place.steamKg] -
    course.states[place.waterKg][row - 1] -
    course.states[place.steamKg][row - 1];
  // What reactions drink or give in those minutes is a fraction of a gram.
  expect(Math.abs(plan.letDownWaterKg - gained)).toBeLessThan(0.003);
  expect(madePlan(defaultRequest).plan.letDownWaterKg).toBe(0);
});

test('water is never overdrawn, in the widest pan on any ring', () => {
  for (const kind of ['coil', 'gas'] as const) {
    const wide = prepareKit({
      ...defaultKit,
      stove: { ...defaultKit.stove, kind },
      pan: { ...defaultKit.pan, diameterM: 0.45 },
    });
    const planned = planFor(defaultRequest, wide);
    if (planned.kind === 'refused') throw new Error('refused');
    const recipe = { charge: planned.plan.amounts.charge, steps: planned.plan.steps };
    for (let seed = 1; seed <= 12; seed++) {
      const course = simulate(recipe, wide, drawnValues(wide.kit, normalNumbers(seed)), {
        everyS: 10,
        normal: normalNumbers(-seed),
      });
      // The integrator may undershoot the last trace by its own error, some 0.01 g; shares show that as none.
      for (const kg of course.states[place.waterKg]) expect(kg).toBeGreaterThan(-3e-5);
      for (const share of waterShare(course)) expect(share).toBeGreaterThanOrEqual(0);
    }
  }
});

describe('a limit of safety', () => {
  test('refuses a spoon that holds more than a teaspoon, and a roast cooler than the browning', () => {
    expect(refusedLimits(defaultRequest, { ...defaultKit, spoonM3: 1e-5 })).toContain('LIM-SPOONFUL');
    expect(refusedLimits(defaultRequest, { ...defaultKit, spoonM3: 5e-6 })).toEqual([]);
    expect(refusedLimits({ ...defaultRequest, brownC: 150, roastC: 146 })).toContain('LIM-ORDER');
  });

  test('refuses alkali in aluminium and in coated pans, and allows the pale route there', () => {
    for (const material of alkaliBlockedBy) {
      const kit = { ...defaultKit, pan: { ...defaultKit.pan, material } };
      expect(refusedLimits(defaultRequest, kit)).toContain('LIM-PAN');
      expect(refusedLimits({ ...defaultRequest, route: 'pale' }, kit)).toEqual([]);
    }
  });

  test('refuses too much alkali, in the terms of either substance', () => {
    expect(refusedLimits({ ...defaultRequest, alkaliGPerKg: 8.1 })).toContain('LIM-ALKALI-DOSE');
    expect(refusedLimits({ ...defaultRequest, alkaliGPerKg: 7.9 })).toEqual([]);
    expect(refusedLimits({ ...defaultRequest, alkali: 'calciumHydroxide', alkaliGPerKg: 7.5 })).toContain(
      'LIM-ALKALI-DOSE',
    );
  });

  test('refuses a batch that fills the pan, and says how much fits', () => {
    const planned = planFor({ ...defaultRequest, massKg: 2 }, prepared);
    if (planned.kind !== 'refused') throw new Error('not refused');
    expect(planned.refusals[0].field).toBe('massKg');
    const most = Number(/takes up to (\d+) g/.exec(planned.refusals[0].message)?.[1]);
    expect(planFor({ ...defaultRequest, massKg: (most * 0.97) / 1000 }, prepared).kind).toBe('plan');
  });

  test('holds in every plan that is made, whatever is asked', () => {
    const within = ([low, high]: readonly [number, number]) => fc.double({ min: low, max: high, noNaN: true });
    const anyRequest = fc.record({
      name: fc.constant('any'),
      massKg: within([0.1, 1]),
      form: fc.constantFrom('hard' as const, 'syrup' as const),
      syrupSolids: within(requestRanges.syrupSolids),
      route: fc.constantFrom('pale' as const, 'bright' as const, 'deep' as const),
      alkali: fc.constantFrom('sodiumHydroxide' as const, 'calciumHydroxide' as const),
      alkaliGPerKg: within(requestRanges.alkaliGPerKg),
      solutionStrength: within(requestRanges.solutionStrength),
      acidGPerKg: within(requestRanges.acidGPerKg),
      maltExtractGPerKg: within(requestRanges.maltExtractGPerKg),
      invertC: within(requestRanges.invertC),
      invertMinutes: within([0, 40]),
      brownC: within(requestRanges.brownC),
      brownMinutes: within([0, 30]),
      roastC: within(requestRanges.roastC),
      roastMinutes: within([0, 10]),
      moreHolds: fc.array(fc.record({ celsius: within(furtherHoldRanges.celsius), minutes: within([1, 6]) }), {
        maxLength: 2,
      }),
    });
    fc.assert(
      fc.property(anyRequest, (request) => {
        const planned = planFor(request, prepared);
        if (planned.kind === 'refused') {
          for (const { limit, message } of planned.refusals) {
            expect(limit).toMatch(/^LIM-/);
            expect(message).toContain('allowed');
          }
          return;
        }
        const { amounts, fit, steps } = planned.plan;
        const sugar = amounts.charge.sucroseKg;
        expect(fit.fill).toBeLessThanOrEqual(limits.fillWithDosing.value);
        const eq = (amounts.alkali?.parts ?? []).reduce((sum, part) => sum + equivalentsOf(part), 0);
        expect(eq / sugar).toBeLessThanOrEqual(limits.alkaliPerSugar.value + 1e-9);
        for (const { waterKg } of amounts.alkali?.parts ?? []) {
          expect(waterKg / sugar).toBeLessThanOrEqual(limits.hotPortion.value + 1e-9);
        }
        for (const step of steps) {
          if (step.kind !== 'letDown') expect(step.bandC[1]).toBeLessThanOrEqual(limits.roastTemperature.value);
        }
        const further = steps.filter(isHold).slice(-request.moreHolds.length - 1);
        if (request.moreHolds.length > 0) {
          const lows = further.map(({ bandC }) => bandC[0]);
          expect(lows).toEqual(lows.toSorted((a, b) => a - b));
        }
        if (amounts.alkali) expect(amounts.alkali.strength).toBeLessThanOrEqual(limits.solutionStrength.value + 1e-9);
      }),
      { numRuns: 40 },
    );
  });
});
