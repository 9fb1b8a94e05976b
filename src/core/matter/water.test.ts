import { greatest } from 'd3-array';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { referenceTable } from '../../../test/referenceTable.ts';
import {
  boilingPointOfWaterC,
  latentHeatJPerKg,
  liquidDensityKgPerM3,
  liquidEnthalpyJPerKg,
  liquidHeatCapacityJPerKgK,
  saturationPressurePa,
  steamEnthalpyAtAtmosphericJPerKg,
} from './water.ts';

const standard = referenceTable('water-saturation-iapws').map((row) => ({
  temperatureC: Number(row['temperature_C']),
  cell: (column: string) => (row[column] === '' ? Number.NaN : Number(row[column])),
}));

/** Largest deviation from the standard, in percent, over the rows that have a value and lie from `fromC` to `toC`. */
function worstPercent(column: string, ours: (temperatureC: number) => number, fromC = 0, toC = 200): number {
  const rows = standard
    .map(({ temperatureC, cell }) => ({ temperatureC, percent: 100 * (ours(temperatureC) / cell(column) - 1) }))
    .filter(({ temperatureC, percent }) => temperatureC >= fromC && temperatureC <= toC && !Number.isNaN(percent));
  const worst = greatest(rows, (row) => Math.abs(row.percent));
  console.log(`${column}, ${rows.length} rows, worst:`, worst);
  return Math.abs(worst?.percent ?? Number.NaN);
}

describe('water on its saturation line follows IAPWS-95 from 0.01 to 200 C', () => {
  test('vapour pressure within 0.03 %', () => {
    expect(worstPercent('pressure_Pa', saturationPressurePa)).toBeLessThan(0.03);
  });

  test('slope of the vapour pressure within 0.1 %, which a wrong digit would not survive', () => {
    const slope = (t: number) => (saturationPressurePa(t + 0.005) - saturationPressurePa(t - 0.005)) / 0.01;
    expect(worstPercent('slope_Pa_per_K', slope)).toBeLessThan(0.1);
  });

  test('latent heat within 0.01 %', () => {
    expect(worstPercent('latent_heat_J_per_kg', latentHeatJPerKg)).toBeLessThan(0.01);
  });

  test('heat capacity within 0.05 %', () => {
    expect(worstPercent('heat_capacity_J_per_kgK', liquidHeatCapacityJPerKgK)).toBeLessThan(0.05);
  });

  test('density within 0.01 %', () => {
    expect(worstPercent('density_kg_per_m3', liquidDensityKgPerM3)).toBeLessThan(0.01);
  });

  // The standard's zero is at 0.01 C. Its saturated liquid also gains pressure work, 0.1 % at 200 C, which water in a pan does not.
  test('liquid enthalpy within 0.1 %, from 5 to 190 C', () => {
    const offset = liquidEnthalpyJPerKg(0.01) - 0.6117813;
    expect(worstPercent('enthalpy_J_per_kg', (t) => liquidEnthalpyJPerKg(t) - offset, 5, 190)).toBeLessThan(0.1);
  });

  test('enthalpy of steam at 1 atm within 0.05 %', () => {
    expect(worstPercent('steam_enthalpy_J_per_kg', steamEnthalpyAtAtmosphericJPerKg)).toBeLessThan(0.05);
  });
});

test('vapour leaving hot syrup carries off less heat as the syrup gets hotter (IAPWS-IF97, 1 atm, within 0.05 %)', () => {
  const carried = { 110: 2234.8, 120: 2212.7, 130: 2190.2, 140: 2167.4, 150: 2144.2, 160: 2120.8, 170: 2096.9 };
  for (const [celsius, kilojoule] of Object.entries(carried)) {
    const ours = steamEnthalpyAtAtmosphericJPerKg(Number(celsius)) - liquidEnthalpyJPerKg(Number(celsius));
    expect(Math.abs(ours / 1e3 / kilojoule - 1)).toBeLessThan(5e-4);
  }
});

test('steam enthalpy is continuous where superheat begins and is that of saturated vapour below', () => {
  const [below, above] = [100 - 1e-9, 100 + 1e-9].map(steamEnthalpyAtAtmosphericJPerKg);
  expect(above).toBeCloseTo(below ?? Number.NaN, 3);
  expect(steamEnthalpyAtAtmosphericJPerKg(60)).toBe(liquidEnthalpyJPerKg(60) + latentHeatJPerKg(60));
});

test('liquid enthalpy is the integral of the heat capacity', () => {
  fc.assert(
    fc.property(fc.double({ min: 1, max: 199, noNaN: true }), (t) => {
      const slope = (liquidEnthalpyJPerKg(t + 0.5) - liquidEnthalpyJPerKg(t - 0.5)) / 1;
      expect(slope / liquidHeatCapacityJPerKgK(t)).toBeCloseTo(1, 5);
    }),
  );
});

test('boiling point of water undoes the vapour pressure within 1e-8 C', () => {
  fc.assert(
    fc.property(fc.double({ min: 2, max: 372, noNaN: true }), (t) => {
      expect(Math.abs(boilingPointOfWaterC(saturationPressurePa(t)) - t)).toBeLessThan(1e-8);
    }),
  );
});

test('water boils at 99.974 C at 1 atm (IAPWS-95)', () => {
  expect(boilingPointOfWaterC(101_325)).toBeCloseTo(99.974, 2);
});

test('refuses what lies outside its range, and says what is allowed', () => {
  expect(() => saturationPressurePa(-1)).toThrow('water temperature (C) is -1; allowed is 0 to 373');
  expect(() => boilingPointOfWaterC(100)).toThrow(RangeError);
  expect(() => latentHeatJPerKg(Number.NaN)).toThrow(RangeError);
  expect(() => liquidHeatCapacityJPerKgK(201)).toThrow(RangeError);
});
