import { expect, test } from 'vitest';
import type { Deed } from '../pan/steps.ts';
import { dialSettings, dialText } from './dial.ts';

/** A cook of one step of 20 minutes, with the dial turned at these minutes. */
function cooked(...turns: readonly (readonly [number, number])[]) {
  const deeds = turns.map(([minute, notch]) => ({ timeS: minute * 60, deed: { kind: 'heat', notch } satisfies Deed }));
  return { steps: [{ kind: 'invert', startS: 0, endS: 1200, spoonfuls: 0 } as const], deeds };
}

test('a setting that stays is told alone, two or three one after the other', () => {
  expect(dialText(cooked([0, 4]), 0)).toBe('4');
  expect(dialText(cooked([0, 4], [3, 2]), 0)).toBe('4, then 2');
  expect(dialText(cooked([0, 4], [3, 2], [9, 1]), 0)).toBe('4, then 2, then 1');
});

test('a dial turned to and fro is told as the span it stayed in', () => {
  expect(dialText(cooked([0, 3], [3, 2], [9, 1], [12, 2], [15, 1]), 0)).toBe('3, then 1-2');
});

test('a setting taken back at once is not told, nor the heat off for the alkali', () => {
  expect(dialSettings(cooked([0, 3], [0.1, 2]), 0)).toEqual([2]);
  expect(dialSettings(cooked([0, 0], [1.5, 3], [5, 2]), 0)).toEqual([3, 2]);
  expect(dialText(cooked([0, 0]), 0)).toBe('off');
});

test('turns of another step are not those of this one', () => {
  const { steps, deeds } = cooked([0, 3], [21, 5]);
  expect(
    dialSettings({ steps: [...steps, { kind: 'brown', startS: 1200, endS: 2400, spoonfuls: 0 }], deeds }, 1),
  ).toEqual([5]);
});
