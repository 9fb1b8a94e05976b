import fc from 'fast-check';
import { afterAll, describe, expect, it } from 'vitest';
import { referenceTable } from '../../../test/referenceTable.ts';
import { gravityFromPlato, platoFromGravity } from './plato.ts';

describe('extract and gravity follow the published tables', () => {
  const table = referenceTable('plato-gravity');
  const platoError = ({ gravity, plato }: Record<string, string>) =>
    Math.abs(platoFromGravity(Number(gravity)) - Number(plato));

  it.each(table)('$basis: gravity $gravity is $plato P ($why)', (row) => {
    const { gravity, plato, plato_tolerance } = row;
    expect(platoError(row)).toBeLessThanOrEqual(Number(plato_tolerance));
    // 1 P is 0.0039 to 0.0050 of gravity.
    expect(Math.abs(gravityFromPlato(Number(plato)) - Number(gravity))).toBeLessThanOrEqual(
      Number(plato_tolerance) * 0.005,
    );
  });

  afterAll(() => {
    const worst = Math.max(...table.map(platoError));
    console.info(
      `plato-gravity: worst ${worst.toFixed(4)} P at ${JSON.stringify(table.find((row) => platoError(row) === worst))}`,
    );
  });

  it('follows ICUMSA sucrose densities to 40 % within 0.03 P, what the two bases differ by', () => {
    const rows = referenceTable('sucrose-density-20C').filter(
      ({ mass_percent_sucrose }) => Number(mass_percent_sucrose) < 40,
    );
    const errors = rows.map(({ SG20_20_apparent_in_air, mass_percent_sucrose }) => {
      return Math.abs(platoFromGravity(Number(SG20_20_apparent_in_air)) - Number(mass_percent_sucrose));
    });
    console.info(`ICUMSA densities, ${rows.length} rows: worst ${Math.max(...errors).toFixed(4)} P`);
    expect(Math.max(...errors)).toBeLessThanOrEqual(0.03);
  });

  // SG = 1 + P/(258.6 - P/258.2 227.1), seen quoted as good to 4e-5 up to 25 P.
  it('stays within 5e-5 of the Lincoln equation to 25 P', () => {
    for (let plato = 0; plato <= 25; plato += 0.5) {
      const lincoln = 1 + plato / (258.6 - (plato / 258.2) * 227.1);
      expect(Math.abs(gravityFromPlato(plato) - lincoln)).toBeLessThanOrEqual(5e-5);
    }
  });
});

it('beer fermented dry has a negative apparent extract: 0.9915 is -2.2 P', () => {
  expect(platoFromGravity(0.9915)).toBeCloseTo(-2.21, 1);
});

it('gravity of an extract gives that extract back, over the whole range', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.985, max: 1.17874, noNaN: true }), (gravity) => {
      return Math.abs(gravityFromPlato(platoFromGravity(gravity)) - gravity) <= 1e-12;
    }),
  );
});

it('extract grows with gravity, also where the two cubics meet', () => {
  for (let gravity = 1.0787; gravity < 1.0789; gravity += 1e-7) {
    expect(platoFromGravity(gravity + 1e-7)).toBeGreaterThan(platoFromGravity(gravity));
  }
});

it('out of range is refused with the range', () => {
  expect(() => platoFromGravity(1.2)).toThrow('specific gravity 1.2 is not within 0.985 to 1.17874');
  expect(() => gravityFromPlato(70)).toThrow('extract 70 P is not within');
});
