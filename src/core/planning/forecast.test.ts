import { expect, test } from 'vitest';
import { defaultKit } from '../pan/kit.ts';
import { centralValues } from '../pan/model.ts';
import { prepareKit } from '../pan/preparedKit.ts';
import { rangeOf } from '../twin/range.ts';
import { describe, drawOf, summarise, traceNames } from './forecast.ts';
import { planFor } from './plan.ts';
import { defaultRequest } from './request.ts';

const prepared = prepareKit(defaultKit);
const planned = planFor(defaultRequest, prepared);
if (planned.kind === 'refused') throw new Error('refused');
const { plan, course } = planned;
const middle = describe(course, centralValues(defaultKit), 1);

function forecastOf(count: number, seed: number) {
  return summarise(
    plan,
    middle,
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
  const { readingC } = course;
  const rows = bands.readingC.low.length;
  let inside = 0;
  for (let row = 0; row < rows; row++) {
    const t = readingC[row * 15] ?? Number.NaN;
    if (t >= bands.readingC.low[row] - 0.5 && t <= bands.readingC.high[row] + 0.5) inside++;
  }
  expect(inside / rows).toBeGreaterThan(0.6);
});

test('the middle is the plan’s own course, whatever the draws: one figure for one plan', () => {
  for (const { steps, yieldKg } of [forecastOf(2, 1), forecastOf(16, 1), forecastOf(16, 20)]) {
    expect(yieldKg.mid).toBe(plan.yieldKg);
    for (const [i, step] of steps.entries()) {
      for (const name of [...traceNames, 'minutes', 'endMinute', 'spoonfuls'] as const) {
        const { low, mid, high } = step[name];
        expect(mid, `${step.kind} ${name}`).toBe(middle.ends[i][name]);
        expect(low <= mid && mid <= high, `${step.kind} ${name}`).toBe(true);
      }
    }
  }
});
