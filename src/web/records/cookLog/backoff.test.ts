import { expect, it } from 'vitest';
import { backoffMs } from './backoff.ts';

it('waits half a second at first and ten at most, spread over a half', () => {
  expect([0, 1, 2, 3, 4, 5, 60].map((failures) => backoffMs(failures, 0))).toEqual([
    500, 1000, 2000, 4000, 8000, 10_000, 10_000,
  ]);
  expect(backoffMs(60, 1)).toBe(5000);
  expect(backoffMs(0, 1)).toBe(500);
});
