import { expect, it } from 'vitest';
import { coolingLeft, coolingMs, minutesAndSeconds, saidOf } from './cooling.ts';

const begun = Date.UTC(2026, 10, 29, 12);
const after = (minutes: number) => coolingLeft(begun, begun + minutes * 60_000);

it('lasts 20 minutes, is then done, and is forgotten hours later', () => {
  expect(after(0)).toBe(coolingMs);
  expect(after(7.5)).toBe(12.5 * 60_000);
  expect(after(20)).toBe(0);
  expect(after(60)).toBe(0);
  expect(after(240)).toBeUndefined();
});

it('with a clock that was put back counts the full time, never longer, and nothing of one that is far off', () => {
  expect(after(-3)).toBe(coolingMs);
  expect(after(-90)).toBeUndefined();
  expect(coolingLeft(undefined, begun)).toBeUndefined();
  expect(coolingLeft(Number.NaN, begun)).toBeUndefined();
});

it('shows minutes and seconds, and never less than is left', () => {
  expect(minutesAndSeconds(coolingMs)).toBe('20:00');
  expect(minutesAndSeconds(64_100)).toBe('1:05');
  expect(minutesAndSeconds(0)).toBe('0:00');
});

it('is told by ear every five minutes, in the last minute, and at its end', () => {
  const told = Array.from({ length: 21 }, (_, minute) => saidOf(coolingMs - minute * 60_000));
  expect(new Set(told).size).toBe(6);
  expect(told[19]).toBe('The last minute.');
  expect(told[20]).toBe('Twenty minutes are over.');
});
