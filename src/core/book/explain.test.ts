import fc from 'fast-check';
import { expect, it } from 'vitest';
import { type PlantedFactor, planted, plantedPair } from '../../../bench/measure/plantedPair.ts';
import { explain, outcomeNames } from './explain.ts';
import { shapleyValues } from './shapley.ts';
import { explanationText } from './words.ts';

it('the shares of any game add up to the whole, and a factor that never matters gets nothing', () => {
  const game = fc.array(fc.double({ min: -100, max: 100, noNaN: true }), { minLength: 8, maxLength: 8 });
  fc.assert(
    fc.property(game, (worths) => {
      // The fourth factor changes nothing.
      const shares = shapleyValues(4, (combination) => worths[combination & 7]);
      expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(worths[7] - worths[0], 9);
      expect(shares[3]).toBeCloseTo(0, 9);
    }),
  );
});

it('shares Shapley’s own example: gloves, of which only a left and a right one together are worth anything', () => {
  // Players 0 and 1 have a left glove, player 2 a right one (Osborne & Rubinstein 1994, A Course in Game Theory, from memory): 1/6, 1/6, 2/3.
  const worth = (combination: number) => ((combination & 3) !== 0 && (combination & 4) !== 0 ? 1 : 0);
  const shares = shapleyValues(3, worth);
  for (const [i, share] of [1 / 6, 1 / 6, 2 / 3].entries()) expect(shares[i]).toBeCloseTo(share, 12);
});

it.each(Object.keys(planted) as PlantedFactor[])(
  'a difference planted in %s is found first, from the logs alone',
  (factor) => {
    const { first, second } = plantedPair(factor, 31);
    const explained = explain(first, second, { draws: 2 });
    if (!explained) throw new Error('the pair can’t be cooked again');
    const of = planted[factor];
    expect(explained.shares[of][0].factor).toBe(factor);
    for (const name of outcomeNames) {
      const sum = explained.shares[name].reduce((all, { adds }) => all + adds.mid, 0);
      const whole = explained.difference[name].mid;
      expect(Math.abs(sum - whole)).toBeLessThanOrEqual(0.01 * Math.abs(whole) + 1e-9);
      for (const { adds } of explained.shares[name]) {
        expect(adds.low).toBeLessThanOrEqual(adds.mid);
        expect(adds.high).toBeGreaterThanOrEqual(adds.mid);
      }
    }
    expect(explanationText(explained, of, 'A', 'B')).toMatch(/^By the model B is \d+(\.\d)?.* than A .*: mostly /);
  },
  30_000,
);
