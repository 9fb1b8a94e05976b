import { expect, test } from 'vitest';
import { conductivityWPerMK } from './conductivity.ts';

/** Choi & Okos 1986, carbohydrate, W/m K (seen as a transcription). */
const carbohydrate = (t: number) => 0.20141 + 1.3874e-3 * t - 4.3312e-6 * t * t;

test('without sugar it is the conductivity of water: 0.598 at 20 C, 0.644 at 50 C, 0.670 at 80 C (IAPWS) within 2 %', () => {
  const water = { 20: 0.598, 50: 0.6435, 80: 0.67 };
  for (const [t, published] of Object.entries(water)) {
    expect(Math.abs(conductivityWPerMK(0, Number(t)) / published - 1), t).toBeLessThan(0.02);
  }
});

test('without water it is that of carbohydrate (Choi & Okos 1986) within 25 % from 25 to 150 C', () => {
  for (let t = 25; t <= 150; t += 25) {
    expect(Math.abs(conductivityWPerMK(1, t) / carbohydrate(t) - 1), `${t} C`).toBeLessThan(0.25);
  }
});

test('falls with solids, and refuses what lies outside its range', () => {
  for (const t of [20, 60, 100, 150]) expect(conductivityWPerMK(0.9, t)).toBeLessThan(conductivityWPerMK(0.5, t));
  expect(() => conductivityWPerMK(0.5, 201)).toThrow(RangeError);
});
