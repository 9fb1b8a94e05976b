import { expect, it } from 'vitest';
import { dayHere, timeOn } from './days.ts';

it('a tasting is now on today, and at noon here on any other day', () => {
  const now = new Date(2028, 0, 3, 19, 30);
  expect(dayHere(now)).toBe('2028-01-03');
  expect(timeOn('2028-01-03', now)).toBe(now.toISOString());
  expect(timeOn('2028-01-01', now)).toBe(new Date(2028, 0, 1, 12).toISOString());
});
