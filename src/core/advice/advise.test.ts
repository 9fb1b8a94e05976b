import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { hold } from '../../../test/holdStep.ts';
import { createHiddenPan } from '../pan/hiddenPan.ts';
import { defaultKit } from '../pan/kit.ts';
import { prepareKit } from '../pan/preparedKit.ts';
import type { Step } from '../pan/steps.ts';
import { normalNumbers } from '../reactions/normal.ts';
import { createTwin } from '../twin/twin.ts';
import { advise, situationOf, usualHorizon } from './advise.ts';
import { alkaliPart, mostWaterKg, type Situation, steering } from './candidates.ts';
import { limits } from './limits.ts';
import { afterDeed, atTheStart, isOver, minuteWorth, progressed } from './progress.ts';

const prepared = prepareKit(defaultKit);
const charge = { sucroseKg: 0.4, waterKg: 0.13, maltExtractKg: 0.0032, citricAcidKg: 0 };
const part = { substance: 'sodiumHydroxide', alkaliKg: 0.0005, waterKg: 0.0019 } as const;
const brown: Step = { ...hold, kind: 'brown', bandC: [137, 143], alkali: [part, part], waitS: 30 };

describe('no candidate outside the limits is ever offered', () => {
  const situations = fc.record({
    temperatureC: fc.double({ min: 20, max: 200, noNaN: true }),
    spread: fc.double({ min: 0, max: 15, noNaN: true }),
    notch: fc.integer({ min: 0, max: 9 }),
    syrupKg: fc.double({ min: 0.1, max: 3, noNaN: true }),
    spoonM3: fc.double({ min: 1e-6, max: 2e-5, noNaN: true }),
    approaching: fc.boolean(),
    partsGiven: fc.integer({ min: 0, max: 3 }),
    sinceS: fc.double({ min: 0, max: 100, noNaN: true }),
    material: fc.constantFrom('stainless' as const, 'aluminium' as const, 'unknownCoating' as const),
  });

  test('whatever the readings say', () => {
    fc.assert(
      fc.property(situations, (any) => {
        const s: Situation = {
          timeS: 1000,
          kit: { ...defaultKit, spoonM3: any.spoonM3, pan: { ...defaultKit.pan, material: any.material } },
          steps: [brown],
          progress: { ...atTheStart, partsGiven: any.partsGiven, lastPartS: 1000 - any.sinceS },
          notch: any.notch,
          temperatureC: any.temperatureC,
          highC: any.temperatureC + any.spread,
          syrupKg: any.syrupKg,
          solids: 0.95,
        };
        for (const { deeds } of steering(s, any.approaching)) {
          for (const deed of deeds) {
            if (deed.kind === 'water') {
              expect(deed.waterKg).toBeLessThanOrEqual(mostWaterKg(s));
              if (s.highC > limits.portionHotFrom.value)
                expect(deed.waterKg).toBeLessThanOrEqual(limits.hotSpoonful.value);
              expect(s.highC).toBeLessThanOrEqual(limits.roastTemperature.value);
            } else if (deed.kind === 'heat') {
              expect(deed.notch).toBeGreaterThanOrEqual(0);
              expect(deed.notch).toBeLessThanOrEqual(9);
              if (s.highC > limits.roastTemperature.value) expect(deed.notch).toBeLessThan(s.notch);
            } else throw new Error(`${deed.kind} is not for steering`);
          }
        }
        const alkali = alkaliPart(s);
        if (alkali) {
          expect(s.highC).toBeLessThanOrEqual(limits.alkaliTemperature.value);
          expect(any.partsGiven).toBeLessThan(brown.alkali.length);
          expect(any.sinceS).toBeGreaterThanOrEqual(brown.waitS);
          expect(any.material).toBe('stainless');
        }
      }),
      { numRuns: 500 },
    );
  });
});

describe('a minute of a hold', () => {
  test('counts as one at the middle of the band, more above it and less below', () => {
    expect(minuteWorth('invert', 130, 130)).toBeCloseTo(1, 12);
    // Arrhenius with 109 kJ/mol: 3 C at 130 C is a factor exp(109e3/8.314 x 3/(403.15 x 406.15)) = 1.271.
    expect(minuteWorth('invert', 133, 130)).toBeCloseTo(1.271, 3);
    expect(minuteWorth('brown', 137, 140)).toBeLessThan(1);
    expect(minuteWorth('invert', 80, 130)).toBe(0);
    expect(minuteWorth('climb', 130, 130)).toBe(0);
  });

  test('counts only from the band’s lower edge on, and a new step starts anew', () => {
    const cold = progressed(atTheStart, hold, 60, 60, 120);
    expect(cold.heldMinutes).toBe(0);
    const warm = progressed(cold, hold, 120, 60, 130);
    expect(warm.heldMinutes).toBeCloseTo(1, 9);
    expect(isOver({ ...warm, heldMinutes: 30 }, hold, 130, 0.9)).toBe(true);
    expect(afterDeed(warm, { kind: 'step', index: 1 }, 500).heldMinutes).toBe(0);
  });
});

