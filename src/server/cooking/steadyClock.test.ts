import { describe, expect, it } from 'vitest';
import { sampleBodies, sampleCook, sampleDevice } from '../../../test/sampleCook.ts';
import { testServer } from '../../../test/testServer.ts';
import { steadyClock } from './steadyClock.ts';

const hourMs = 3_600_000;

/** A machine whose clocks a test moves. */
function machine() {
  const at = { wall: Date.UTC(2031, 4, 9, 18, 30), mono: 0 };
  return {
    at,
    clock: steadyClock(
      () => at.wall,
      () => at.mono,
    ),
    pass(ms: number) {
      at.wall += ms;
      at.mono += ms;
    },
  };
}

describe("the server's clock", () => {
  it('goes on evenly when the system clock is set back, and says so once', () => {
    const { at, clock, pass } = machine();
    const start = clock.nowMs();
    pass(1000);
    at.wall -= hourMs;
    expect(clock.nowMs() - start).toBe(1000);
    pass(5000);
    expect(clock.nowMs() - start).toBe(6000);
    expect(clock.jumps()).toEqual([{ wallMs: 1000 - hourMs, monoMs: 1000 }]);
    expect(clock.jumps()).toEqual([]);
  });

  it('follows when the machine slept, or its clock was set ahead', () => {
    const { at, clock, pass } = machine();
    const start = clock.nowMs();
    at.wall += hourMs;
    pass(10);
    expect(clock.nowMs() - start).toBe(hourMs + 10);
    expect(clock.jumps()).toEqual([{ wallMs: hourMs + 10, monoMs: 10 }]);
  });

  it('is right again when a clock that was set back is put right', () => {
    const { at, clock, pass } = machine();
    at.wall -= hourMs;
    pass(1000);
    clock.nowMs();
    at.wall += hourMs;
    pass(1000);
    expect(clock.nowMs()).toBe(at.wall);
  });

  it('follows drift, and never goes back for it', () => {
    const { at, clock, pass } = machine();
    let last = clock.nowMs();
    for (let second = 0; second < 5000; second++) {
      pass(1000);
      at.wall -= second % 2 ? 30 : -10;
      expect(clock.nowMs()).toBeGreaterThanOrEqual(last);
      last = clock.nowMs();
    }
    expect(Math.abs(last - at.wall)).toBeLessThan(100);
    expect(clock.jumps()).toEqual([]);
  });
});

it('while the clock is set back places rise, nothing is refused, and the jump is in the log (CLK-5)', async () => {
  const { at, clock, pass } = machine();
  const app = await testServer({ clock });
  const { cook, begun } = sampleCook();
  await app.inject({ method: 'POST', url: '/api/cooks', payload: begun });
  const device = sampleDevice(cook);
  for (let second = 1; second <= 10; second++) {
    pass(1000);
    if (second === 5) at.wall -= 2 * hourMs;
    const payload = device.make('reading', sampleBodies.reading, second);
    expect((await app.inject({ method: 'POST', url: `/api/cooks/${cook}/events`, payload })).statusCode).toBe(201);
  }
  const log = async () =>
    (await app.inject(`/api/cooks/${cook}/events`)).json().events as { seq: number; tServer: string; kind: string }[];
  await expect.poll(async () => (await log()).filter(({ kind }) => kind === 'clock').length, { timeout: 5000 }).toBe(1);
  const events = await log();
  expect(events.map(({ seq }) => seq)).toEqual(events.map((_, place) => place + 1));
  expect(events.map(({ tServer }) => tServer)).toEqual(events.map(({ tServer }) => tServer).toSorted());
});
