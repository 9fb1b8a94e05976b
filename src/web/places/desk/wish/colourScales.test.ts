import { expect, it } from 'vitest';
import { readColour, written } from './colourScales.ts';

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
