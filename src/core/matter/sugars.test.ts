import { expect, test } from 'vitest';
import { invertSugar, MOLAR_MASS, partlyInverted, pureSucrose, requireDrySolids } from './sugars.ts';

const ATOM = { C: 12.011, H: 1.008, O: 15.999, Na: 22.98977, Ca: 40.078 };

test('molar masses follow the standard atomic weights (IUPAC 2021) within 20 ppm', () => {
  const { C, H, O, Na, Ca } = ATOM;
  const grams = {
    water: 2 * H + O,
    sucrose: 12 * C + 22 * H + 11 * O,
    hexose: 6 * C + 12 * H + 6 * O,
    maltose: 12 * C + 22 * H + 11 * O,
    naoh: Na + O + H,
    caoh2: Ca + 2 * (O + H),
    sodium: Na,
    calcium: Ca,
  };
  for (const [name, value] of Object.entries(grams)) {
    expect(Math.abs((1e3 * MOLAR_MASS[name as keyof typeof MOLAR_MASS]) / value - 1), name).toBeLessThan(2e-5);
  }
});

test('inversion keeps mass: sucrose and water make two hexoses', () => {
  expect(MOLAR_MASS.sucrose + MOLAR_MASS.water).toBeCloseTo(2 * MOLAR_MASS.hexose, 6);
});

test('the ends of partial inversion are sucrose and invert sugar', () => {
  expect(partlyInverted(0)).toEqual(pureSucrose);
  expect(partlyInverted(1)).toEqual(invertSugar);
});

test('shares of the dry solids must be shares', () => {
  expect(() => requireDrySolids({ ...pureSucrose, sucrose: 0.9 })).toThrow('sum of the shares');
  expect(() => requireDrySolids({ ...pureSucrose, sucrose: 1.1, glucose: -0.1 })).toThrow(RangeError);
  expect(() => partlyInverted(1.2)).toThrow(RangeError);
});
