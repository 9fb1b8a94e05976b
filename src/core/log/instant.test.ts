import fc from 'fast-check';
import { expect, it } from 'vitest';
import { instantMs, instantText } from './instant.ts';

it('reads every instant of four-digit years as the platform does', () => {
  const instants = fc.date({
    min: new Date('0000-01-01T00:00:00.000Z'),
    max: new Date('9999-12-31T23:59:59.999Z'),
    noInvalidDate: true,
  });
  fc.assert(
    fc.property(instants, (instant) => instantMs(instant.toISOString()) === instant.getTime()),
    { numRuns: 5000 },
  );
});

it('writes every instant from 1970 on as the platform does', () => {
  const instants = fc.date({ min: new Date(0), max: new Date('9999-12-31T23:59:59.999Z'), noInvalidDate: true });
  fc.assert(
    fc.property(instants, (instant) => instantText(instant.getTime()) === instant.toISOString()),
    { numRuns: 5000 },
  );
});

it.each(['2028-02-29', '2000-02-29', '2031-12-31'])('knows the day %s', (day) => {
  expect(instantMs(`${day}T12:00:00.000Z`)).toBe(Date.parse(`${day}T12:00:00.000Z`));
});

it.each([
  '2031-02-29T12:00:00.000Z',
  '1900-02-29T12:00:00.000Z',
  '2031-04-31T12:00:00.000Z',
  '2031-00-10T12:00:00.000Z',
  '2031-13-10T12:00:00.000Z',
  '2031-05-00T12:00:00.000Z',
  '2031-05-09T24:00:00.000Z',
  '2031-05-09T12:60:00.000Z',
  '2031-05-09T12:00:00Z',
  '2031-05-09T12:00:00.000+02:00',
  '2031-05-09 12:00:00.000Z',
  '',
])('refuses "%s"', (text) => {
  expect(() => instantMs(text)).toThrow(RangeError);
});
