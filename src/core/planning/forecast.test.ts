import { expect, test } from 'vitest';
import { defaultKit } from '../pan/kit.ts';
import { prepareKit } from '../pan/preparedKit.ts';
import { rangeOf } from '../twin/range.ts';
import { drawOf, summarise } from './forecast.ts';
import { planFor } from './plan.ts';
import { defaultRequest } from './request.ts';

const prepared = prepareKit(defaultKit);
const planned = planFor(defaultRequest, prepared);
if (planned.kind === 'refused') throw new Error('refused');
const { plan } = planned;

function forecastOf(count: number, seed: number) {
  return summarise(
    plan,
    Array.from({ length: count }, (_, number) => drawOf(plan, prepared, seed, number)),
  );
}

test('the marks of 1 to 11 are 2, 6 and 10', () => {
  expect(rangeOf([11, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10])).toEqual({ low: 2, mid: 6, high: 10 });
});

test('64 draws give a band of colour that spans a factor of two to twenty, as the parameters’ spreads demand', () => {
  const { steps } = forecastOf(64, 1);
  const { low, high } = steps[steps.length - 1].a430;
  expect(high / low).toBeGreaterThan(2);
  expect(high / low).toBeLessThan(20);
});

test('the same seed gives the same forecast, another seed another', () => {
  expect(forecastOf(8, 3)).toEqual(forecastOf(8, 3));
  expect(forecastOf(8, 3).yieldKg).not.toEqual(forecastOf(8, 4).yieldKg);
});

test('bands are ordered, and the central course lies within most of its own temperature band', () => {
  const { bands, steps } = forecastOf(64, 2);
  for (const { low, high } of Object.values(bands)) {
    for (const [row, value] of low.entries()) expect(value).toBeLessThanOrEqual(high[row]);
  }
  expect(steps.map(({ kind }) => kind)).toEqual(['dissolve', 'climb', 'invert', 'brown', 'roast']);
  const { readingC } = planned.kind === 'plan' ? planned.course : { readingC: [] };
  const rows = bands.readingC.low.length;
  let inside = 0;
  for (let row = 0; row < rows; row++) {
    const t = readingC[row * 15] ?? Number.NaN;
    if (t >= bands.readingC.low[row] - 0.5 && t <= bands.readingC.high[row] + 0.5) inside++;
  }
  expect(inside / rows).toBeGreaterThan(0.6);
});
