import { greatest } from 'd3-array';
import { expect, test } from 'vitest';
import { referenceTable } from '../../../test/referenceTable.ts';
import { glassTransitionC } from './glass.ts';
import { invertSugar, pureSucrose } from './sugars.ts';
import { viscosityPaS } from './viscosity.ts';

test('viscosity follows Bingham & Jackson 1919 at 20, 40 and 60 % from 20 to 85 C within 8 %', () => {
  const rows = referenceTable('sucrose-viscosity').flatMap((row) =>
    [20, 40, 60].map((percent) => {
      const temperatureC = Number(row['temperature_C']);
      const ours = 1e3 * viscosityPaS(percent / 100, temperatureC, pureSucrose);
      return { percent, temperatureC, offPercent: 100 * (ours / Number(row[`at_${percent}_percent`]) - 1) };
    }),
  );
  const worst = greatest(rows, (row) => Math.abs(row.offPercent));
  console.log(`viscosity, ${rows.length} rows, worst:`, worst);
  expect(Math.abs(worst?.offPercent ?? Number.NaN)).toBeLessThan(8);
});

test('viscosity is 1e12 Pa s at the glass transition, and below it refused', () => {
  const glassC = glassTransitionC(0.97, pureSucrose);
  expect(Math.log10(viscosityPaS(0.97, glassC + 1e-9, pureSucrose))).toBeCloseTo(12, 6);
  expect(() => viscosityPaS(0.97, glassC - 1, pureSucrose)).toThrow('temperature above the glass transition');
});

test('viscosity is continuous at both ends of the blend', () => {
  for (const w of [0.8, 0.9]) {
    const [below, above] = [w - 1e-9, w + 1e-9].map((solids) => viscosityPaS(solids, 120, pureSucrose));
    expect((above ?? Number.NaN) / (below ?? Number.NaN)).toBeCloseTo(1, 5);
  }
});

test('viscosity rises with solids and falls with heat from 100 to 160 C', () => {
  for (const t of [100, 120, 140, 160]) {
    for (let w = 0.5; w < 0.99; w += 0.01) {
      expect(viscosityPaS(w + 0.01, t, pureSucrose)).toBeGreaterThan(viscosityPaS(w, t, pureSucrose));
      expect(viscosityPaS(w, t + 5, pureSucrose)).toBeLessThan(viscosityPaS(w, t, pureSucrose));
    }
  }
});

test('thick invert syrup flows more easily than sucrose syrup of equal solids', () => {
  expect(viscosityPaS(0.95, 120, invertSugar)).toBeLessThan(viscosityPaS(0.95, 120, pureSucrose));
});
