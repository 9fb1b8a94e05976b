import { greatest } from 'd3-array';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { referenceTable } from '../../../test/referenceTable.ts';
import {
  bindingHeatJPerKg,
  equalActivityRatio,
  sucroseSolidsAtActivity,
  sucroseWaterActivity,
  waterActivity,
  waterPerSolids,
} from './activity.ts';
import { type DrySolids, invertSugar, MOLAR_MASS, partlyInverted, pureSucrose } from './sugars.ts';

const solids = fc.double({ min: 0, max: 0.995, noNaN: true });
const kitchenC = fc.double({ min: 0, max: 200, noNaN: true });
const drySolids: fc.Arbitrary<DrySolids> = fc
  .tuple(...Array.from({ length: 5 }, () => fc.double({ min: 0.001, max: 1, noNaN: true })))
  .map((parts) => {
    const sum = parts.reduce((a, b) => a + b);
    const [sucrose = 0, glucose = 0, fructose = 0, maltose = 0, dextrin = 0] = parts.map((part) => part / sum);
    return { sucrose, glucose, fructose, maltose, dextrin };
  });

/** Norrish 1966, J. Food Technol. 1:25: constants for sucrose 6.47, for hexoses 2.25 (from memory). */
function norrish(solidsFraction: number, molarMass: number, constant: number): number {
  const solute = solidsFraction / molarMass;
  const x = solute / (solute + (1 - solidsFraction) / MOLAR_MASS.water);
  return (1 - x) * Math.exp(-constant * x * x);
}

describe('water activity against published values', () => {
  test('sucrose at 25 C follows Norrish from 30 to 70 % within 0.004', () => {
    for (let w = 0.3; w <= 0.7001; w += 0.05) {
      expect(Math.abs(sucroseWaterActivity(w, 25) - norrish(w, MOLAR_MASS.sucrose, 6.47))).toBeLessThan(0.004);
    }
  });

  test('hexoses at 25 C follow Norrish from 20 to 90 % within 0.008', () => {
    const rows = Array.from({ length: 15 }, (_, at) => 0.2 + 0.05 * at).map((w) => ({
      w,
      off: waterActivity(w, 25, invertSugar) - norrish(w, MOLAR_MASS.hexose, 2.25),
    }));
    const worst = greatest(rows, (row) => Math.abs(row.off));
    console.log('hexose against Norrish, worst:', worst);
    expect(Math.abs(worst?.off ?? Number.NaN)).toBeLessThan(0.008);
  });

  test('saturated solutions, honey and sorption lie within what each source is worth', () => {
    const rows = referenceTable('water-activity-25C').map((row) => {
      const [hexose, dextrin] = [Number(row['hexose']), Number(row['dextrin'])];
      const dry = { ...partlyInverted(hexose), sucrose: 1 - hexose - dextrin, dextrin };
      const ours = waterActivity(100 / (100 + Number(row['water_per_100_solids'])), 25, dry);
      const off = ours - Number(row['water_activity']);
      return { system: row['system'], off, share: off / Number(row['tolerance']) };
    });
    const worst = greatest(rows, (row) => Math.abs(row.share));
    console.log('water activity at 25 C, worst by its tolerance:', worst);
    expect(Math.abs(worst?.share ?? Number.NaN)).toBeLessThan(1);
  });

  test('thin invert solutions obey the law of molar masses', () => {
    expect(equalActivityRatio(invertSugar, 1)).toBeCloseTo(MOLAR_MASS.sucrose / MOLAR_MASS.hexose, 3);
  });
});

describe('water activity as a function', () => {
  test.each([-20, 0, 25, 100, 150, 200])('of sucrose falls with solids to 99.5 %% at %d C', (temperatureC) => {
    const steps = Array.from({ length: 9951 }, (_, at) => sucroseWaterActivity(at / 1e4, temperatureC));
    for (let at = 1; at < steps.length; at += 1) expect(steps[at]).toBeLessThan(steps[at - 1] ?? Number.NaN);
  });

  test('of any mixture falls with solids', () => {
    fc.assert(
      fc.property(solids, solids, kitchenC, drySolids, (one, other, temperatureC, dry) => {
        fc.pre(Math.abs(one - other) > 1e-6);
        const [thin, thick] = [Math.min(one, other), Math.max(one, other)];
        expect(waterActivity(thick, temperatureC, dry)).toBeLessThan(waterActivity(thin, temperatureC, dry));
      }),
    );
  });

  test('of sucrose is undone by its inverse within 1e-10 of solids', () => {
    fc.assert(
      fc.property(solids, kitchenC, (w, temperatureC) => {
        const back = sucroseSolidsAtActivity(sucroseWaterActivity(w, temperatureC), temperatureC);
        expect(Math.abs(back - w)).toBeLessThan(1e-10);
      }),
    );
  });

  test('of a mixture is undone by the water that it holds, whatever the batch', () => {
    const theta = fc.double({ min: -5, max: 5, noNaN: true });
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 0.995, noNaN: true }), kitchenC, drySolids, theta, (w, t, dry, batch) => {
        const ratio = waterPerSolids(waterActivity(w, t, dry, batch), t, dry, batch);
        expect(Math.abs(1 / (1 + ratio) - w)).toBeLessThan(1e-10);
      }),
    );
  });

  test('of pure sucrose as a mixture is that of sucrose', () => {
    expect(waterActivity(0.8, 110, pureSucrose)).toBeCloseTo(sucroseWaterActivity(0.8, 110), 12);
  });

  test('a batch one standard deviation wetter holds 14 % more water where syrup is thick, nothing more where it is thin', () => {
    const wetter = (activity: number) =>
      waterPerSolids(activity, 25, pureSucrose, 1) / waterPerSolids(activity, 25, pureSucrose);
    expect(wetter(0.5)).toBeCloseTo(Math.exp(0.13), 9);
    expect(wetter(0.999)).toBeCloseTo(1, 3);
  });

  test('refuses what lies outside its range', () => {
    expect(() => sucroseWaterActivity(0.996, 25)).toThrow('solids (mass fraction) is 0.996; allowed is 0 to 0.995');
    expect(() => waterActivity(0.5, 201, pureSucrose)).toThrow(RangeError);
    expect(() => waterPerSolids(1.1, 25, pureSucrose)).toThrow(RangeError);
    expect(() => waterPerSolids(0.5, 25, pureSucrose, 6)).toThrow('theta');
  });
});

test('binding heat follows from the temperature slope of the water activity (Gibbs-Helmholtz)', () => {
  for (const w of [0.7, 0.8, 0.9, 0.95, 0.97]) {
    const [cool, hot] = [sucroseWaterActivity(w, 119), sucroseWaterActivity(w, 121)];
    const slope = (Math.log(hot) - Math.log(cool)) / (1 / 394.15 - 1 / 392.15);
    expect(bindingHeatJPerKg(w)).toBeCloseTo((-8.314462618 / MOLAR_MASS.water) * slope, 0);
  }
});
