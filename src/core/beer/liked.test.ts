import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { normalNumbers } from '../reactions/normal.ts';
import { likedBest, likedCooks, priors, type TastedBeer } from './liked.ts';

const of = (cookId: string, ...likings: number[]): TastedBeer => ({ likings, cooks: [{ cookId, share: 1 }] });
const cook = (beers: readonly TastedBeer[], id: string) => {
  const found = likedCooks(beers).find(({ cookId }) => cookId === id);
  if (!found) throw new Error(`${id} is not told of`);
  return found;
};

describe('with few tastings', () => {
  it('has nothing to say of nothing, or of beers without a cook', () => {
    expect(likedCooks([])).toEqual([]);
    expect(likedCooks([{ likings: [9], cooks: [] }])).toEqual([]);
  });

  it('a single cook is no better than others', () => {
    const [only, ...others] = likedCooks([of('a', 9), of('a', 8, 7)]);
    expect(others).toEqual([]);
    expect(only).toMatchObject({ cookId: 'a', beers: 2, tastings: 3, standing: 'one of one' });
    // By beer: 9, and the mean of 8 and 7.
    expect(only.plainMean).toBeCloseTo(8.25, 12);
    expect(likedBest([only])).toBeUndefined();
  });

  it('one beer of each, liked 8 and 6, is too few to tell', () => {
    const cooks = likedCooks([of('a', 8), of('b', 6)]);
    expect(cooks.map(({ cookId, standing }) => [cookId, standing])).toEqual([
      ['a', 'too few to tell'],
      ['b', 'too few to tell'],
    ]);
    expect(likedBest(cooks)).toBeUndefined();
  });

  it('nor is a single beer a measure for others', () => {
    const [lucky, steady] = likedCooks([of('lucky', 10, 10, 10), of('steady', 8, 9, 7), of('steady', 7, 8)]);
    expect([lucky.standing, steady.standing]).toEqual(['too few to tell', 'too few to tell']);
  });

  it('a single beer is never enough, however much it was liked beside many others', () => {
    const steady = [8, 7, 8, 7, 6, 8].map((liking) => of('steady', liking, liking + 1, liking - 1));
    const cooks = likedCooks([of('lucky', 10, 10, 10), ...steady]);
    expect(cooks[0]).toMatchObject({ cookId: 'lucky', standing: 'too few to tell' });
    expect(likedBest(cooks)).toBeUndefined();
    expect(cooks[0].liking.mid).toBeLessThan(9.5);
  });
});

it('tells cooks apart when many beers of one are liked far better', () => {
  const good = [8, 9, 8, 9].map((liking) => of('good', liking, liking - 1));
  const poor = [4, 3, 4, 5].map((liking) => of('poor', liking, liking - 1));
  const cooks = likedCooks([...poor, ...good]);
  expect(cooks.map(({ cookId, standing }) => [cookId, standing])).toEqual([
    ['good', 'better'],
    ['poor', 'less'],
  ]);
  expect(likedBest(cooks)?.cookId).toBe('good');
});

it('one beer tasted often tells less of its cook than as many beers tasted once', () => {
  const others = [of('b', 5), of('b', 6)];
  const oneBeer = cook([of('a', 8, 8, 8, 8), ...others], 'a');
  const fourBeers = cook([of('a', 8), of('a', 8), of('a', 8), of('a', 8), ...others], 'a');
  const width = ({ liking }: typeof oneBeer) => liking.high - liking.low;
  expect(width(fourBeers)).toBeLessThan(width(oneBeer));
});

it('a beer counts for a cook by the cook’s share of its sugar', () => {
  const blended: TastedBeer = {
    likings: [9],
    cooks: [
      { cookId: 'a', share: 0.25 },
      { cookId: 'b', share: 0.75 },
    ],
  };
  // Two lots of one cook count together: (0.5 * 9 + 1 * 6) / 1.5.
  const twice: TastedBeer = {
    likings: [9],
    cooks: [
      { cookId: 'a', share: 0.25 },
      { cookId: 'a', share: 0.25 },
    ],
  };
  expect(cook([twice, of('a', 6)], 'a').plainMean).toBeCloseTo(7, 12);
  const [wholly, partly] = [cook([of('a', 9), of('c', 5)], 'a'), cook([blended, of('c', 5)], 'a')];
  expect(partly.liking.high - partly.liking.low).toBeGreaterThan(wholly.liking.high - wholly.liking.low);
});

