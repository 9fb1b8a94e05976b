import { expect, test } from 'vitest';
import { hold } from '../../../test/holdStep.ts';
import { arrivalIn, awaitedC } from './arrival.ts';
import type { Outlook } from './outlook.ts';
import { atTheStart } from './progress.ts';

/** Pans that warm by so many K a minute each from 100 C, a row a minute for ten minutes. */
const warming = (...kPerMin: number[]): Outlook => ({
  everyS: 60,
  temperatureC: Array.from({ length: 11 }, (_, minute) => Float64Array.from(kPerMin, (k) => 100 + k * minute)),
});

test('each pan arrives between the rows where its straight line crosses', () => {
  const { afterS, withinS } = arrivalIn(warming(2, 4), 111);
  // 11 K at 4 K/min are 2.75 min, at 2 K/min 5.5 min.
  expect(afterS).toEqual([165, 330]);
  expect(withinS).toBe(600);
});

test('a pan that is there arrives now; one that stands never does, and the odds say so', () => {
  expect(arrivalIn(warming(1), 100).afterS).toEqual([0]);
  const nine = Array.from({ length: 9 }, () => 2);
  expect(arrivalIn(warming(...nine, 0), 110)).toMatchObject({ range: { low: 300, mid: 300 } });
  const { range, afterS } = arrivalIn(warming(2, 2, 2, 2, 2, 0, 0, 0, 0, 0), 110);
  expect(afterS.at(-1)).toBe(Number.POSITIVE_INFINITY);
  expect(range.high).toBe(Number.POSITIVE_INFINITY);
  expect(arrivalIn(warming(0, 0, 1), 105).range.mid).toBe(Number.POSITIVE_INFINITY);
});

test('a climb waits for its end, a hold for its lower edge until it is there, letting down for nothing', () => {
  expect(awaitedC(hold, atTheStart)).toBe(127);
  expect(awaitedC(hold, { ...atTheStart, inBandSinceS: 60 })).toBeUndefined();
  expect(awaitedC({ ...hold, kind: 'climb', end: { reachedC: 125 } }, { ...atTheStart, inBandSinceS: 60 })).toBe(125);
  expect(
    awaitedC({ ...hold, letDown: { solids: 0.8, hotPortionKg: 0.005, coolPortionKg: 0.02 } }, atTheStart),
  ).toBeUndefined();
});
