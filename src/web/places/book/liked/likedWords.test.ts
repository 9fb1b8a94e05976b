import { expect, it } from 'vitest';
import { likedCooks, type TastedBeer } from '../../../../core/beer/liked.ts';
import { chanceText, countsText, likingText, verdictText } from './likedWords.ts';

const of = (cookId: string, ...likings: number[]): TastedBeer => ({ likings, cooks: [{ cookId, share: 1 }] });
const name = (id: string) => id.toUpperCase();

it('names the best only when it is told apart', () => {
  const few = likedCooks([of('a', 8), of('b', 6)]);
  expect(verdictText(few, name)).toMatch(/^Too few to tell/);
  const good = [8, 9, 8, 9].map((liking) => of('a', liking, liking - 1));
  const poor = [4, 3, 4, 5].map((liking) => of('b', liking, liking - 1));
  const told = likedCooks([...good, ...poor]);
  expect(verdictText(told, name)).toBe('The beers of “A” are liked best: more than 9 in 10 that it is so.');
});

it('names those that are better than the rest when none of them is the best for sure', () => {
  const good = ['a', 'b'].flatMap((id) => [8, 9, 8, 9].map((liking) => of(id, liking, liking - 1)));
  const poor = [2, 3, 4, 3].map((liking) => of('c', liking, liking - 1));
  expect(verdictText(likedCooks([...good, ...poor]), name)).toMatch(/^Liked better than the others: “[AB]”, “[AB]”\./);
});

it('counts in whole words, with the range beside the middle', () => {
  const [cook] = likedCooks([of('a', 7), of('a', 7, 8)]);
  expect(countsText(cook)).toBe('2 beers, 3 tastings');
  expect(likingText(cook)).toMatch(/^7\.\d of 10 \(\d\.\d to \d\.\d\)$/);
  expect(countsText(likedCooks([of('a', 7)])[0])).toBe('1 beer, 1 tasting');
});

it('never says for sure', () => {
  expect([1, 0.93, 0.5, 0.01, 0].map(chanceText)).toEqual([
    'more than 9 in 10',
    '9 in 10',
    '5 in 10',
    'less than 1 in 10',
    'less than 1 in 10',
  ]);
});
