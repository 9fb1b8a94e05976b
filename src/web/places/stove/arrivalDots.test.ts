import { describe, expect, it } from 'vitest';
import type { Arrival } from '../../../core/advice/arrival.ts';
import { arrivalWords, dotsOf } from './arrivalDots.ts';

const never = Number.POSITIVE_INFINITY;

function arriving(...minutes: number[]): Arrival {
  const afterS = minutes.map((min) => 60 * min);
  const at = (share: number) => afterS[Math.ceil(share * afterS.length) - 1] ?? never;
  return { toC: 127, afterS, withinS: 1200, range: { low: at(0.1), mid: at(0.5), high: at(0.9) } };
}

describe('dots of arrival', () => {
  it('are as many as pans arrive, in heaps whose bins hold their times', () => {
    const { dots, highest, lastMin } = dotsOf(arriving(1, 1.01, 1.02, 3.5, never), 30);
    expect(dots).toHaveLength(4);
    expect(lastMin).toBe(4);
    expect(highest).toBe(3);
    expect(dots.map(({ level }) => level)).toEqual([0, 1, 2, 0]);
    for (const { rank, atMin } of dots)
      expect(Math.abs(atMin - ([1, 1.01, 1.02, 3.5][rank] ?? 0))).toBeLessThanOrEqual(lastMin / 30 / 2 + 1e-9);
  });

  it('stay inside the axis when the last one comes at its very end', () => {
    const { dots, lastMin } = dotsOf(arriving(20), 30);
    expect(dots[0]?.atMin).toBeLessThan(lastMin);
  });
});

describe('words of arrival', () => {
  it('are an interval, and say what does not arrive', () => {
    expect(arrivalWords(arriving(5.5, 6, 6, 6, 6, 6, 6, 6, 8.2, 9), '127 °C')).toBe(
      'In 5 to 9 min, 8 in 10, if nothing is done.',
    );
    expect(arrivalWords(arriving(0, 0.2), '127 °C')).toBe('Within 1 min, 8 in 10, if nothing is done.');
    expect(arrivalWords(arriving(never, never), '127 °C')).toBe('Not at 127 °C within 20 min, if nothing is done.');
    expect(arrivalWords(arriving(5, never, never, never), '127 °C')).toBe(
      'Perhaps not, if nothing is done: 3 of 4 dots are missing: not within 20 min.',
    );
  });
});
