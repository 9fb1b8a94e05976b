import { expect, it } from 'vitest';
import { referenceTable } from '../../../test/referenceTable.ts';
import { gramsPerLitreOfPoundPerGallon, solidsFromLitreDegrees, solidsFromPoints } from './extractYield.ts';
import { gravityOfSucrose, wortKgPerL, wortOf } from './wort.ts';

const table = referenceTable('extract-yield');

// Half of the last digit of a gravity printed to 1e-5.
it.each(table)('$grams_per_litre g of sucrose in a litre make $gravity', ({ grams_per_litre, gravity }) => {
  expect(Math.abs(gravityOfSucrose(Number(grams_per_litre)) - Number(gravity))).toBeLessThanOrEqual(6e-6);
});

it('a sugar that prints what sucrose gives is all solids, and what it prints less, it has less', () => {
  expect(solidsFromPoints(46.18)).toBeCloseTo(1, 3);
  expect(solidsFromLitreDegrees(385.7)).toBeCloseTo(1, 3);
  expect(solidsFromPoints(46.18 * 0.8)).toBeCloseTo(0.8, 2);
});

it('a pound in a US gallon is 119.83 g/L, and gives the 46.2 points of the handbooks', () => {
  expect(gramsPerLitreOfPoundPerGallon).toBeCloseTo(119.826, 3);
  expect(1000 * (gravityOfSucrose(gramsPerLitreOfPoundPerGallon) - 1)).toBeCloseTo(46.2, 1);
});

it('density of wort by its gravity is that of ICUMSA sucrose of its Plato within 0.03 %', () => {
  const errors = referenceTable('sucrose-density-20C')
    .filter(({ mass_percent_sucrose }) => Number(mass_percent_sucrose) < 40)
    .map(({ SG20_20_apparent_in_air, density_kg_m3_20C_vacuum }) =>
      Math.abs((1000 * wortKgPerL(Number(SG20_20_apparent_in_air))) / Number(density_kg_m3_20C_vacuum) - 1),
    );
  console.info(`wort density: worst ${Math.max(...errors).toExponential(1)} as a share`);
  expect(Math.max(...errors)).toBeLessThan(3e-4);
});

it('a litre of water weighs 998.2 g and has no extract', () => {
  expect(wortOf(1, 1)).toEqual({ massKg: expect.closeTo(0.9982, 4), extractKg: 0 });
});
