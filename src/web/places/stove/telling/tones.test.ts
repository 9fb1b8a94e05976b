import { describe, expect, it } from 'vitest';
import { harmonics, levels, type Tone, tones, vibrationOf } from './tones.ts';

const all = Object.keys(tones) as Tone[];
const lastsS = (tone: Tone) => Math.max(...tones[tone].map(({ atS, forS }) => atS + forS));
const gapsS = (tone: Tone) =>
  tones[tone].slice(1).map(({ atS }, i) => atS - (tones[tone][i]?.atS ?? 0) - (tones[tone][i]?.forS ?? 0));

describe('the tones', () => {
  it('are 3 + 2 pulses played twice for act now, 3 for act soon, 1 to keep in mind (IEC 60601-1-8)', () => {
    expect(all.map((tone) => tones[tone].length)).toEqual([10, 3, 1, 2]);
    const gaps = gapsS('threeAndTwo').map((gap) => gap > 0.15);
    expect(gaps).toEqual([false, false, true, false, true, false, false, true, false]);
  });

  it('are never continuous and end within three seconds (WCAG 2.2, 1.4.2)', () => {
    for (const tone of all) {
      expect(lastsS(tone)).toBeLessThan(3);
      for (const gap of gapsS(tone)) expect(gap).toBeGreaterThan(0.05);
    }
  });

  it('have a fundamental of 500 to 1000 Hz, and for alarms four harmonics above it up to 3 kHz (IEC 60601-1-8, Annex D)', () => {
    for (const { hz } of all.flatMap((tone) => tones[tone])) {
      expect(hz).toBeGreaterThanOrEqual(500);
      expect(hz).toBeLessThanOrEqual(1000);
    }
    const highest = harmonics.length - 1;
    expect(highest - 1).toBeGreaterThanOrEqual(4);
    for (const tone of ['threeAndTwo', 'three', 'one'] as const)
      for (const { hz } of tones[tone]) expect(hz * highest).toBeLessThanOrEqual(3000);
  });

  it('are softer the less urgent, and softest for advice', () => {
    expect(levels.threeAndTwo).toBe(1);
    const rising = [levels.prompt, levels.one, levels.three, levels.threeAndTwo];
    expect(rising).toEqual(rising.toSorted((a, b) => a - b));
    expect(levels.prompt).toBeLessThan(levels.one / 2);
  });

  it('shake as they sound', () => {
    for (const tone of all) {
      const total = vibrationOf(tone).reduce((sum, ms) => sum + ms, 0);
      expect(total / 1000).toBeCloseTo(lastsS(tone), 2);
      expect(vibrationOf(tone).length).toBe(2 * tones[tone].length - 1);
    }
  });
});
