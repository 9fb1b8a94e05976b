import { expect, test } from 'vitest';
import { normalNumbers } from '../../reactions/normal.ts';
import { combined, rangeAround, z90 } from './estimate.ts';

const reading = (value: number, readingSd = 1, methodSd = 0) => ({ value, readingSd, methodSd });

test('readings that agree are weighed by their errors (textbook: 10 ± 1 and 13 ± 2 give 10.6 ± 0.894)', () => {
  const { value, sd, apart } = combined([[reading(10, 1)], [reading(13, 2)]]);
  expect(value).toBeCloseTo(10.6, 12);
  // Chi-square is 1.8 for one degree of freedom: the error grows by its root.
  expect(apart).toBeCloseTo(Math.sqrt(1.8), 12);
  expect(sd).toBeCloseTo(Math.sqrt(1.8) / Math.sqrt(1 + 1 / 4), 12);
});

test('repeating a reading never removes the error of its method', () => {
  const many = Array.from({ length: 100 }, () => reading(50, 1, 2));
  expect(combined([many]).sd).toBeGreaterThan(2);
  expect(combined([many]).sd).toBeLessThan(2.01);
});

test('readings that contradict each other make the error larger, and say so', () => {
  const { sd, apart } = combined([[reading(10, 0.1), reading(12, 0.1)]]);
  expect(apart).toBeGreaterThan(10);
  expect(sd).toBeGreaterThan(0.9);
});

test('the range of three methods holds the truth 8 times in 10, and more, never less (2000 draws)', () => {
  const normal = normalNumbers(7);
  let held = 0;
  for (let i = 0; i < 2000; i++) {
    const methods = [1, 2, 3].map((methodSd) => {
      const bias = methodSd * normal();
      return [reading(bias + normal(), 1, methodSd), reading(bias + normal(), 1, methodSd)];
    });
    const { value, sd } = combined(methods);
    const { low, high } = rangeAround(value, sd);
    if (low <= 0 && high >= 0) held += 1;
  }
  console.log('share held:', held / 2000);
  expect(held / 2000).toBeGreaterThan(0.78);
  expect(held / 2000).toBeLessThan(0.95);
  expect(z90).toBeCloseTo(1.28155, 5);
});
