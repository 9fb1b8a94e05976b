import { expect, it } from 'vitest';
import { dayAfter, remindersFrom, weeksBetween } from './reminders.ts';

it('reminds after 2, 6 and 12 weeks, over the end of a year, a leap day and a change of clocks', () => {
  expect(remindersFrom('2027-12-20')).toEqual([
    { weeks: 2, day: '2028-01-03' },
    { weeks: 6, day: '2028-01-31' },
    { weeks: 12, day: '2028-03-13' },
  ]);
});

it('counts weeks both ways', () => {
  expect(dayAfter('2028-02-28', 1)).toBe('2028-02-29');
  expect(weeksBetween('2028-01-01', '2028-03-25')).toBe(12);
  expect(weeksBetween('2028-01-08', '2028-01-01')).toBe(-1);
});

it('refuses a day that does not exist', () => {
  expect(() => remindersFrom('2027-02-29')).toThrow(/does not exist/);
});
