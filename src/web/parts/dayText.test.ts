import { expect, it, onTestFinished, vi } from 'vitest';
import { dayText, momentText, shortDayText } from './dayText.ts';

const here = new Date(2031, 8, 12, 21, 40).toISOString();

it('a day is told with its month in full and its year, and short where there is no room', () => {
  expect(dayText(here)).toBe('12 September 2031');
  expect(shortDayText(here)).toBe('12 Sept 2031');
  expect(shortDayText(here, { year: false })).toBe('12 Sept');
});

it('a moment is told in the zone of this device, in hours of a day', () => {
  expect(momentText(here)).toBe('12 September 2031, 21:40');
});

it.each(['Pacific/Kiritimati', 'Pacific/Pago_Pago'])('a day of the calendar is the same day in %s', (zone) => {
  vi.stubEnv('TZ', zone);
  onTestFinished(() => void vi.unstubAllEnvs());
  expect(dayText('2031-09-12')).toBe('12 September 2031');
});
