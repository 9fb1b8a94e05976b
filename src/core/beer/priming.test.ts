import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evenly } from '../../../test/evenly.ts';
import { boughtSugar, tableSugar } from './boughtSugar.ts';
import { gramsPerLitreOfVolume } from './carbonDioxide.ts';
import { gasFromHexose, type PrimingRequest, primingFor, usualPriming } from './priming.ts';
import { primingCautions } from './primingCautions.ts';
import { inversionGain } from './sugar.ts';
import { certain } from './uncertain.ts';

const request: PrimingRequest = { ...usualPriming, volumeL: 20, beerC: 18, wishGPerL: 2.4 * gramsPerLitreOfVolume };
const sucrose = { ...tableSugar, solids: certain(1) };

function primed(of: PrimingRequest, sugar = sucrose) {
  const priming = primingFor(of, sugar);
  if (priming.kind !== 'primed') throw new Error(priming.kind);
  return priming.numbers;
}

it('20 L at 18 C to 2.4 volumes take 123 g of sucrose by Balling, 116 g if none became yeast (worked), within 1 g', () => {
  const { massKg, reachedVolumes } = primed(request);
  expect(Math.abs(1000 * massKg.mid - 123)).toBeLessThan(1);
  const least = massKg.mid * (gasFromHexose.mid / gasFromHexose.high);
  expect(Math.abs(1000 * least - 116)).toBeLessThan(1);
  expect(reachedVolumes.mid).toBeCloseTo(2.4, 9);
});

it('a volume is 4.06 g/L of sucrose by Balling and 3.84 by stoichiometry (worked)', () => {
  const perVolume = (gas: number) => gramsPerLitreOfVolume / (gas * (1 + inversionGain));
  expect(perVolume(gasFromHexose.mid)).toBeCloseTo(4.06, 2);
  expect(perVolume(gasFromHexose.high)).toBeCloseTo(3.84, 2);
});

it('a dark sugar takes more, by its solids and what yeast leaves of it', () => {
  const dark = boughtSugar({ name: 'd', solids: 0.8, inverted: 1, specific430AsIs: 0.05, fermentable: certain(0.8) });
  const invert = boughtSugar({ name: 'i', solids: 1, inverted: 1, specific430AsIs: 0, fermentable: certain(1) });
  expect(primed(request, dark).massKg.mid / primed(request, invert).massKg.mid).toBeCloseTo(1 / 0.64, 9);
  expect(primed(request, dark).ebcAdded.mid).toBeGreaterThan(5);
});

describe('limits of safety', () => {
  const wish = (volumes: number, change: Partial<PrimingRequest> = {}) =>
    primingFor({ ...request, wishGPerL: volumes * gramsPerLitreOfVolume, ...change }, sucrose);

  it('more than 3.5 volumes in ordinary bottles is refused with the reason; heavy ones take 5, a keg 4', () => {
    expect(wish(3.5).kind).toBe('primed');
    expect(wish(4.1)).toMatchObject({ kind: 'refused', field: 'wish', message: expect.stringContaining('bursts') });
    expect(wish(4.5, { vessel: 'heavy' }).kind).toBe('primed');
    expect(wish(4.5, { vessel: 'keg' }).kind).toBe('refused');
    expect(() => wish(9)).toThrow('wishGPerL');
  });

  it('the caution grows strong when the bottle may come to what it is made for', () => {
    const levelAt = (volumes: number) => {
      const numbers = primed({ ...request, wishGPerL: volumes * gramsPerLitreOfVolume });
      return primingCautions(numbers, 'ordinary').find(({ id }) => id === 'PRI-PRESSURE')?.level;
    };
    expect(levelAt(2)).toBe('note');
    expect(levelAt(2.95)).toBe('strong warning');
  });

  it('a beer that holds as much already needs none', () => {
    expect(wish(0.6)).toMatchObject({ kind: 'already', residualGPerL: expect.closeTo(1.763, 2) });
  });
});

it('more is wished, more is weighed; warmer beer takes more; nothing is negative and the marks are in order', () => {
  fc.assert(
    fc.property(evenly(1.9, 3.2), evenly(0.01, 0.2), evenly(0, 28), (volumes, further, beerC) => {
      const at = { ...request, beerC, wishGPerL: volumes * gramsPerLitreOfVolume };
      const [now, more, warmer] = [
        primed(at),
        primed({ ...at, wishGPerL: (volumes + further) * gramsPerLitreOfVolume }),
        primed({ ...at, beerC: beerC + 2 }),
      ];
      const sound = Object.values(now).every(({ low, mid, high }) => 0 <= low && low <= mid && mid <= high);
      return sound && more.massKg.low > now.massKg.low && warmer.massKg.mid > now.massKg.mid;
    }),
    { numRuns: 50 },
  );
});
