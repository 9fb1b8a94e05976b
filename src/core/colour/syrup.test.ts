import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pigmentAbsorbance } from './spectrum.ts';
import { syrupColour, syrupLab, syrupXyz } from './syrup.ts';
import { transmittedXyz } from './tristimulus.ts';

const a430 = fc.double({ min: 0, max: 200, noNaN: true });
const pathCm = fc.double({ min: 0, max: 20, noNaN: true });
const hueIndex = fc.double({ min: 3, max: 8, noNaN: true });

it('the quick sum equals the one over a stored spectrum', () => {
  fc.assert(
    fc.property(a430, pathCm, hueIndex, (a, b, h) => {
      const quick = syrupXyz(a, b, h);
      const slow = transmittedXyz(pigmentAbsorbance(a, h), b);
      return (['x', 'y', 'z'] as const).every((part) => Math.abs(quick[part] - slow[part]) <= 1e-9);
    }),
  );
});

describe('a syrup looks as a syrup does', () => {
  it('clear when nothing has browned', () => {
    expect(syrupColour(0, 1, 6.5)).toEqual({ r: 255, g: 255, b: 255, clipped: false });
  });

  it('straw, amber, brown-red and near black as it darkens', () => {
    const [straw, amber, brown, black] = [0.15, 1, 5, 60].map((each) => syrupLab(each, 1, 6.5));
    expect(straw?.l).toBeGreaterThan(92);
    expect(hueAngle(amber)).toBeGreaterThan(75);
    expect(hueAngle(amber)).toBeLessThan(95);
    expect(hueAngle(brown)).toBeLessThan(70);
    expect(black?.l).toBeLessThan(5);
  });

  it('never lighter when darker or thicker', () => {
    const factor = fc.double({ min: 1, max: 3, noNaN: true });
    fc.assert(
      fc.property(a430, pathCm, hueIndex, factor, (a, b, h, more) => {
        const { y } = syrupXyz(a, b, h);
        return syrupXyz(a * more, b, h).y <= y && syrupXyz(a, b * more, h).y <= y;
      }),
    );
  });

  it('always in bytes', () => {
    fc.assert(
      fc.property(a430, pathCm, hueIndex, (a, b, h) => {
        const colour = syrupColour(a, b, h);
        return [colour.r, colour.g, colour.b].every((byte) => Number.isInteger(byte) && byte >= 0 && byte <= 255);
      }),
    );
  });
});

it.each([
  [-1, 1, 6, 'A430 -1 per cm'],
  [1, Number.NaN, 6, 'path NaN cm'],
  [1, 1, 20, 'hue index 20'],
])('A430 %d through %d cm at hue index %d is refused', (a, b, h, message) => {
  expect(() => syrupColour(a, b, h)).toThrow(message);
});

function hueAngle(lab: { a: number; b: number } | undefined): number {
  return (Math.atan2(lab?.b ?? Number.NaN, lab?.a ?? Number.NaN) * 180) / Math.PI;
}
