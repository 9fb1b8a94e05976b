import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  dryEnthalpyJPerKg,
  dryHeatCapacityJPerKgK,
  handbookHeatCapacityJPerKgK,
  syrupHeatCapacityJPerKgK,
} from './heatCapacity.ts';
import { liquidHeatCapacityJPerKgK } from './water.ts';

test('heat capacity by mass agrees with the Sugar Technologists Manual to 94 C and 90 % within 1 %', () => {
  let worst = 0;
  for (let w = 0; w <= 0.9001; w += 0.1) {
    for (let t = 0; t <= 94; t += 2) {
      const handbook = handbookHeatCapacityJPerKgK(Math.min(w, 0.9), t);
      worst = Math.max(worst, Math.abs(syrupHeatCapacityJPerKgK(Math.min(w, 0.9), t) / handbook - 1));
    }
  }
  console.log('heat capacity against the handbook, worst:', worst);
  expect(worst).toBeLessThan(0.01);
});

test('heat capacity joins where the two lines for sugar meet, within 1 J/kg K', () => {
  expect(dryHeatCapacityJPerKgK(94 + 1e-9)).toBeCloseTo(dryHeatCapacityJPerKgK(94), 0);
});

test('molten sugar gains heat capacity as slowly as supercooled liquid sucrose does (Magon et al. 2014)', () => {
  // 1301.5 + 2.9317 T(K), from memory.
  for (const t of [100, 150, 190]) expect(dryHeatCapacityJPerKgK(t)).toBeCloseTo(1301.5 + 2.9317 * (t + 273.15), -1);
});

test('enthalpy of the dry solids is the integral of their heat capacity, and zero at 0 C', () => {
  expect(dryEnthalpyJPerKg(0)).toBe(0);
  fc.assert(
    fc.property(fc.double({ min: 1, max: 199, noNaN: true }), (t) => {
      const slope = dryEnthalpyJPerKg(t + 0.5) - dryEnthalpyJPerKg(t - 0.5);
      expect(Math.abs(slope - dryHeatCapacityJPerKgK(t))).toBeLessThan(0.7);
    }),
  );
});

test('a syrup without sugar is water, one without water is sugar', () => {
  expect(syrupHeatCapacityJPerKgK(0, 60)).toBe(liquidHeatCapacityJPerKgK(60));
  expect(syrupHeatCapacityJPerKgK(1, 150)).toBe(dryHeatCapacityJPerKgK(150));
});

test('heat capacities refuse what lies outside their range', () => {
  expect(() => dryHeatCapacityJPerKgK(201)).toThrow(RangeError);
  expect(() => handbookHeatCapacityJPerKgK(0.95, 50)).toThrow(RangeError);
  expect(() => handbookHeatCapacityJPerKgK(0.5, 95)).toThrow(RangeError);
});
