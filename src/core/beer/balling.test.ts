import fc from 'fast-check';
import { afterAll, describe, expect, it } from 'vitest';
import { evenly } from '../../../test/evenly.ts';
import { referenceTable } from '../../../test/referenceTable.ts';
import {
  alcoholByRegression,
  alcoholByVolume,
  alcoholByWeight,
  apparentAttenuation,
  apparentExtract,
  fermentedShare,
  kcalPer100g,
  originalExtract,
  realAttenuation,
  realExtract,
} from './balling.ts';
import { gravityFromPlato } from './plato.ts';
import { wortKgPerL } from './wort.ts';

describe('attenuation and alcohol follow the worked table', () => {
  const table = referenceTable('attenuation');
  const worst: Record<string, number> = {};
  const near = (name: string, value: number, expected: string | undefined, tolerance: number) => {
    worst[name] = Math.max(worst[name] ?? 0, Math.abs(value - Number(expected)));
    expect(Math.abs(value - Number(expected)), name).toBeLessThanOrEqual(tolerance);
  };

  // Tolerances: half of the last digit printed, and what half a digit of the extracts above it makes.
  it.each(table)('OG $original_gravity, FG $final_gravity', (row) => {
    const [oe, ae, finalGravity] = [row['oe'], row['ae'], row['final_gravity']].map(Number) as [number, number, number];
    const re = realExtract(oe, ae);
    const byWeight = alcoholByWeight(oe, re);
    near('RE', re, row['re'], 0.001);
    near('A', byWeight, row['alcohol_by_weight'], 0.001);
    near('ABV', alcoholByVolume(byWeight, finalGravity), row['abv'], 0.006);
    near('ADF', 100 * apparentAttenuation(oe, ae), row['adf_percent'], 0.051);
    near('RDF', 100 * realAttenuation(oe, re), row['rdf_percent'], 0.1);
    near('kcal', 3.3 * kcalPer100g(byWeight, re) * wortKgPerL(finalGravity), row['kcal_per_330_ml'], 0.6);
  });

  // Both rules of thumb are remembered as low or high by up to 5 % above 1.080.
  it.each(table)(
    'OG $original_gravity: the quick rules lie to both sides',
    ({ abv, quick_abv, hall_abv, original_gravity }) => {
      expect(Number(quick_abv)).toBeLessThan(Number(abv));
      if (Number(original_gravity) >= 1.06) expect(Number(hall_abv)).toBeGreaterThan(Number(abv));
    },
  );

  // The regression's brews were near 12 to 18 P; at its ends it parts from Balling by 2.5 %.
  it.each(table)('OG $original_gravity: alcohol by the regression on 532 brews is within 3 % of Balling', (row) => {
    const [oe, ae] = [Number(row['oe']), Number(row['ae'])];
    const off = alcoholByRegression(oe, ae) / alcoholByWeight(oe, realExtract(oe, ae)) - 1;
    worst['regression share'] = Math.max(worst['regression share'] ?? 0, Math.abs(off));
    expect(Math.abs(off)).toBeLessThan(0.03);
  });

  afterAll(() => console.info(`attenuation: worst ${JSON.stringify(worst)}`));
});

it('sugar alone fermented out at 10 P ends at -2.21 P, 0.9915 (derived from 0.1808/0.8192)', () => {
  const ae = apparentExtract(10, 0);
  expect(ae).toBeCloseTo(-2.207, 3);
  expect(gravityFromPlato(ae)).toBeCloseTo(0.9915, 3.5);
});

it('Balling gives the original extract back, and the same fermented share as ASBC Beer-6B, to its printed digits', () => {
  let worst = 0;
  fc.assert(
    fc.property(evenly(1, 30), evenly(0, 1), (oe, part) => {
      const re = oe * part;
      const byWeight = alcoholByWeight(oe, re);
      worst = Math.max(worst, Math.abs(fermentedShare(oe, re) - realAttenuation(oe, re)));
      return Math.abs(originalExtract(byWeight, re) - oe) < 1e-9;
    }),
  );
  console.info(`fermented share, Balling against ASBC Beer-6B: worst ${worst.toExponential(1)}`);
  expect(worst).toBeGreaterThan(0);
  expect(worst).toBeLessThan(5e-6);
});
