import { convertXyz65ToRgb } from 'culori/fn';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decoded, encoded, srgbOf } from './srgb.ts';
import { screenViewing } from './tristimulus.ts';

describe('sRGB (IEC 61966-2-1)', () => {
  it('decodes 128 as 0.215861 of full light', () => {
    expect(decoded(128)).toBeCloseTo(0.215861, 6);
  });

  it('encodes and decodes every byte to itself', () => {
    for (let byte = 0; byte <= 255; byte++) expect(encoded(decoded(byte))).toBe(byte);
  });

  it('shows the white of D65 as full white, unclipped', () => {
    expect(srgbOf(screenViewing.white)).toEqual({ r: 255, g: 255, b: 255, clipped: false });
  });

  it('shows darkness as black, unclipped', () => {
    expect(srgbOf({ x: 0, y: 0, z: 0 })).toEqual({ r: 0, g: 0, b: 0, clipped: false });
  });

  it('says when a colour is beyond the screen', () => {
    expect(srgbOf({ x: 20, y: 15, z: 0 }).clipped).toBe(true);
    // Linear blue -0.00007 is a quarter of an 8-bit step: nobody could see the difference.
    expect(srgbOf({ x: 0.05, y: 0.05, z: 0 }).clipped).toBe(false);
  });

  // The library rounds its matrix later than the standard's four decimals do, and halves may round either way.
  it('agrees with a general colour library within one count', () => {
    const part = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(part, part, part, (x, y, z) => {
        const ours = srgbOf({ x: 100 * x, y: 100 * y, z: 100 * z });
        const theirs = convertXyz65ToRgb({ x, y, z });
        return (['r', 'g', 'b'] as const).every((channel) => {
          const byte = Math.round(255 * Math.min(1, Math.max(0, theirs[channel])));
          return Math.abs(ours[channel] - byte) <= 1;
        });
      }),
    );
  });
});
