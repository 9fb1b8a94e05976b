import fc from 'fast-check';
import { expect, it } from 'vitest';
import { evenly } from '../../../test/evenly.ts';
import { specificFromRating } from '../colour/rating.ts';
import { fermentabilityByColour, fermentabilityFromForcedFerment } from './fermentability.ts';

it('falls with colour, its range within 0.55 to 1 and in order', () => {
  const colour = evenly(0, 2);
  fc.assert(
    fc.property(colour, colour, (a, b) => {
      const [pale, dark] = [Math.min(a, b), Math.max(a, b)].map(fermentabilityByColour);
      if (!pale || !dark) return false;
      const inOrder = ({ low, mid, high }: typeof pale) => 0.55 <= low && low < mid && mid < high && high <= 1;
      return inOrder(pale) && inOrder(dark) && dark.low <= pale.low && dark.mid <= pale.mid && dark.high <= pale.high;
    }),
  );
});

it('is 0.97 to 1 for a sugar without colour, 0.80 to 0.92 for a dark one', () => {
  expect(fermentabilityByColour(0)).toMatchObject({ low: 0.97, high: 1 });
  const dark = fermentabilityByColour(specificFromRating(200, 'tenPercentByWeight'));
  expect([dark.low, dark.high]).toEqual([expect.closeTo(0.8, 9), expect.closeTo(0.92, 9)]);
});

it('by a forced ferment: all when it ends at -2.2 P from 10, none when nothing happened', () => {
  expect(fermentabilityFromForcedFerment(10, -2.207).mid).toBeCloseTo(1, 3);
  expect(fermentabilityFromForcedFerment(10, 10)).toMatchObject({ low: 0, mid: 0 });
  const some = fermentabilityFromForcedFerment(10, 0);
  expect(some.low).toBeLessThan(some.mid);
  expect(some.mid).toBeLessThan(some.high);
});
