import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sampleBodies, sampleDevice, startMs } from '../../../test/sampleCook.ts';
import type { EventOf } from './event.ts';
import { inOrder } from './order.ts';
import { trueTimes } from './trueTime.ts';

const cook = '00000000-0000-4000-8000-000000000001';
const minuteS = 60;
const hourMs = 3_600_000;

type Reading = EventOf<'reading'>;

/** A phone's clocks, as functions of the true time: how far the wall clock is ahead, how long the phone has slept; ms. */
interface Phone {
  readonly aheadMs: (atS: number) => number;
  readonly sleptMs?: (atS: number) => number;
  /** Error of each measurement of the offset, at most `clockErrMs`. */
  readonly errorMs?: number;
  readonly connected?: (atS: number) => boolean;
}

/** A reading each second from a phone that measures its offset each minute, and begins another run after it slept. */
function readingsOf(
  { aheadMs, sleptMs = () => 0, errorMs = 0, connected = () => true }: Phone,
  lastS = 7200,
): Reading[] {
  const device = sampleDevice(cook);
  let offset: Pick<Reading, 'clockOffsetMs' | 'clockErrMs'> = { clockOffsetMs: null, clockErrMs: null };
  let sleptBefore = 0;
  const readings: Reading[] = [];
  for (let atS = 0; atS <= lastS; atS++) {
    const slept = sleptMs(atS);
    if (slept !== sleptBefore) offset = { clockOffsetMs: null, clockErrMs: null };
    if ((atS % minuteS === 0 || slept !== sleptBefore) && connected(atS)) {
      offset = { clockOffsetMs: -aheadMs(atS) + errorMs * Math.sin(atS), clockErrMs: Math.abs(errorMs) };
    }
    sleptBefore = slept;
    const tDevice = new Date(startMs + atS * 1000 + Math.round(aheadMs(atS))).toISOString();
    const bootId = `00000000-0000-4000-8000-${String(slept).padStart(12, '0')}`;
    const tMono = 60_000 + atS * 1000 - slept;
    readings.push(device.make('reading', sampleBodies.reading, atS, { ...offset, tDevice, tMono, bootId }));
  }
  return readings;
}

/** Largest error of the time between any reading and the first, s; the readings are a second apart. */
function worstDurationErrorS(readings: readonly Reading[]): number {
  const times = trueTimes(readings);
  const firstMs = times.get(readings[0]) ?? Number.NaN;
  return (
    Math.max(...readings.map((reading, s) => Math.abs((times.get(reading) ?? Number.NaN) - firstMs - s * 1000))) / 1000
  );
}

const seqs = (readings: readonly Reading[]) => inOrder(readings).map(({ event }) => event.deviceSeq);

describe('a wall clock that is wrong changes no duration by more than 1 s (CLK-3)', () => {
  it.each([
    ['2 h ahead', () => 2 * hourMs],
    ['2 h behind', () => -2 * hourMs],
    ['a day ahead', () => 24 * hourMs],
    ['a day behind', () => -24 * hourMs],
    ['set to 1970', () => -startMs],
    ['set right by 2 h in mid-cook', (atS: number) => (atS > 3000 ? 0 : 2 * hourMs)],
    ['jumping back and forth by a day', (atS: number) => (Math.floor(atS / 500) % 2) * 24 * hourMs],
    ['losing 50 ppm', (atS: number) => -0.05 * atS],
  ])('%s', (_, aheadMs) => {
    const readings = readingsOf({ aheadMs, errorMs: 20 });
    expect(worstDurationErrorS(readings)).toBeLessThan(1);
    expect(seqs(readings)).toEqual(readings.map(({ deviceSeq }) => deviceSeq));
  });

  it('wherever it jumps, and however far', () => {
    const jump = fc.record({ atS: fc.integer({ min: 61, max: 1700 }), byMs: fc.integer({ min: -864e5, max: 864e5 }) });
    fc.assert(
      fc.property(jump, ({ atS, byMs }) => {
        const readings = readingsOf({ aheadMs: (s) => (s < atS ? 0 : byMs), errorMs: 30 }, 1800);
        expect(worstDurationErrorS(readings)).toBeLessThan(1);
        expect(seqs(readings)).toEqual(readings.map(({ deviceSeq }) => deviceSeq));
      }),
      { numRuns: 100 },
    );
  });
});

describe('a monotonic clock that stands still while the device sleeps', () => {
  const sleptMs = (atS: number) => (atS > 600 ? 420_000 : 0);

  it('is put right by the offset measured after it', () => {
    expect(worstDurationErrorS(readingsOf({ aheadMs: () => 2 * hourMs, sleptMs, errorMs: 20 }))).toBeLessThan(1);
  });

  it('and by the wall clock when the device stays offline', () => {
    const phone = { aheadMs: () => -2 * hourMs, sleptMs, connected: (atS: number) => atS < 500 };
    expect(worstDurationErrorS(readingsOf(phone))).toBeLessThan(1);
  });

  it('without changing the order when the wall clock was set back as well', () => {
    const aheadMs = (atS: number) => (atS > 600 ? -3 * hourMs : 0);
    const readings = readingsOf({ aheadMs, sleptMs, connected: (atS) => atS < 500 }, 1200);
    expect(seqs(readings)).toEqual(readings.map(({ deviceSeq }) => deviceSeq));
    const times = trueTimes(readings);
    const [a, b] = [readings[700], readings[1200]].map((reading) => times.get(reading) ?? Number.NaN);
    expect(b - a).toBe(500_000);
  });
});

it('two devices agree when something happened, whatever their clocks show', () => {
  const [a, b] = [sampleDevice(cook, { aheadMs: 5 * hourMs }), sampleDevice(cook, { aheadMs: -hourMs, upForMs: 0 })];
  const stir = [a.make('stir', {}, 10), b.make('stir', {}, 10.5), a.make('stir', {}, 11)];
  expect(inOrder(stir.toReversed()).map(({ event }) => event.id)).toEqual(stir.map(({ id }) => id));
});

it('no clock, however broken, changes the order of events on its device', () => {
  const wild = fc.array(
    fc.record({
      tMono: fc.integer({ min: 0, max: 1e9 }),
      boot: fc.integer({ min: 1, max: 3 }),
      clockOffsetMs: fc.option(fc.integer({ min: -1e9, max: 1e9 })),
      clockErrMs: fc.option(fc.integer({ min: 0, max: 1e6 })),
    }),
    { minLength: 1, maxLength: 30 },
  );
  fc.assert(
    fc.property(wild, (clocks) => {
      const device = sampleDevice(cook);
      const events = clocks.map(({ boot, ...clock }) =>
        device.make('stir', {}, 0, { ...clock, bootId: `boot ${boot}` }),
      );
      expect(inOrder(events.toReversed()).map(({ event }) => event.deviceSeq)).toEqual(
        events.map((_, place) => place + 1),
      );
    }),
    { numRuns: 500 },
  );
});
