import { describe, expect, it, test } from 'vitest';
import { ciede2000, labOf } from './lab.ts';
import {
  gammaError,
  gammaOfMatch,
  gammaRange,
  levelRange,
  levelsOn,
  matchedShares,
  matchesAgree,
  type ScreenMatches,
  standardMatches,
  steepnessOf,
} from './screen.ts';
import { decoded, type Srgb, xyzOfSrgb } from './srgb.ts';
import { syrupColour, syrupLab } from './syrup.ts';

/** The level at which a screen of one power gives a share of its white. */
const matchesOf = (gamma: number): ScreenMatches => ({
  half: Math.round(255 * 0.5 ** (1 / gamma)),
  quarter: Math.round(255 * 0.25 ** (1 / gamma)),
});
/** Levels as a standard screen would need them for what a screen of another steepness shows. */
const shownBy = (steepness: number, { r, g, b }: Srgb) => {
  const seen = (byte: number) => 255 * (byte / 255) ** steepness;
  return { r: seen(r), g: seen(g), b: seen(b) };
};

describe('a match', () => {
  it('of half the light at 186 is gamma 2.2, at 174 gamma 1.8', () => {
    expect(gammaOfMatch(186, 0.5)).toBeCloseTo(2.197, 3);
    expect(gammaOfMatch(174, 0.5)).toBeCloseTo(1.814, 3);
    expect(() => gammaOfMatch(255, 0.5)).toThrow('level is 255; allowed is 1 to 254');
  });

  it('on a screen by IEC 61966-2-1 is at 188 and 137, the levels of 0.5 and 0.25 of its light', () => {
    expect(decoded(188)).toBeCloseTo(0.5, 2);
    expect(decoded(137)).toBeCloseTo(0.25, 2);
    expect(standardMatches).toEqual({ half: 188, quarter: 137 });
    expect(steepnessOf(standardMatches)).toBe(1);
  });

  it('can be made for every gamma that is allowed', () => {
    for (const share of Object.values(matchedShares)) {
      const [low, high] = levelRange(share);
      expect(gammaOfMatch(low, share)).toBeCloseTo(gammaRange[0], 1);
      expect(gammaOfMatch(high, share)).toBeCloseTo(gammaRange[1], 1);
    }
  });

  it('must agree with the other one', () => {
    for (const gamma of [1.4, 1.8, 2.2, 2.6, 3.2]) expect(matchesAgree(matchesOf(gamma))).toBe(true);
    expect(matchesAgree({ half: 188 + 6, quarter: 137 })).toBe(true);
    expect(matchesAgree({ half: matchesOf(1.8).half, quarter: matchesOf(2.4).quarter })).toBe(false);
  });
});

describe('a taught screen', () => {
  it('that keeps to the standard is sent the standard’s levels', () => {
    for (let byte = 0; byte <= 255; byte++) {
      const grey = { r: byte, g: byte, b: byte, clipped: false };
      expect(levelsOn(1, grey)).toEqual(grey);
    }
  });

  it.each([0.8, 1.2])(
    'of steepness %d shows what the standard means, within a level, and keeps black and white',
    (steepness) => {
      for (let byte = 0; byte <= 255; byte++) {
        const sent = levelsOn(steepness, { r: byte, g: byte, b: byte, clipped: false });
        expect(Math.abs(shownBy(steepness, sent).r - byte)).toBeLessThan(byte < 20 ? 2 : 1);
        if (byte === 0 || byte === 255) expect(sent.r).toBe(byte);
      }
    },
  );

  it.each([1.8, 2.6])(
    'of one power, %d, shows half and a quarter of the light where the standard means them',
    (gamma) => {
      const steepness = steepnessOf(matchesOf(gamma));
      for (const [byte, share] of [
        [188, 0.5],
        [137, 0.25],
      ] as const) {
        const sent = levelsOn(steepness, { r: byte, g: byte, b: byte, clipped: false });
        expect(Math.abs((sent.r / 255) ** gamma - share)).toBeLessThan(0.01);
      }
    },
  );
});

/** Absorbance at 430 nm whose colour on a standard screen is most like it. */
function mostLike(shown: Pick<Srgb, 'r' | 'g' | 'b'>, hueIndex: number): number {
  const seen = labOf(xyzOfSrgb(shown));
  const tries = Array.from({ length: 400 }, (_, i) => 0.01 * 1.015 ** i);
  const far = (a430: number) => ciede2000(seen, syrupLab(a430, 1, hueIndex));
  return tries.reduce((best, each) => (far(each) < far(best) ? each : best));
}

test('a gamma that is off by a tenth makes a sugar read off by a tenth, within a fifth of that', () => {
  const off = [0.2, 0.4, 0.7, 1].flatMap((a430) =>
    [0.9, 1.1].map((steepness) => {
      const shown = shownBy(steepness, syrupColour(a430, 1, 6));
      return Math.log(mostLike(shown, 6) / a430) / Math.log(steepness);
    }),
  );
  for (const each of off) expect(each).toBeGreaterThan(0.8);
  for (const each of off) expect(each).toBeLessThan(1.2);
});

test('two matches tell a gamma within about 3 %, where an untaught screen is known within 10 %', () => {
  expect(gammaError.taught).toBeGreaterThan(0.025);
  expect(gammaError.taught).toBeLessThan(0.04);
  expect(gammaError.untaught).toBe(0.1);
});
