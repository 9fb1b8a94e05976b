import { expect, it } from 'vitest';
import { deviceClock } from './deviceClock.ts';
import { serverClock } from './serverClock.ts';

function clocks(wall = 1e12, mono = 5000) {
  const now = { wall, mono };
  return { now, wallMs: () => now.wall, monoMs: () => now.mono };
}

it('a sleep begins a new run of the clock and is told once', () => {
  const own = clocks();
  const clock = deviceClock(own);
  const first = clock.bootId();
  own.now.wall += 60_000;
  own.now.mono += 1000;
  expect(clock.look()).toEqual({ wallMs: 60_000, monoMs: 1000 });
  expect(clock.bootId()).not.toBe(first);
  expect(clock.look()).toBeNull();
});

it('drift of 100 ppm over three hours, looked at each minute, is no jump', () => {
  const own = clocks();
  const clock = deviceClock(own);
  const first = clock.bootId();
  for (let minute = 0; minute < 180; minute++) {
    own.now.wall += 60_006;
    own.now.mono += 60_000;
    expect(clock.look()).toBeNull();
  }
  expect(clock.bootId()).toBe(first);
});

it('the offset is that of the quickest answer, whatever the wall clock does meanwhile, and is forgotten with the run', async () => {
  const own = clocks();
  const ways = [40, 2, 300];
  const ask = async () => {
    const way = ways.shift() ?? 0;
    own.now.mono += way;
    const time = new Date(1e12 + 7_200_000 + own.now.mono - 5000).toISOString();
    own.now.mono += way;
    own.now.wall += 2 * way;
    return { received: time, sent: time };
  };
  const clock = serverClock(ask, own);
  expect(clock.sample()).toBeNull();
  for (let count = 0; count < 3; count++) await clock.measure();
  expect(clock.sample()).toEqual({ clockOffsetMs: 7_200_000, clockErrMs: 3 });
  clock.forget();
  expect(clock.sample()).toBeNull();
});

it('no answer leaves the offset as it was, and an answer to a question of an earlier run counts for nothing', async () => {
  const own = clocks();
  const silent = serverClock(() => Promise.reject(new TypeError('no server')), own);
  await silent.measure();
  expect(silent.sample()).toBeNull();

  let answer = (_: { received: string; sent: string }) => {};
  const slow = serverClock(() => new Promise((resolve) => (answer = resolve)), own);
  const measured = slow.measure();
  slow.forget();
  answer({ received: '2031-05-09T18:30:00.000Z', sent: '2031-05-09T18:30:00.000Z' });
  await measured;
  expect(slow.sample()).toBeNull();
});
