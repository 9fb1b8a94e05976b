import { expect, test } from 'vitest';
import { defaultKit } from './kit.ts';
import { lossLaw, sideLossW, surfaceLossW } from './losses.ts';

/** A 20 cm stainless pan, syrup 9 cm deep, room 22 C: hand-worked from Churchill & Chu and McAdams with radiation. */
const pan = { ...defaultKit.pan, diameterM: 0.2, heightM: 0.09 };

test('losses of a 20 cm pan agree with the worked values at 100, 130 and 150 C within 15 %', () => {
  const worked = [
    { t: 100, side: 43, surface: 41 },
    { t: 130, side: 64, surface: 63 },
    { t: 150, side: 80, surface: 81 },
  ];
  for (const { t, side, surface } of worked) {
    expect(Math.abs(sideLossW(pan, t, 22) / side - 1), `side ${t}`).toBeLessThan(0.15);
    expect(Math.abs(surfaceLossW(pan, t, 22) / surface - 1), `surface ${t}`).toBeLessThan(0.15);
  }
});

test('the two-term law stays within 3 % of the correlations from 40 to 160 K above the room', () => {
  for (const loss of [(t: number) => sideLossW(pan, t, 22), (t: number) => surfaceLossW(pan, t, 22)]) {
    const law = lossLaw(loss, 22);
    for (let d = 40; d <= 160; d += 10) {
      expect(Math.abs((law.linear * d + law.quadratic * d * d) / loss(22 + d) - 1), `${d} K`).toBeLessThan(0.03);
    }
  }
});
