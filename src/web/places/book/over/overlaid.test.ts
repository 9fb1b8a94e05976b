import { expect, it } from 'vitest';
import type { Summary } from '../../../../core/book/summary.ts';
import { commonSteps, type Overlaid, zeroOf } from './overlaid.ts';

const cook = (steps: Summary['steps']) => ({ summary: { steps } }) as Overlaid;
const long = cook([
  { kind: 'dissolve', startS: 0 },
  { kind: 'brown', startS: 3000 },
  { kind: 'roast', startS: 5000 },
]);
const short = cook([
  { kind: 'dissolve', startS: 0 },
  { kind: 'brown', startS: 1800 },
]);

it('is aligned only by steps that all of them have', () => {
  expect(commonSteps([long, short])).toEqual(['dissolve', 'brown']);
  expect(commonSteps([])).toEqual([]);
});

it('puts the beginning of the step at zero, and the cold pan when aligned by the clock', () => {
  expect([long, short].map((one) => zeroOf(one, 'brown'))).toEqual([3000, 1800]);
  expect(zeroOf(long, 'clock')).toBe(0);
});
