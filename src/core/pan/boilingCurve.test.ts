import fc from 'fast-check';
import { expect, test } from 'vitest';
import { boilingPointC } from '../matter/boiling.ts';
import { createBoilingCurve } from './boilingCurve.ts';

const curves = new Map([80_000, 101_325].map((pressure) => [pressure, createBoilingCurve(pressure)]));
const share = (low: number, high: number) => fc.double({ min: low, max: high, noNaN: true });

test('the tabulated curve gives the same boiling points as core/matter within 0.02 C for any mixture and batch', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(80_000, 101_325),
      share(0.1, 0.99),
      share(0, 1),
      share(-2, 2),
      share(95, 160),
      (pressure, solids, inverted, theta, start) => {
        const curve = curves.get(pressure) as ReturnType<typeof createBoilingCurve>;
        const dry = { sucrose: 1 - inverted, glucose: inverted / 2, fructose: inverted / 2, maltose: 0, dextrin: 0 };
        const holders = { sucroseKg: solids * (1 - inverted), hexoseKg: solids * inverted, maltKg: 0 };
        const found = curve.boilsC(1 - solids, holders, theta, start);
        expect(Math.abs(found - boilingPointC(solids, dry, pressure, theta))).toBeLessThan(0.02);
      },
    ),
  );
});

test('its slope with water is that of a finite difference', () => {
  const curve = createBoilingCurve(101_325);
  const holders = { sucroseKg: 0.7, hexoseKg: 0.2, maltKg: 0.01 };
  for (const water of [0.02, 0.05, 0.1, 0.3]) {
    curve.boilsC(water, holders, 0.5, 120);
    const slope = curve.slopeKPerKg();
    const finite =
      (curve.boilsC(water + 1e-4, holders, 0.5, 120) - curve.boilsC(water - 1e-4, holders, 0.5, 120)) / 2e-4;
    expect(Math.abs(slope / finite - 1), `${water} kg`).toBeLessThan(0.01);
  }
});
