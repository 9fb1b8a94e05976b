import fc from 'fast-check';
import { expect, it } from 'vitest';
import { bestClockSample, clockSample } from './clockOffset.ts';

it('the offset is right within its error, however slow and unequal the ways there and back are', () => {
  const exchange = fc.record({
    offset: fc.integer({ min: -864e5, max: 864e5 }),
    there: fc.double({ min: 0, max: 3000, noNaN: true }),
    thinking: fc.double({ min: 0, max: 100, noNaN: true }),
    back: fc.double({ min: 0, max: 3000, noNaN: true }),
  });
  fc.assert(
    fc.property(exchange, ({ offset, there, thinking, back }) => {
      const cut = Math.floor;
      const sample = clockSample({
        asked: 1e6,
        received: cut(1e6 + there + offset),
        sent: cut(1e6 + there + thinking + offset),
        answered: cut(1e6 + there + thinking + back),
      });
      expect(Math.abs(sample.clockOffsetMs - offset)).toBeLessThanOrEqual(sample.clockErrMs);
    }),
  );
});

it('the sample that was least long on its way is believed', () => {
  const samples = [40, 7, 90].map((clockErrMs) => ({ clockOffsetMs: clockErrMs * 2, clockErrMs }));
  expect(bestClockSample(samples)).toEqual({ clockOffsetMs: 14, clockErrMs: 7 });
  expect(bestClockSample([])).toBeUndefined();
});
