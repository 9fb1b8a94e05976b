import { expect, it } from 'vitest';
import { whenOf } from './when.ts';

const range = { low: 30, mid: 40, high: 50 };
const minute = 60_000;
const utc = (ms: number) => new Date(ms).toISOString().slice(11, 16);
const poured = Date.UTC(2030, 0, 1, 18);
const after = (minutes: number) => whenOf(range, poured, poured + minutes * minute, utc);

it('counts down to the middle until the earliest time, and gives both ends as times of day', () => {
  expect(after(0)).toEqual({ standing: 'ahead', says: 'in 40 min', between: '18:30 to 18:50' });
  expect(after(29.9).says).toBe('in 10 min');
});

it('claims nothing between the earliest and the latest time, and no more than likelihood after', () => {
  expect(after(30).standing).toBe('near');
  expect(after(49.9).says).toBe('may be so by now');
  expect(after(50)).toMatchObject({ standing: 'by now', says: 'should be so by now' });
});

it('speaks of hours when it takes hours', () => {
  expect(whenOf({ low: 90, mid: 125, high: 150 }, poured, poured, utc).says).toBe('in 2 h 05 min');
});