/** A twin that has followed a pan up to a temperature at a dial setting. */
function followed(steps: readonly Step[], notch: number, untilC: number, on = prepared) {
  const truth = createHiddenPan(on, charge, normalNumbers(3), { widening: 0.3, noiseC: 0.2, spoonScatter: 0 });
  const twin = createTwin(on, charge, { members: 48, seed: 1 });
  const heat = { kind: 'heat', notch } as const;
  truth.perform(heat);
  twin.take({ timeS: 0, deed: heat });
  for (let t = 10; truth.temperatureC < untilC && t < 7200; t += 10) {
    truth.moveTo(t);
    twin.take({ timeS: t, observation: { kind: 'reading', valueC: truth.reading(), byHand: false } });
  }
  return { twin, kit: on.kit, steps, progress: { ...atTheStart, inBandSinceS: twin.timeS } };
}

test('a pan that boils up through its band at full heat is turned down or cooled, and soon', () => {
  const cooking = followed([hold], 7, 131);
  const advice = advise(cooking, { ...usualHorizon, members: 16 });
  expect(advice.kind).toBe('steer');
  expect(advice.urgency).not.toBe('go on');
  expect(advice.deeds.some((d) => d.kind === 'water' || (d.kind === 'heat' && d.notch < 7))).toBe(true);
  expect(advice.leavesBand).toBeGreaterThan(0.5);
});

test('alkali is advised only off the heat, and not in syrup hotter than its limit', () => {
  const hot = followed([brown], 6, 138);
  const progress = { ...atTheStart, turnedS: 0 };
  const first = advise({ ...hot, progress }, { ...usualHorizon, members: 16 });
  expect(first.kind).toBe('cool first');
  expect(first.deeds).toEqual([{ kind: 'heat', notch: 0 }]);
  hot.twin.take({ timeS: hot.twin.timeS, deed: { kind: 'heat', notch: 0 } });
  expect(situationOf({ ...hot, progress: atTheStart }).highC).toBeGreaterThan(limits.alkaliTemperature.value);
  expect(advise({ ...hot, progress }, { ...usualHorizon, members: 16 }).kind).toBe('wait');
});

test('near the roast limit the only advice is off the heat, and water is not spoken of', () => {
  const roast: Step = { ...hold, kind: 'roast', bandC: [152, 158] };
  const cooking = followed([roast], 7, 160);
  const advice = advise(cooking, { ...usualHorizon, members: 16 });
  expect(advice.kind).toBe('off the heat');
  expect(advice.urgency).toBe('act now');
  expect(advice.deeds).toEqual([{ kind: 'heat', notch: 0 }]);
});

test('a hold that is done is followed by the next step, and the last by the pour', () => {
  const cooking = followed([hold, brown], 5, 130);
  const progress = { ...cooking.progress, heldMinutes: 31 };
  expect(advise({ ...cooking, progress }, { ...usualHorizon, members: 8 }).deeds).toEqual([{ kind: 'step', index: 1 }]);
  expect(advise({ ...cooking, steps: [hold], progress }, { ...usualHorizon, members: 8 }).kind).toBe('pour');
});

test('a pan that gets nowhere just below its band is turned up, though a slow ring shows its gain only later', () => {
  const coil = prepareKit({ ...defaultKit, stove: { kind: 'coil', ratedPowerW: 1000, notches: 6 } });
  const pan = followed([], 1, 155, coil);
  const steadyC = situationOf({ ...pan, steps: [hold], progress: atTheStart }).temperatureC;
  const above: Step = { ...hold, bandC: [steadyC + 2, steadyC + 8], approachNotch: 1, holdNotch: 1 };
  const advice = advise({ ...pan, steps: [above], progress: { ...atTheStart, turnedS: 0, notch: 1 } });
  expect(advice).toMatchObject({ kind: 'steer', urgency: 'next', deeds: [{ kind: 'heat', notch: 2 }] });
});
