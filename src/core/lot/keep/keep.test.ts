import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { limits } from '../../advice/limits.ts';
import { crystalsIn, sucrosePerWater } from './crystals.ts';
import { keepingOf } from './keeping.ts';
import { letDown } from './letDown.ts';
import { fastestGainKgPerM2H, hoursToGain } from './sorption.ts';
import { growthAt } from './spoilage.ts';

const sure = (mid: number) => ({ low: mid, mid, high: mid });
const sugar = (water: number, inverted = 0) => ({ waterShare: sure(water), inverted: sure(inverted) });
const room = { roomC: 22, humidity: 0.5 };

describe('keeping', () => {
  test('by the published stages of candy: 2 % water breaks dry, 5 % is sticky, 10 % soft, 20 % syrup (sucrose, 22 C)', () => {
    const at = (water: number) => keepingOf(sugar(water), room).standing;
    expect([0.01, 0.02, 0.035, 0.055, 0.1, 0.25].map(at)).toEqual(['dry', 'dry', 'tacky', 'sticky', 'soft', 'syrup']);
  });

  test('boiled sweets of 1.5 to 4 % water have their glass transition at 28 to 49 C (published range of commercial sweets)', () => {
    for (const [water, least, most] of [
      [0.015, 44, 52],
      [0.04, 24, 32],
    ] as const) {
      const { glassC } = keepingOf(sugar(water), room);
      expect(glassC.mid).toBeGreaterThan(least);
      expect(glassC.mid).toBeLessThan(most);
      expect(glassC.high - glassC.low).toBeGreaterThan(8);
    }
  });

  test('invert never sets in a room, and draws water from drier air than sucrose does', () => {
    const invert = keepingOf(sugar(0.02, 1), room);
    expect(invert.standing).toBe('sticky');
    expect(invert.stickyAbove).toBe(0);
    expect(keepingOf(sugar(0.02), room).stickyAbove).toBeGreaterThan(0.05);
    expect(keepingOf(sugar(0.02), room).stickyAbove).toBeLessThan(0.3);
  });

  test('hard candy draws water in every living room and ends up sticky or worse (Makower & Dye 1956: amorphous sucrose above some 24 %)', () => {
    const { draws, inTheEnd, activity } = keepingOf(sugar(0.02), room);
    expect(draws).toBe(true);
    expect(activity).toBeLessThan(0.15);
    expect(inTheEnd).not.toBe('dry');
    expect(keepingOf(sugar(0.02), { roomC: 22, humidity: 0.05 }).draws).toBe(false);
  });
});

describe('water from the air', () => {
  test('is bounded by a law that gives a still indoor pool 0.1 kg/(m2 h) and not four times it (28 C, 60 %; Shah 2014, from memory)', () => {
    // The same difference of vapour the other way: a surface as dry as 0.2 in air of 60 %, as a wet one.
    const gain = fastestGainKgPerM2H(0.2, { roomC: 28, humidity: 0.6 });
    expect(gain).toBeGreaterThan(0.1);
    expect(gain).toBeLessThan(0.4);
    expect(fastestGainKgPerM2H(0.6, { roomC: 22, humidity: 0.5 })).toBe(0);
  });

  test('takes thick pieces longer than thin ones, in proportion', () => {
    const hours = (kgPerM2: number) => hoursToGain(0.01, kgPerM2, 0.1, { roomC: 22, humidity: 0.5 });
    expect(hours(9) / hours(3)).toBeCloseTo(3, 9);
  });
});

describe('crystals', () => {
  test('pure sucrose is saturated at 66.7 % at 20 C (ICUMSA SPS-2), and 2 parts invert hold it at 1.486 g/g (Grover 1947)', () => {
    expect(sucrosePerWater(0, 20)).toBeCloseTo(0.6672 / (1 - 0.6672), 2);
    expect(sucrosePerWater(2, 20)).toBeCloseTo(1.486 * (2.005 / 1.994), 2);
    expect(crystalsIn(0.66, 0, 20).sucrose).toBe('none');
    expect(crystalsIn(0.76, 0, 20).sucrose).toBe('sure');
  });

  test('at 75 %, half inverted sugar stays clear of sucrose where plain sugar does not; wholly inverted, glucose is what comes out', () => {
    expect(crystalsIn(0.75, 0.5, 20).sucrose).toBe('none');
    expect(crystalsIn(0.75, 0, 20).sucrose).not.toBe('none');
    // Honey of 17 % water with 31 % glucose has 1.82 and granulates in time (White 1962).
    expect(crystalsIn(0.83, 1, 20).glucose).toBe('likely');
    expect(crystalsIn(0.75, 1, 20).glucose).toBe('none');
  });
});

test('what grows is that of Beuchat 1981, and always something is said', () => {
  expect(growthAt(0.95).advice).toMatch(/same day/);
  expect(growthAt(0.7).says).toMatch(/moulds and yeasts/);
  expect(growthAt(0.59).says).toMatch(/nothing/);
});

describe('let down', () => {
  const wish = { massKg: 0.4, brix: 75, sugarC: 20, keptC: 20 };

  test('solids stay: whatever the sugar and the Brix, dry over all is the Brix wished', () => {
    const anyWish = fc.property(
      fc.double({ min: 0.05, max: 10, noNaN: true }),
      fc.double({ min: 50, max: 80, noNaN: true }),
      fc.double({ min: 0, max: 0.15, noNaN: true }),
      (massKg, brix, water) => {
        const { waterKg, syrupKg } = letDown(sugar(water, 0.5), { ...wish, massKg, brix });
        expect((massKg * (1 - water)) / syrupKg).toBeCloseTo(brix / 100, 9);
        expect(syrupKg).toBeCloseTo(massKg + waterKg, 9);
      },
    );
    fc.assert(anyWish, { numRuns: 60 });
  });

  test('water never goes onto hot sugar above the limits of safety; cold sugar goes into the water', () => {
    for (let sugarC = 0; sugarC <= 200; sugarC++) {
      const { order, portionKg } = letDown(sugar(0.03, 0.5), { ...wish, massKg: 2, sugarC });
      if (sugarC > limits.portionHotFrom.value) {
        expect(order).toBe('by teaspoons');
        expect(portionKg).toBeLessThanOrEqual(limits.hotSpoonful.value);
        expect(portionKg).toBeLessThanOrEqual(limits.hotPortion.value * 2);
      } else if (sugarC >= 80) expect(portionKg).toBeLessThanOrEqual(limits.coolWater.value * 2);
      else expect(order).toMatch(/pour|sugar into water/);
    }
    expect(letDown(sugar(0.03), wish).order).toBe('sugar into water');
  });

  test('refuses more solids than there are, and names both', () => {
    expect(() => letDown(sugar(0.3), wish)).toThrow(/solids wanted \(Brix\) is 75; allowed is 50 to 70/);
  });
});
