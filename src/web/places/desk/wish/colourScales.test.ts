import { expect, it } from 'vitest';
import { readColour, readNear, written } from './colourScales.ts';

it('reads a colour on each scale: EBC is 25 times A430, SRM 12.7 times (EBC method 8.5, ASBC Beer-10)', () => {
  expect(readColour('50', 'EBC').a430).toBeCloseTo(2, 12);
  expect(readColour('25.4', 'SRM').a430).toBeCloseTo(2, 2);
  expect(readColour('2', 'A430').a430).toBe(2);
  expect(readColour('1,5', 'A430').a430).toBe(1.5);
});

it('writes what it reads back', () => {
  for (const scale of ['EBC', 'SRM', 'A430'] as const) {
    expect(readColour(written(3.2, scale), scale).a430).toBeCloseTo(3.2, 1);
  }
});

it.each(['9999', 'dark', '-4'])('says of “%s” what would be allowed', (text) => {
  expect(readColour(text, 'EBC').trouble).toMatch(/can’t be aimed at\. Allowed: 0\.25 to 1300 EBC/);
});

it('an empty text is no wish and no trouble', () => expect(readColour(' ', 'EBC')).toEqual({}));

it('reads what is near enough as a share, or as much on the scale', () => {
  expect(readNear('10 %', 'EBC').within).toEqual({ share: 0.1 });
  expect(readNear('2,5%', 'EBC').within).toEqual({ share: 0.025 });
  // 5 EBC are 0.2 A430.
  expect(readNear('5', 'EBC').within).toEqual({ a430: expect.closeTo(0.2, 12) });
});

it.each(['', '0', '-5', '100 %', '150%', 'some', '2000'])('says of “%s” how a span is written', (text) => {
  expect(readNear(text, 'EBC').trouble).toMatch(/is no span of colour\. Allowed: above 0 to 99 %, or as much in EBC/);
});
