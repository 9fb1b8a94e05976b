import fc from 'fast-check';
import { expect, test } from 'vitest';
import { dropColour, dropDepthCm, syrupGPerL } from '../colour/drop.ts';
import { expectedHueIndex } from '../colour/hueIndex.ts';
import { labOf } from '../colour/lab.ts';
import { ratingA430 } from '../colour/rating.ts';
import { xyzOfSrgb } from '../colour/srgb.ts';
import { syrupLab } from '../colour/syrup.ts';
import { aimedColour, glassLab, type Look, requireAim, swatchAim } from './aim.ts';

test('a swatch of a sugar gives back its colour within 1 %, as a drop and in a glass', () => {
  fc.assert(
    fc.property(fc.double({ min: Math.log(0.02), max: Math.log(2.5), noNaN: true }), (lnA430) => {
      const a430 = Math.exp(lnA430);
      const specific = a430 / ratingA430(1, 'tenPercentByWeight');
      const hueIndex = expectedHueIndex(specific, 0).mean;
      const drop = syrupLab(specific * 0.95 * syrupGPerL, 2 * dropDepthCm, hueIndex);
      for (const colour of [
        { lab: drop, look: 'drop' as const },
        { lab: glassLab(a430, hueIndex), look: 'glass' as const },
      ]) {
        const found = aimedColour({ colour });
        expect(Math.abs(found.a430 / a430 - 1)).toBeLessThan(0.01);
        expect(found.hueLeft).toBeLessThan(0.1);
      }
    }),
    { numRuns: 30 },
  );
});

test('a screen colour of a drop gives back its colour as nearly as 8 bits tell: within 6 %', () => {
  for (const a430 of [0.3, 0.6, 1.2]) {
    const specific = a430 / ratingA430(1, 'tenPercentByWeight');
    const shown = dropColour(specific, expectedHueIndex(specific, 0).mean, 0.05);
    const found = aimedColour({ colour: { lab: labOf(xyzOfSrgb(shown)), look: 'drop' } });
    expect(Math.abs(found.a430 / a430 - 1), `A430 ${a430}`).toBeLessThan(shown.clipped ? 0.35 : 0.06);
  }
});

test('a swatch that is no sugar at all says how far the nearest sugar is', () => {
  const blue = labOf(xyzOfSrgb({ r: 20, g: 40, b: 220 }));
  expect(aimedColour({ colour: { lab: blue, look: 'drop' } }).hueLeft).toBeGreaterThan(20);
});

test('any colour of a screen is taken for a sugar that can be aimed at', () => {
  const byte = fc.integer({ min: 0, max: 255 });
  fc.assert(
    fc.property(byte, byte, byte, fc.constantFrom('drop', 'glass' as const), (r, g, b, look) => {
      const hex = `#${[r, g, b].map((each) => each.toString(16).padStart(2, '0')).join('')}`;
      const { a430 } = aimedColour({ colour: swatchAim(hex, look as Look) });
      requireAim({ colour: { a430 } });
    }),
    {
      numRuns: 40,
      examples: [
        [0x30, 0x50, 0xc0, 'glass'],
        [255, 255, 255, 'drop'],
      ],
    },
  );
});

test('an aim out of range is refused by name, with what is allowed', () => {
  expect(() => requireAim({ colour: { a430: 0 } })).toThrow('A430 of the aim is 0; allowed is 0.01 to 52');
  expect(() => requireAim({ colour: { a430: 2 }, taste: { roast: 11 } })).toThrow('roast of the aim is 11');
});