const beers = fc.array(
  fc.record({
    likings: fc.array(fc.integer({ min: 0, max: 10 }), { minLength: 1, maxLength: 4 }),
    cooks: fc.uniqueArray(
      fc.record({ cookId: fc.constantFrom('a', 'b', 'c', 'd'), share: fc.constantFrom(0.2, 0.5) }),
      {
        minLength: 1,
        maxLength: 2,
        selector: ({ cookId }) => cookId,
      },
    ),
  }),
  { minLength: 1, maxLength: 8 },
);

it('chances to be the best add up to 1, ranges are in order and on the scale, and the order of beers does not matter', () => {
  fc.assert(
    fc.property(beers, (tasted) => {
      const cooks = likedCooks(tasted);
      expect(cooks.reduce((sum, { best }) => sum + best, 0)).toBeCloseTo(1, 9);
      for (const { liking, plainMean } of cooks) {
        expect(0 <= liking.low && liking.low <= liking.mid && liking.mid <= liking.high && liking.high <= 10).toBe(
          true,
        );
        expect(plainMean).toBeGreaterThanOrEqual(0);
        expect(plainMean).toBeLessThanOrEqual(10);
      }
      const mids = (told: typeof cooks) => Object.fromEntries(told.map(({ cookId, liking }) => [cookId, liking.mid]));
      const again = mids(likedCooks(tasted.toReversed()));
      for (const [id, mid] of Object.entries(mids(cooks))) expect(again[id]).toBeCloseTo(mid, 6);
    }),
    { numRuns: 20 },
  );
});

it('the middle of every cook lies between its own mean and the others’', () => {
  fc.assert(
    fc.property(fc.integer({ min: 2, max: 8 }), fc.integer({ min: 2, max: 8 }), (first, second) => {
      const tasted = [of('a', first), of('a', first), of('b', second)];
      const [low, high] = [Math.min(first, second), Math.max(first, second)];
      for (const { liking } of likedCooks(tasted)) {
        // 2000 draws know a middle within 0.1.
        expect(liking.mid).toBeGreaterThan(low - 0.15);
        expect(liking.mid).toBeLessThan(high + 0.15);
      }
    }),
    { numRuns: 20 },
  );
});

describe('over kitchens like those of the priors', () => {
  const normal = normalNumbers(7);
  const half = (sd: number) => Math.abs(sd * normal());

  /** Three cooks, two beers each, one or two tastings of each, about 6. */
  function kitchen() {
    const [cookSd, beerSd, tastingSd] = [half(priors.cooks), half(priors.beers), half(priors.tastings)];
    const truth = new Map(['a', 'b', 'c'].map((id) => [id, 6 + cookSd * normal()]));
    const tasted = [...truth].flatMap(([id, liking]) =>
      [1, 2].map((tastings) => {
        const beer = liking + beerSd * normal();
        return of(id, ...Array.from({ length: tastings }, () => beer + tastingSd * normal()));
      }),
    );
    return { truth, tasted };
  }
  const kitchens = Array.from({ length: 150 }, kitchen).map(({ truth, tasted }) => ({
    truth,
    cooks: likedCooks(tasted),
  }));

  it('eight in ten ranges hold the truth, within what 450 of them may miss', () => {
    const held = kitchens.flatMap(({ truth, cooks }) =>
      cooks.map(({ cookId, liking }) => {
        const true_ = truth.get(cookId) as number;
        return liking.low <= true_ && true_ <= liking.high;
      }),
    );
    const share = held.filter(Boolean).length / held.length;
    // Cooks of one kitchen go together: as good as 150 independent ones, of which 0.8 have a standard error of 0.033.
    expect(share).toBeGreaterThan(0.7);
    expect(share).toBeLessThan(0.9);
  });

  it('a cook that is called the best for sure is so at least about nine times in ten', () => {
    const sure = kitchens.flatMap(({ truth, cooks }) => {
      const best = likedBest(cooks);
      return best ? [Math.max(...truth.values()) === truth.get(best.cookId)] : [];
    });
    expect(sure.length).toBeGreaterThan(5);
    expect(sure.filter(Boolean).length / sure.length).toBeGreaterThan(0.8);
  });
});
